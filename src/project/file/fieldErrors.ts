/** One complaint about one field. */
export interface FieldError {
  /** Such as `fittings[3].shape.diameter.m`; '' for the file as a whole. */
  readonly path: string;
  readonly message: string;
}

export type PathStep = string | number;

const longestQuote = 40;
const unprintable = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu;

/** Text from a file in double quotes, cut short, with nothing in it that could disturb a terminal or a page. */
export function quoted(text: string): string {
  const cut = text.length > longestQuote ? `${text.slice(0, longestQuote)}…` : text;
  return JSON.stringify(cut).replace(
    unprintable,
    (character) => `\\u${(character.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`,
  );
}

/** What stands in the file, for the end of a message. */
export function described(value: unknown): string {
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return String(value);
  return typeof value === 'object' ? 'an object' : `a ${typeof value}`;
}

/** "is missing; it must be X" or "must be X; it is Y". */
export function expected(what: string, value: unknown): string {
  return value === undefined
    ? `is missing; it must be ${what}`
    : `must be ${what}; it is ${described(value)}`;
}

/** `['fittings', 3, 'note']` as `fittings[3].note`; a key that is no plain word is quoted: `boat["a b"]`. */
export function pathText(steps: readonly PropertyKey[]): string {
  return steps.reduce<string>((path, step) => {
    if (typeof step === 'number') return `${path}[${step}]`;
    const key = String(step);
    if (!/^[A-Za-z_][A-Za-z0-9_]{0,39}$/.test(key)) return `${path}[${quoted(key)}]`;
    return path === '' ? key : `${path}.${key}`;
  }, '');
}
