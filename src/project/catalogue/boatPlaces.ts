import { deckLine, freeboardAt, halfBeamAt, type DeckLine } from '../../physics/placement/deckLine';
import type { ProjectBoat, ProjectPlacement, ProjectPoint } from '../file/schema';
import { point } from '../file/blankParts';

type EndPoints = Extract<ProjectPlacement, { kind: 'endPoints' }>;
type Taped = Extract<ProjectPlacement, { kind: 'taped' }>;

/** The places of a boat from which the catalogue's placements are made. Fractions run from the stem (0) to the stern (1). */
export interface BoatPlaces {
  readonly lengthM: number;
  readonly beamM: number;
  readonly draughtM: number;
  readonly line: DeckLine;
  readonly mastAftM: number;
  readonly mastFootZM: number;
  /** Never less than a metre above the deck, whatever the file says. */
  readonly mastTopZM: number;
}

const leastMastM = 1;

export function boatPlaces(boat: ProjectBoat): BoatPlaces {
  const line = deckLine(boat.lengthM, boat.deckLine);
  // A mast stands on its boat: what is laid out from it must not leave the file's frame.
  const mastAftM = Math.min(Math.max(boat.mast.aftOfStemM, 0), boat.lengthM);
  const footZM = freeboardAt(line, mastAftM);
  return {
    lengthM: boat.lengthM,
    beamM: boat.beamM,
    draughtM: boat.draughtM,
    line,
    mastAftM,
    mastFootZM: footZM,
    mastTopZM: Math.max(boat.mast.topAboveWaterplaneM, footZM + leastMastM),
  };
}

/** What is off the centreline stays off it by this much, m, so that a pair is two places on the narrowest boat. */
const leastOutM = 0.03;

/** To the millimetre: a catalogue knows no more. */
function toMillimetre(valueM: number): number {
  return Math.round(valueM * 1000) / 1000 + 0;
}

function rounded(xM: number, yM: number, zM: number): ProjectPoint {
  return point(toMillimetre(xM), toMillimetre(yM), toMillimetre(zM));
}

/** A point on the centreline, `aboveM` above the deck edge at that station. Fractions below 0 lie ahead of the stem. */
export function onCentre(places: BoatPlaces, fraction: number, aboveM: number): ProjectPoint {
  return offCentre(places, fraction, 0, aboveM);
}

/** A point `outM` to port of the centreline. */
export function offCentre(
  { line, lengthM }: BoatPlaces,
  fraction: number,
  outM: number,
  aboveM: number,
): ProjectPoint {
  const aftM = fraction * lengthM;
  return rounded(line.stemXM - aftM, outM, freeboardAt(line, aftM) + aboveM);
}

/** A point at the port deck edge, `inM` inboard of it (negative: outboard). */
export function atEdge(places: BoatPlaces, fraction: number, inM: number, aboveM: number): ProjectPoint {
  const outM = halfBeamAt(places.line, fraction * places.lengthM) - inM;
  return offCentre(places, fraction, Math.max(outM, leastOutM), aboveM);
}

/** A point at the mast, `up` from its foot on deck (0) to its top (1). */
export function atMast(places: BoatPlaces, up: number, aftM: number, outM: number): ProjectPoint {
  const zM = places.mastFootZM + up * mastLengthM(places);
  return rounded(places.line.stemXM - places.mastAftM - aftM, outM, zM);
}

/** Above the deck, m. */
export function mastLengthM({ mastFootZM, mastTopZM }: BoatPlaces): number {
  return mastTopZM - mastFootZM;
}

/** The mast's station as a fraction of the length. */
export function mastFraction({ mastAftM, lengthM }: BoatPlaces): number {
  return mastAftM / lengthM;
}

export function fromWater(
  { line, lengthM }: BoatPlaces,
  fraction: number,
  outM: number,
  zM: number,
): ProjectPoint {
  return rounded(line.stemXM - fraction * lengthM, outM, zM);
}

export function halfBeamM({ line, lengthM }: BoatPlaces, fraction: number): number {
  return halfBeamAt(line, fraction * lengthM);
}

export function freeboardM({ line, lengthM }: BoatPlaces, fraction: number): number {
  return freeboardAt(line, fraction * lengthM);
}

type Ends = readonly [start: ProjectPoint, end: ProjectPoint];

interface Several {
  /** The last member of a row, and how many there are; one needs no row. */
  readonly row?: { readonly count: number; readonly last: Ends };
  readonly pair?: boolean;
}

/** A bar from point to point, or a row or pair of them. */
export function barBetween([start, end]: Ends, { row, pair = false }: Several = {}): EndPoints {
  return {
    kind: 'endPoints',
    start,
    end,
    basis: 'estimated',
    row:
      row === undefined || row.count < 2
        ? null
        : { count: row.count, lastStart: row.last[0], lastEnd: row.last[1] },
    pair,
  };
}

/** A body or a drag area that stands on a point, or a row of them from the first to the last. */
export function standingAt(
  place: ProjectPoint,
  { count = 1, last = place, pair = false }: { count?: number; last?: ProjectPoint; pair?: boolean } = {},
): EndPoints {
  return barBetween([place, place], { row: { count, last: [last, last] }, pair });
}

interface TapedParts {
  /** Of the first and, in a row, of the last. */
  readonly fraction: number;
  readonly lastFraction?: number;
  readonly count?: number;
  readonly inM: number;
  readonly aboveM?: number;
  readonly lengthM?: number;
  readonly leanAftDeg?: number;
  readonly leanOutDeg?: number;
  /** Single ones stand to starboard. */
  readonly pair?: boolean;
}

/** As taped along the deck edge. */
export function tapedAtEdge({ lengthM: boatLengthM }: BoatPlaces, parts: TapedParts): Taped {
  const { fraction, lastFraction = fraction, count = 1, inM, pair = true } = parts;
  return {
    kind: 'taped',
    aftOfStemM: toMillimetre(fraction * boatLengthM),
    side: 'starboard',
    athwart: { from: 'deck-edge', inboardOrOutM: inM },
    aboveDeckM: parts.aboveM ?? 0,
    lengthM: parts.lengthM ?? 0,
    leanAftDeg: parts.leanAftDeg ?? 0,
    leanOutDeg: parts.leanOutDeg ?? 0,
    basis: 'estimated',
    row:
      count < 2
        ? null
        : { count, lastAftOfStemM: toMillimetre(lastFraction * boatLengthM), lastAthwartM: inM },
    pair,
  };
}

/** How many stand along a stretch at most `spacingM` apart, both ends included. */
export function countAlong(stretchM: number, spacingM: number): number {
  return Math.min(Math.max(Math.ceil(stretchM / spacingM) + 1, 2), 60);
}
