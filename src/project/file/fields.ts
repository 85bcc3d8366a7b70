import * as z from 'zod/mini';
import { expected, quoted } from './fieldErrors';

// Zod otherwise compiles its checks with `new Function`, which a page with a strict content policy reports.
z.config({ jitless: true });

/** Words one complaint, whichever of a field's own checks failed. */
function complaint(what: string) {
  return { error: (issue: z.core.$ZodRawIssue) => expected(what, issue.input) };
}

/** An object with exactly these keys. */
export function object<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `is not a key of this place; known here: ${Object.keys(shape).join(', ')}`
        : expected('an object', issue.input),
  });
}

/** A list of at most `most` elements; a longer one is refused before its elements are looked at. */
export function list<Element extends z.ZodMiniType>(element: Element, most: number, least = 0) {
  const length = least === 0 ? `at most ${most}` : `${least} to ${most}`;
  const ofLength = z.custom<z.input<Element>[]>(
    (value) => Array.isArray(value) && value.length >= least && value.length <= most,
    {
      error: ({ input }) =>
        Array.isArray(input)
          ? `must be a list of ${length} elements; it has ${input.length}`
          : expected('a list', input),
    },
  );
  return z.pipe(ofLength, z.array(element));
}

/** Exactly two of the same. */
export function two<Element extends z.ZodMiniType>(element: Element) {
  return z.tuple([element, element], {
    error: ({ input }) =>
      Array.isArray(input)
        ? `must be a list of two elements; it has ${input.length}`
        : expected('a list of two elements', input),
  });
}

/** A finite number, both bounds included. Minus zero becomes zero, which JSON cannot tell apart on the way back. */
export function number(low: number, high: number) {
  const words = complaint(`a number from ${low} to ${high}`);
  return z.number(words).check(
    z.minimum(low, words),
    z.maximum(high, words),
    z.overwrite((value) => value + 0),
  );
}

/** A finite number above zero. */
export function positive(high: number) {
  const words = complaint(`a number above 0 and up to ${high}`);
  return z.number(words).check(z.gt(0, words), z.maximum(high, words));
}

export function wholeNumber(low: number, high: number) {
  const words = complaint(`a whole number from ${low} to ${high}`);
  return z.number(words).check(
    z.minimum(low, words),
    z.maximum(high, words),
    z.refine((value) => Number.isInteger(value), words),
  );
}

/** One value and no other. */
export function exactly<const Value extends string | number>(value: Value) {
  return z.literal(value, complaint(typeof value === 'string' ? quoted(value) : String(value)));
}

export function boolean() {
  return z.boolean(complaint('true or false'));
}

export function choice<const Value extends string>(values: readonly Value[]) {
  return z.enum(values, complaint(`one of ${values.map(quoted).join(', ')}`));
}

/** One of several objects told apart by `kind`; only the branch that the kind names complains. */
export function kinds<
  const Options extends readonly [z.core.$ZodTypeDiscriminable, ...z.core.$ZodTypeDiscriminable[]],
>(options: Options) {
  return z.discriminatedUnion('kind', options, {
    error: (issue: z.core.$ZodRawIssue) => {
      if (issue.code !== 'invalid_union') return expected('an object', issue.input);
      const known = (issue.options as readonly unknown[]).map((kind) => quoted(String(kind))).join(', ');
      return expected(`one of ${known}`, (issue.input as { readonly kind?: unknown }).kind);
    },
  });
}

/** The same or null, and the complaint about a wrong type says so. */
export function orNull<Schema extends z.ZodMiniType>(schema: Schema) {
  const { def } = schema._zod;
  const wordsOf = def.error as z.core.$ZodErrorMap | undefined;
  const error: z.core.$ZodErrorMap = (issue) => {
    const message = wordsOf?.(issue);
    if (typeof message !== 'string' || issue.code !== 'invalid_type') return message;
    return `${message} (null is accepted too)`;
  };
  return z.nullable(schema.clone({ ...def, error }));
}

/** Control characters, marks that reverse the reading direction, line separators, halves of a character. */
const badInLine = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/u;
const badInText = /(?![\n\r\t])[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/u;

function textOf(most: number, what: string, bad: RegExp, mayBeBlank: boolean) {
  return z.string(complaint(what)).check((context) => {
    const problem = textProblem(context.value, most, bad, mayBeBlank);
    if (problem !== null) context.issues.push({ code: 'custom', input: context.value, message: problem });
  });
}

function textProblem(text: string, most: number, bad: RegExp, mayBeBlank: boolean): string | null {
  if (text.length > most) return `must have at most ${most} characters; it has ${text.length}`;
  if (!mayBeBlank && text.trim() === '') return 'must not be empty';
  const found = bad.exec(text);
  if (found === null) return null;
  return `must not hold the unprintable character ${quoted(found[0])} (place ${found.index + 1})`;
}

const nameLength = 200;
const sourceLength = 1000;
const noteLength = 5000;

/** One line that a person is to read: never empty. */
export function name() {
  return textOf(nameLength, 'a text', badInLine, false);
}

/** One short line, '' where there is nothing to say. */
export function shortText(most = nameLength) {
  return textOf(most, "a text ('' for none)", badInLine, true);
}

/** Where a number comes from; '' where nobody said. */
export function source() {
  return textOf(sourceLength, "a text ('' for none)", badInText, true);
}

/** Free text with line breaks; '' for none. */
export function note() {
  return textOf(noteLength, "a text ('' for none)", badInText, true);
}

/** Free text that has to say something. */
export function reason() {
  return textOf(noteLength, 'a text', badInText, false);
}

/** Names that every JavaScript object already has a meaning for. */
const takenIds: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

export function id() {
  const what = '1 to 40 letters, digits, hyphens or underscores';
  return z.string(complaint(what)).check(
    z.refine((text) => /^[A-Za-z0-9_-]{1,40}$/.test(text) && !takenIds.has(text), {
      error: ({ input }) =>
        takenIds.has(input as string)
          ? `must not be the reserved word ${quoted(input as string)}`
          : expected(what, input),
    }),
  );
}
