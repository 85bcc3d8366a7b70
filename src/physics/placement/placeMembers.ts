import type { PlacedMember } from '../fitting/fittingInput';
import { boatVector, type BoatVector } from '../vector/vector3';
import { freeboardAt, halfBeamAt, type DeckLine } from './deckLine';

export type Side = 'centreline' | 'port' | 'starboard';

/**
 * A member as it is taped on a dock: how far aft of the stem its foot stands, how far out from the centreline or in from
 * the deck edge, how high above the deck, how long, and how it leans. Lean aft and lean out are 0 for a member that
 * stands upright; 90 deg of lean aft lays it pointing aft. On the centreline, "out" is to port.
 */
export interface TapedPlace {
  readonly aftOfStemM: number;
  readonly side: Side;
  readonly athwartFrom: 'centreline' | 'deck-edge';
  readonly athwartM: number;
  readonly aboveDeckM: number;
  readonly lengthM: number;
  readonly leanAftRad: number;
  readonly leanOutRad: number;
}

/** Foot and head of a taped member in the boat's frame. */
export function placeTaped(line: DeckLine, place: TapedPlace): PlacedMember {
  const out = place.side === 'starboard' ? -1 : 1;
  const offset =
    place.athwartFrom === 'centreline' ? place.athwartM : halfBeamAt(line, place.aftOfStemM) - place.athwartM;
  const start = boatVector(
    line.stemXM - place.aftOfStemM,
    out * offset,
    freeboardAt(line, place.aftOfStemM) + place.aboveDeckM,
  );
  const direction = leaning(place.leanAftRad, out * place.leanOutRad);
  return { start, end: pointAlong(start, direction, place.lengthM) };
}

/** Unit vector of an upright member leaned out (to port for a positive angle) and then aft. */
function leaning(leanAftRad: number, leanToPortRad: number): BoatVector {
  return boatVector(
    -Math.sin(leanAftRad),
    Math.sin(leanToPortRad) * Math.cos(leanAftRad),
    Math.cos(leanToPortRad) * Math.cos(leanAftRad),
  );
}

function pointAlong(start: BoatVector, direction: BoatVector, lengthM: number): BoatVector {
  return boatVector(
    start[0] + lengthM * direction[0],
    start[1] + lengthM * direction[1],
    start[2] + lengthM * direction[2],
  );
}

/** `count` values from `first` to `last`, equally spaced, both included. */
function spaced(first: number, last: number, count: number, index: number): number {
  return first + ((last - first) * index) / (count - 1);
}

/** A row of taped members: each stands on the deck line at its own distance from the stem. */
export function placeTapedRow(
  line: DeckLine,
  first: TapedPlace,
  last: { readonly aftOfStemM: number; readonly athwartM: number },
  count: number,
): PlacedMember[] {
  return Array.from({ length: count }, (_, index) =>
    placeTaped(line, {
      ...first,
      aftOfStemM: spaced(first.aftOfStemM, last.aftOfStemM, count, index),
      athwartM: spaced(first.athwartM, last.athwartM, count, index),
    }),
  );
}

/** A row of members between a first and a last one given by end points. */
export function placeRow(first: PlacedMember, last: PlacedMember, count: number): PlacedMember[] {
  return Array.from({ length: count }, (_, index) => ({
    start: between(first.start, last.start, count, index),
    end: between(first.end, last.end, count, index),
  }));
}

function between(a: BoatVector, b: BoatVector, count: number, index: number): BoatVector {
  return boatVector(
    spaced(a[0], b[0], count, index),
    spaced(a[1], b[1], count, index),
    spaced(a[2], b[2], count, index),
  );
}

/** The members and their mirror images across the centreplane. */
export function withMirrorImages(members: readonly PlacedMember[]): PlacedMember[] {
  const images = members.map(({ start, end }) => ({
    start: mirrored(start),
    end: mirrored(end),
    isMirrored: true,
  }));
  return [...members, ...images];
}

function mirrored(point: BoatVector): BoatVector {
  return boatVector(point[0], -point[1], point[2]);
}
