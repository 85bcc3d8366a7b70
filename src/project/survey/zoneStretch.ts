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

/**
 * Parts of the length from the stem (0) to the stern (1), by which the catalogue lays out its own fittings too (common
 * practice, no source). Rig and masthead are at the mast.
 */
const partOfLength: Readonly<Record<Exclude<ZoneKind, 'rig' | 'masthead'>, readonly [number, number]>> = {
  bow: [0.02, 0.15],
  decks: [0.17, 0.87],
  cockpit: [0.65, 0.9],
  stern: [0.92, 1],
  crew: [0.6, 0.85],
  hull: [0.1, 0.9],
};

/** A zone that no word tells: anywhere along the deck. */
const anywhere = [0.1, 0.9] as const;

export function zoneStretch(boat: ProjectBoat, zone: ProjectZone | undefined): ZoneStretch {
  const kind = zone === undefined ? null : kindOfZone(zone);
  const places = boatPlaces(boat);
  if (kind === 'rig' || kind === 'masthead') {
    const aftM = toCentimetre(places.mastAftM);
    const standsAboveDeckM = kind === 'rig' ? 0 : toCentimetre(mastLengthM(places));
    return { fromAftM: aftM, toAftM: aftM, standsAboveDeckM };
  }
  const [from, to] = kind === null ? anywhere : partOfLength[kind];
  return {
    fromAftM: toCentimetre(from * boat.lengthM),
    toAftM: toCentimetre(to * boat.lengthM),
    standsAboveDeckM: 0,
  };
}

function toCentimetre(valueM: number): number {
  return Math.round(100 * valueM) / 100;
}
