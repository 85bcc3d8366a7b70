import { boatPlaces, mastLengthM } from '../catalogue/boatPlaces';
import { kindOfZone } from '../catalogue/catalogue';
import type { ZoneKind } from '../catalogue/catalogueEntry';
import type { ProjectBoat, ProjectZone } from '../file/schema';

/** Where things of a zone stand when nobody taped them: estimates, and marked so. */
export interface ZoneStretch {
  /** From the stem, m: the first of a row. */
  readonly fromAftM: number;
  /** The last of a row. */
  readonly toAftM: number;
  /** What something stands on, above the deck edge, m: 0 but at the masthead. */
  readonly standsAboveDeckM: number;
}

/** The stretch of a zone as parts of the length, or the mast; and the side that is meant where none is named. */
interface ZonePlace {
  readonly partOfLength: readonly [first: number, last: number] | 'mast';
  readonly side: 'centreline' | 'starboard';
}

/**
 * Parts of the length from the stem (0) to the stern (1), by which the catalogue lays out its own fittings too (common
 * practice, no source). The one set of defaults, for the quick entry and for what a survey's table leaves blank.
 */
export const zonePlaces: Readonly<Record<ZoneKind, ZonePlace>> = {
  bow: { partOfLength: [0.02, 0.15], side: 'centreline' },
  decks: { partOfLength: [0.17, 0.87], side: 'starboard' },
  cockpit: { partOfLength: [0.65, 0.9], side: 'centreline' },
  stern: { partOfLength: [0.92, 1], side: 'centreline' },
  rig: { partOfLength: 'mast', side: 'centreline' },
  masthead: { partOfLength: 'mast', side: 'centreline' },
  crew: { partOfLength: [0.6, 0.85], side: 'starboard' },
  hull: { partOfLength: [0.1, 0.9], side: 'centreline' },
};

/** Which part of the boat a zone is; the side decks for one that no word tells. */
export function zoneKindOf(zone: ProjectZone | undefined): ZoneKind {
  return (zone === undefined ? null : kindOfZone(zone)) ?? 'decks';
}

export function zoneStretch(boat: ProjectBoat, kind: ZoneKind): ZoneStretch {
  const { partOfLength } = zonePlaces[kind];
  const places = boatPlaces(boat);
  const standsAboveDeckM = kind === 'masthead' ? toCentimetre(mastLengthM(places)) : 0;
  const [fromAftM, toAftM] =
    partOfLength === 'mast'
      ? [places.mastAftM, places.mastAftM]
      : [partOfLength[0] * boat.lengthM, partOfLength[1] * boat.lengthM];
  return { fromAftM: toCentimetre(fromAftM), toAftM: toCentimetre(toAftM), standsAboveDeckM };
}

/** One stands in the middle of the stretch, several from its one end to the other. */
export function stationsIn({ fromAftM, toAftM }: ZoneStretch, count: number) {
  const middleM = toCentimetre((fromAftM + toAftM) / 2);
  return count < 2 ? { fromAftM: middleM, toAftM: middleM } : { fromAftM, toAftM };
}

function toCentimetre(valueM: number): number {
  return Math.round(100 * valueM) / 100;
}
