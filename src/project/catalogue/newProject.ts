import { fromSi, toSi } from '../../units/convert';
import { blankBoat, blankCondition, blankProject } from '../file/blankParts';
import type { Project, ProjectBoat, ProjectDeckStation, ProjectZone } from '../file/schema';
import type { ZoneKind } from './catalogueEntry';

/** The five numbers that a newcomer knows of a boat. */
export interface BoatOutline {
  readonly name: string;
  readonly lengthM: number;
  readonly beamM: number;
  readonly draughtM: number;
  readonly mastTopM: number;
}

const zoneNames: Readonly<Record<ZoneKind, string>> = {
  bow: 'Bow',
  decks: 'Side decks',
  cockpit: 'Cockpit and coachroof',
  stern: 'Stern',
  rig: 'Mast and rigging',
  masthead: 'Masthead',
  crew: 'Crew',
  hull: 'Hull and foils',
};

/** The zones of a new project, from bow to stern to masthead. */
export const usualZones: readonly ProjectZone[] = Object.entries(zoneNames).map(([id, name]) => ({
  id,
  name,
}));

/** What stands on every racing yacht: offered first to somebody who has just made a project. */
export const startingEntryIds = [
  'pulpit-legs',
  'pulpit-rails',
  'stanchions',
  'guard-wires',
  'pushpit-legs',
  'pushpit-rails',
  'mast-under-sail',
  'cap-shrouds',
  'lower-shrouds',
  'spreaders',
  'boom',
  'crew-on-rail',
  'helm',
  'coachroof',
  'hull-topsides',
] as const;

/** Half-beam over its largest, along the length of a modern hull with a wide stern (common practice, no source). */
const deckShape: readonly (readonly [fraction: number, halfBeamShare: number])[] = [
  [0, 0.02],
  [0.12, 0.38],
  [0.25, 0.66],
  [0.43, 0.88],
  [0.65, 1],
  [0.83, 0.99],
  [1, 0.88],
];

/** The stern's freeboard over the bow's. */
const sternShare = 0.84;

/** Freeboard at the bow, m: 0.32 m x (length in m)^0.6 (common practice, no source), 1.5 m for a boat of 13 m. */
function bowFreeboardM(lengthM: number): number {
  return 0.32 * lengthM ** 0.6;
}

/** A deck line from length and beam alone, to be replaced by a taped one. */
function plausibleDeckLine(lengthM: number, beamM: number): ProjectDeckStation[] {
  return deckShape.map(([fraction, share]) => ({
    aftOfStemM: rounded(fraction * lengthM),
    freeboardM: rounded(bowFreeboardM(lengthM) * (1 - (1 - sternShare) * fraction)),
    halfBeamM: rounded(0.5 * beamM * share),
  }));
}

function rounded(valueM: number): number {
  return Math.round(valueM * 1000) / 1000;
}

/** Mast foot over the length, from the stem. */
const mastShare = 0.41;

function boatOf({ name, lengthM, beamM, draughtM, mastTopM }: BoatOutline): ProjectBoat {
  return {
    ...blankBoat,
    name,
    lengthM,
    beamM,
    draughtM,
    deckLine: plausibleDeckLine(lengthM, beamM),
    mast: { aftOfStemM: rounded(mastShare * lengthM), topAboveWaterplaneM: mastTopM },
  };
}

/** Boat speed upwind: 1.1 m/s x sqrt(length in m), nine tenths of a hull's own wave (common practice, no source). */
function upwindSpeedMs(lengthM: number): number {
  const speedKn = fromSi(1.1 * Math.sqrt(lengthM), 'kn');
  // To a tenth of a knot, which is how it will be read.
  return toSi(Math.round(10 * speedKn) / 10, 'kn');
}

const trueWindMs = toSi(16, 'kn');

/**
 * A project to start from: a boat from five numbers, the usual zones and one condition upwind, so that the first fitting
 * added has its newtons at once. What was not asked is said to be assumed.
 */
export function newProject(outline: BoatOutline): Project {
  return blankProject({
    name: outline.name,
    notes: 'Deck line, mast place and condition are assumed from the boat’s size: replace them by your own.',
    boat: boatOf(outline),
    zones: [...usualZones],
    conditions: [
      blankCondition({
        id: 'upwind',
        name: 'Upwind',
        note: 'Assumed from the boat’s length: type your own numbers.',
        wind: { kind: 'true', speedMs: trueWindMs, heightM: 10, angleFromCourseDeg: 45 },
        boatSpeedMs: upwindSpeedMs(outline.lengthM),
        heelDeg: 20,
        leewayDeg: 4,
      }),
    ],
  });
}
