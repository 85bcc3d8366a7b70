import { crossings } from './crossings';

/** Where a curve is least, and how far it stays near that. */
export interface FlatNeighbourhood {
  readonly leastAt: number;
  readonly least: number;
  /** The curve stays within the share of its least value from here to here. */
  readonly from: number;
  readonly to: number;
  /** The stretch ends because the range does: the curve may go on being flat, or falling, beyond. */
  readonly isCutAtStart: boolean;
  readonly isCutAtEnd: boolean;
}

const samples = 64;
const tolerance = 1e-6;
/** Golden section: share of an interval that is kept. */
const kept = (Math.sqrt(5) - 1) / 2;

/**
 * The stretch about the least value of a positive, continuous curve on which it is at most (1 + share) times as large.
 * Of several dips the deepest counts; one narrower than a 64th of the range may be missed.
 * Example: 1/x + x on 0.1 to 10, share 0.05: least 2 at 1, from 0.730 to 1.37.
 */
export function flatNeighbourhood(
  curve: (x: number) => number,
  from: number,
  to: number,
  share: number,
): FlatNeighbourhood {
  const step = (to - from) / samples;
  const places = Array.from({ length: samples + 1 }, (_, i) => (i === samples ? to : from + i * step));
  const coarse = places.reduce((best, x) => (curve(x) < curve(best) ? x : best), from);
  const leastAt = leastBetween(curve, Math.max(coarse - step, from), Math.min(coarse + step, to));
  const least = curve(leastAt);
  const ends = crossings((x) => curve(x) - (1 + share) * least, from, to, step, tolerance);
  const before = ends.filter((x) => x < leastAt).at(-1);
  const after = ends.find((x) => x > leastAt);
  return {
    leastAt,
    least,
    from: before ?? from,
    to: after ?? to,
    isCutAtStart: before === undefined,
    isCutAtEnd: after === undefined,
  };
}

/** By golden section; an end of the interval where the curve falls all the way to it. */
function leastBetween(curve: (x: number) => number, left: number, right: number): number {
  let [from, to] = [left, right];
  while (to - from > tolerance) {
    const low = to - kept * (to - from);
    const high = from + kept * (to - from);
    if (curve(low) < curve(high)) to = high;
    else from = low;
  }
  return [left, (from + to) / 2, right].reduce((best, x) => (curve(x) < curve(best) ? x : best));
}
