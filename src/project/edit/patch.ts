import { isRecord } from './keepIdentity';

/** Some fields of a value, at any depth. Lists and null replace what was there. */
export type Patch<Value> = Value extends readonly unknown[]
  ? Value
  : Value extends object
    ? { readonly [Key in keyof Value]?: Patch<Value[Key]> }
    : Value;

/**
 * The value with the patch's fields in it. A part whose `kind` the patch changes is replaced as a whole, because the
 * fields of another kind would be strangers in it. Whether the outcome is a valid part is the schema's to say.
 */
export function patched<Value>(value: Value, patch: NoInfer<Patch<Value>>): Value {
  return merged(value, patch) as Value;
}

function merged(value: unknown, patch: unknown): unknown {
  if (!isRecord(patch) || !isRecord(value)) return patch;
  if ('kind' in patch && patch['kind'] !== value['kind']) return patch;
  const result: Record<string, unknown> = { ...value };
  for (const [key, part] of Object.entries(patch)) {
    if (part !== undefined) result[key] = merged(value[key], part);
  }
  return result;
}
