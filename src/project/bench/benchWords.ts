import type { BenchSetting, TypedMember } from './benchTypes';
import { mostCandidates, type Candidate } from './candidates';
import { candidateSchema, memberIdSchema, typedMemberSchema } from './benchSchema';

const longestAddress = 20_000;
/** Also bounds a number that somebody made up. */
const longestValue = 220;

type Flat = Readonly<Record<string, string | number | null>>;

/** "member=f3&c=kind:section;id:c2;...": the setting as words of an address. */
export function benchToWords({ memberId, typed, candidates }: BenchSetting): string {
  return [
    ...(memberId === null ? [] : [`member=${encoded(memberId)}`]),
    ...(typed === null ? [] : [`typed=${part(typed)}`]),
    ...candidates.slice(0, mostCandidates).map((candidate) => `c=${part(candidate)}`),
  ].join('&');
}

/** The setting from an address; unknown words are ignored, a part that is no part of a bench is left out, never thrown. */
export function benchFromWords(words: string): BenchSetting {
  let memberId: string | null = null;
  let typed: TypedMember | null = null;
  const candidates: Candidate[] = [];
  for (const word of words.slice(0, longestAddress).replace(/^[?#]/, '').split('&')) {
    const [name, value] = cutAt(word, '=');
    if (name === 'member') memberId ??= read(memberIdSchema, decoded(value));
    if (name === 'typed') typed ??= read(typedMemberSchema, unpacked(value));
    if (name !== 'c' || candidates.length === mostCandidates) continue;
    const candidate = read(candidateSchema, unpacked(value));
    if (candidate !== null && candidates.every(({ id }) => id !== candidate.id)) candidates.push(candidate);
  }
  return { memberId, typed, candidates };
}

function read<Value>(
  schema: { safeParse: (value: unknown) => { success: boolean; data?: Value | undefined } },
  value: unknown,
): Value | null {
  const result = schema.safeParse(value);
  return result.success ? (result.data ?? null) : null;
}

function cutAt(text: string, sign: string): readonly [string, string] {
  const at = text.indexOf(sign);
  return at === -1 ? [text, ''] : [text.slice(0, at), text.slice(at + 1)];
}

function encoded(text: string): string {
  return encodeURIComponent(text.replace(/\p{Surrogate}/gu, '\ufffd')).replaceAll('%20', '+');
}

function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text.replaceAll('+', ' '));
  } catch {
    return null;
  }
}

/** "kind:section;direction.kind:fixed": the parts of parts by their path; null is an empty value. */
function part(value: object): string {
  return Object.entries(flattened(value, ''))
    .map(
      ([key, one]) =>
        `${key}:${one === null ? '' : encoded(typeof one === 'string' ? `'${one}` : String(one))}`,
    )
    .join(';');
}

function flattened(value: object, prefix: string): Flat {
  return Object.entries(value).reduce<Flat>((flat, [key, one]: [string, unknown]) => {
    const path = `${prefix}${key}`;
    if (typeof one === 'object' && one !== null) return { ...flat, ...flattened(one, `${path}.`) };
    return { ...flat, [path]: one as string | number | null };
  }, {});
}

interface Nested {
  [key: string]: string | number | null | Nested;
}

/** The parts by their paths put together again; a text starts with an apostrophe, an empty value is null, the rest are numbers. */
function unpacked(text: string): Nested {
  const whole = emptyNested();
  for (const entry of text.split(';')) {
    const [path, value] = cutAt(entry, ':');
    const steps = path.split('.').slice(0, 2);
    const last = steps.pop() ?? '';
    const [outer] = steps;
    const holder = outer === undefined ? whole : nestedAt(whole, outer);
    holder[last] = valueFrom(decoded(value) ?? '');
  }
  return listEnds(whole);
}

/** Without a prototype, so that no made-up name has a meaning. */
function emptyNested(): Nested {
  return Object.create(null) as Nested;
}

function nestedAt(whole: Nested, key: string): Nested {
  const known = whole[key];
  const inner = typeof known === 'object' && known !== null ? known : emptyNested();
  whole[key] = inner;
  return inner;
}

function valueFrom(text: string): string | number | null {
  if (text === '') return null;
  if (text.startsWith("'")) return text.slice(1, longestValue);
  return Number(text.slice(0, longestValue));
}

/** Flattening made a list of two ends an object of 0 and 1. */
function listEnds(whole: Nested): Nested {
  const { ends } = whole;
  if (typeof ends !== 'object' || ends === null) return whole;
  return Object.assign(emptyNested(), whole, { ends: [ends['0'], ends['1']] });
}
