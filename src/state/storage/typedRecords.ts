import { readAll, type KeyValue, type Write } from './keyValue';
import { fieldsOf, prefixes } from './records';

/** A text that is not a value of the project: half-typed, out of range, or refused. */
export interface TypedText {
  readonly text: string;
  /** The field's name, for a line that leads back to it. */
  readonly label: string;
  /** What the project's own checks said of it; null for a text that cannot be read. */
  readonly refusal: string | null;
}

/** Such texts by what they were typed for, as in "fitting/f3.shape.diameter". */
export type TypedTexts = ReadonlyMap<string, TypedText>;

export const noTyped: TypedTexts = new Map();

/** What is kept from now on; undefined for what is kept no longer. */
export type TypedChange = readonly [path: string, typed: TypedText | undefined];

export function typedChanges(before: TypedTexts, after: TypedTexts): readonly TypedChange[] {
  const gone = [...before.keys()].filter((path) => !after.has(path));
  return [
    ...gone.map((path) => [path, undefined] as const),
    ...[...after].filter(([path, typed]) => !isSameTyped(before.get(path), typed)),
  ];
}

export function isSameTyped(one: TypedText | undefined, other: TypedText | undefined): boolean {
  return one?.text === other?.text && one?.label === other?.label && one?.refusal === other?.refusal;
}

/**
 * Each text has a key of its own: it is written without looking, so that it leaves with a page that is being closed,
 * and two tabs do not write over each other's.
 */
export function typedWrites(id: string, changes: readonly TypedChange[]): readonly Write[] {
  return changes.map(([path, typed]) => [typedPrefix(id) + path, typed]);
}

export function typedKeys(store: KeyValue, id: string): Promise<readonly string[]> {
  return store.keys(typedPrefix(id));
}

/** The texts kept for a project; what is damaged is left out. */
export async function readTyped(store: KeyValue, id: string): Promise<TypedTexts> {
  const keys = await typedKeys(store, id);
  if (keys.length === 0) return noTyped;
  const values = await readAll(store, keys);
  const texts = new Map<string, TypedText>();
  for (const [i, key] of keys.entries()) {
    const path = key.slice(typedPrefix(id).length);
    const typed = typedIn(values[i]);
    if (typed !== null && path.length <= mostPathCharacters) texts.set(path, typed);
  }
  return texts;
}

const mostPathCharacters = 300;
const mostLabelCharacters = 500;
const mostTextCharacters = 1_000_000;

/** The text, or null when what was stored is none. */
function typedIn(value: unknown): TypedText | null {
  const { text, label, refusal } = fieldsOf(value);
  const isTyped =
    isTextUpTo(mostTextCharacters, text) &&
    isTextUpTo(mostLabelCharacters, label) &&
    (refusal === null || isTextUpTo(mostTextCharacters, refusal));
  return isTyped ? { text, label, refusal } : null;
}

function isTextUpTo(most: number, value: unknown): value is string {
  return typeof value === 'string' && value.length <= most;
}

function typedPrefix(id: string): string {
  return `${prefixes.typed}${id}/`;
}
