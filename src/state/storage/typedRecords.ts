import { readAll, type KeyValue, type Write } from './keyValue';
import type { LiveTabs } from './liveTabs';
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

/** The kept texts of all projects, as one tab reads and writes them. */
export interface TypedRecords {
  /**
   * Each text has a key of its own, with the tab that typed it: it is written without looking, so that it leaves with a
   * page that is being closed, and two tabs do not write over each other's. What was read of tabs that have gone gives way.
   */
  writes(id: string, changes: readonly TypedChange[]): readonly Write[];
  /** The texts kept for a project, without those of other tabs that are open; what is damaged is left out. */
  read(id: string): Promise<TypedTexts>;
  /** Where texts are kept for a project, whoever typed them. */
  keys(id: string): Promise<readonly string[]>;
}

interface TypedParts {
  readonly store: KeyValue;
  readonly tab: string;
  readonly liveTabs: LiveTabs;
  readonly nowIso: () => string;
}

export function openTypedRecords({ store, tab, liveTabs, nowIso }: TypedParts): TypedRecords {
  /** By project, where its texts were read last. */
  const readFrom = new Map<string, readonly Place[]>();

  const keys = async (id: string): Promise<readonly string[]> => [
    ...(await store.keys(tablessPrefix(id))),
    ...(await store.keys(tabsPrefix(id))),
  ];

  const openPlaces = async (id: string): Promise<readonly Place[]> => {
    const places = (await keys(id)).map((key) => placeOf(id, key));
    // Asked after the keys: who has gone by now has left what is there.
    const living = places.length === 0 ? null : await liveTabs.living();
    const isLeft = (by: string | null): boolean => by === null || by === tab || living?.has(by) !== true;
    return places.filter(({ by, path }) => isLeft(by) && path.length <= mostPathCharacters);
  };

  return {
    keys,
    read: async (id) => {
      const places = await openPlaces(id);
      const placeKeys = places.map(({ key }) => key);
      const values = placeKeys.length === 0 ? [] : await readAll(store, placeKeys);
      readFrom.set(id, places);
      return newestTexts(places, values);
    },
    writes: (id, changes) =>
      changes.flatMap(([path, typed]): readonly Write[] => {
        const own = `${tabsPrefix(id)}${tab}/${path}`;
        const left = (readFrom.get(id) ?? []).filter((place) => place.path === path && place.key !== own);
        const value = typed && { ...typed, typedAt: nowIso() };
        return [...left.map(({ key }): Write => [key, undefined]), [own, value]];
      }),
  };
}

/** Where a text is kept, what it was typed for, and the tab that typed it: null of what was kept without one. */
interface Place {
  readonly key: string;
  readonly path: string;
  readonly by: string | null;
}

function placeOf(id: string, key: string): Place {
  if (key.startsWith(tablessPrefix(id))) return { key, path: key.slice(tablessPrefix(id).length), by: null };
  const rest = key.slice(tabsPrefix(id).length);
  const slash = rest.indexOf('/');
  return { key, path: rest.slice(slash + 1), by: rest.slice(0, slash) };
}

/** Of several texts for the same field the one that was typed last. */
function newestTexts(places: readonly Place[], values: readonly unknown[]): TypedTexts {
  const texts = new Map<string, TypedText>();
  const times = new Map<string, string>();
  for (const [i, { path }] of places.entries()) {
    const typed = typedIn(values[i]);
    const { typedAt } = fieldsOf(values[i]);
    const time = typeof typedAt === 'string' ? typedAt : '';
    if (typed === null || time < (times.get(path) ?? '')) continue;
    texts.set(path, typed);
    times.set(path, time);
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

function tabsPrefix(id: string): string {
  return `${prefixes.typedBy}${id}/`;
}

/** Where texts were kept before they carried their tab. */
function tablessPrefix(id: string): string {
  return `${prefixes.typed}${id}/`;
}
