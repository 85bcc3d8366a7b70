import { blankFitting, noFlags } from '../file/blankParts';
import type { ProjectBoat, ProjectFitting, ProjectZone } from '../file/schema';
import { boatPlaces } from './boatPlaces';
import { bowEntries } from './bowEntries';
import { catalogueGroups, type CatalogueEntry, type CatalogueGroup, type ZoneKind } from './catalogueEntry';
import { cockpitEntries } from './cockpitEntries';
import { crewAndHullEntries } from './crewAndHullEntries';
import { mastEntries } from './mastEntries';
import { powerEntries } from './powerEntries';
import { riggingEntries } from './riggingEntries';
import { noSource } from './shapes';
import { sideDeckEntries } from './sideDeckEntries';
import { sternEntries } from './sternEntries';

/** Typical fittings of an ocean racing yacht, from the pulpit to the crew, in the order of {@link catalogueGroups}. */
export const catalogue: readonly CatalogueEntry[] = catalogueGroups.flatMap((group) =>
  [
    ...bowEntries,
    ...sideDeckEntries,
    ...cockpitEntries,
    ...sternEntries,
    ...powerEntries,
    ...mastEntries,
    ...riggingEntries,
    ...crewAndHullEntries,
  ].filter((entry) => entry.group === group),
);

const byId: ReadonlyMap<string, CatalogueEntry> = new Map(catalogue.map((entry) => [entry.id, entry]));

const sizesNote = `Sizes and place: ${noSource}; measure your own.`;

/**
 * A fitting of the catalogue laid out on a boat: sizes by common practice, marked as estimated, ready to be changed.
 * @param entryId an id of {@link catalogue}; another one is a mistake of the caller and throws.
 */
export function fittingFromCatalogue(
  entryId: string,
  boat: ProjectBoat,
  zoneId: string,
  freshId: string,
): ProjectFitting {
  const entry = byId.get(entryId);
  if (entry === undefined) throw new RangeError(`The catalogue has no entry "${entryId}".`);
  const { name, note, shape, placement, flags, exposure, exposureLeeward, dutyFraction, massKg } = entry;
  const places = boatPlaces(boat);
  return blankFitting({
    id: freshId,
    name,
    zoneId,
    note: note === '' ? sizesNote : `${note} ${sizesNote}`,
    shape: shape(places),
    placement: placement(places),
    flags: { ...noFlags, ...flags },
    ...(exposure === undefined ? {} : { exposure }),
    ...(exposureLeeward === undefined ? {} : { exposureLeeward }),
    ...(dutyFraction === undefined ? {} : { dutyFraction }),
    ...(massKg === undefined ? {} : { massKg }),
  });
}

/** Without capitals, accents and hyphens. */
function plain(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** What is searched of an entry: a name counts more than a synonym, and that more than a group. */
const searchTexts: ReadonlyMap<CatalogueEntry, readonly (readonly [text: string, score: number])[]> = new Map(
  catalogue.map((entry) => [
    entry,
    [
      [` ${plain(entry.name)}`, 4],
      [` ${plain(entry.synonyms)}`, 2],
      [` ${plain(entry.group)}`, 1],
    ],
  ]),
);

/** Word starts match, so that "stanch" finds stanchions; every word must be found. */
function scoreOf(entry: CatalogueEntry, wanted: readonly string[]): number {
  const texts = searchTexts.get(entry) ?? [];
  const scores = wanted.map((word) =>
    Math.max(...texts.map(([text, score]) => (text.includes(` ${word}`) ? score : 0))),
  );
  return scores.includes(0) ? 0 : scores.reduce((sum, score) => sum + score, 0);
}

/** The entries in which every word starts some word, best first; all of them for no words. */
export function searchCatalogue(words: string): readonly CatalogueEntry[] {
  const wanted = plain(words).split(' ').filter(Boolean);
  if (wanted.length === 0) return catalogue;
  return catalogue
    .map((entry) => ({ entry, score: scoreOf(entry, wanted) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ entry }) => entry);
}

interface CatalogueSection {
  readonly group: CatalogueGroup;
  readonly entries: readonly CatalogueEntry[];
}

/** Entries under their heads, in the list's order; heads with nothing under them are left out. */
export function inGroups(entries: readonly CatalogueEntry[]): readonly CatalogueSection[] {
  return catalogueGroups
    .map((group) => ({ group, entries: entries.filter((entry) => entry.group === group) }))
    .filter((section) => section.entries.length > 0);
}

/** Words by which a project's own zones are recognised, first match first. */
const zoneWords: Readonly<Record<ZoneKind, readonly string[]>> = {
  bow: ['bow', 'fore', 'foredeck', 'sprit'],
  decks: ['side', 'decks', 'deck', 'rail'],
  cockpit: ['cockpit', 'coachroof', 'cabin', 'pit', 'deck'],
  stern: ['stern', 'aft', 'transom', 'cockpit', 'deck'],
  rig: ['rig', 'rigging', 'mast', 'spar', 'deck'],
  masthead: ['masthead', 'top', 'rig', 'rigging', 'mast', 'deck'],
  crew: ['crew', 'people', 'cockpit', 'deck'],
  hull: ['hull', 'foils', 'foil', 'topsides', 'deck'],
};

/** What kind of zone this is: by its id, else by the word of its name that is closest to a kind; null for neither. */
export function kindOfZone({ id, name }: ProjectZone): ZoneKind | null {
  const kinds = Object.keys(zoneWords) as ZoneKind[];
  const byOwnId = kinds.find((kind) => kind === id);
  if (byOwnId !== undefined) return byOwnId;
  const words = plain(name).split(' ');
  const found = kinds.flatMap((kind) =>
    words.map((word, place) => ({ kind, place, closeness: zoneWords[kind].indexOf(word) })),
  );
  const [closest] = found
    .filter(({ closeness }) => closeness >= 0)
    .sort((a, b) => a.closeness - b.closeness || a.place - b.place);
  return closest?.kind ?? null;
}

/** The zone of a project in which a kind belongs: by its id, else by a word of its name, else the first. */
export function suggestedZoneId(kind: ZoneKind, zones: readonly ProjectZone[]): string | null {
  const byOwnId = zones.find(({ id }) => id === kind);
  if (byOwnId !== undefined) return byOwnId.id;
  for (const word of zoneWords[kind]) {
    const found = zones.find(({ name }) => plain(name).split(' ').includes(word));
    if (found !== undefined) return found.id;
  }
  return zones[0]?.id ?? null;
}
