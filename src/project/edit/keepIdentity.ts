/**
 * `after` with every part that equals the same part of `before` replaced by it, so that what an edit left alone keeps
 * its identity and what it set to the same value counts as left alone. Takes plain JSON values.
 */
export function keepIdentity<Value>(before: unknown, after: Value): Value {
  return kept(before, after) as Value;
}

function kept(before: unknown, after: unknown): unknown {
  if (Object.is(before, after)) return before;
  if (Array.isArray(before) && Array.isArray(after)) {
    const parts = after.map((part, i) => kept(before[i], part));
    return parts.length === before.length && parts.every((part, i) => part === before[i]) ? before : parts;
  }
  if (!isRecord(before) || !isRecord(after)) return after;
  const parts = Object.entries(after).map(([key, part]) => [key, kept(before[key], part)] as const);
  const isSame =
    parts.length === Object.keys(before).length && parts.every(([key, part]) => part === before[key]);
  return isSame ? before : Object.fromEntries(parts);
}

/** An object that is no list. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
