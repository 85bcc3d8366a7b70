/** Paths into plain JSON, for tests that damage one field of a file. */
export type Steps = readonly (string | number)[];

/** Every value below `value` that `isWanted`, with its path. */
export function pathsTo(
  value: unknown,
  isWanted: (found: unknown) => boolean,
  steps: Steps = [],
): readonly Steps[] {
  const here = isWanted(value) ? [steps] : [];
  if (typeof value !== 'object' || value === null) return here;
  const below = Array.isArray(value)
    ? value.flatMap((element, i) => pathsTo(element, isWanted, [...steps, i]))
    : Object.entries(value).flatMap(([key, part]) => pathsTo(part, isWanted, [...steps, key]));
  return [...here, ...below];
}

/** As the errors write it. */
export function written(steps: Steps): string {
  return steps
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`))
    .join('')
    .replace(/^\./, '');
}

export function isPlainObject(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

type Container = Record<string | number, unknown>;

/** A copy of a JSON value in which the field at a path is changed in place. */
export function damaged(
  value: unknown,
  steps: Steps,
  damage: (holder: Container, key: string | number) => void,
): unknown {
  const copy: unknown = structuredClone(value);
  let holder = copy as Container;
  for (const step of steps.slice(0, -1)) holder = holder[step] as Container;
  damage(holder, steps.at(-1) ?? '');
  return copy;
}

/** A copy with another value at a path. */
export function withValue(value: unknown, steps: Steps, replacement: unknown): unknown {
  return damaged(value, steps, (holder, key) => {
    holder[key] = replacement;
  });
}
