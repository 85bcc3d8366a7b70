import type { DoubtedKey } from '../fitting/change';
import type { DoubtChange } from './doubtChange';
import type { Range } from './doubts';

/** A 90 % range reaches this many standard deviations to each side of a normal's middle. */
const deviationsTo95 = 1.6448536269514722;
const rootTwoPi = Math.sqrt(2 * Math.PI);
/** Variance of the two-sided half-normal with sides a and b: a b + (1/2 - 1/(2 pi)) (a - b)^2. */
const lopsidedVariance = 1 / 2 - 1 / (2 * Math.PI);
/** Third moment with sides a and b: (a - b) / sqrt(2 pi) (3 variance - (1 - 5/(2 pi)) (a - b)^2). */
const lopsidedThird = 1 - 5 / (2 * Math.PI);

/**
 * Low and high end, from the best value, of the 90 % range of a sum of independent sources.
 *
 * A source is half-normal to each side of the best value with even chances, its sides the 90 % ends. Means, variances and
 * third moments of independent sources add; the sum is given the same shape with the same three moments. That is the
 * rule of squares for sources that are even to both sides, and exact for a single lopsided one. Plain squares with the
 * sides apart miss the middle of a sum of several sources that all lean the same way. Neither end passes the plain sum
 * of the sources' own ends. Many sources that can only go one way carry the whole range to that side of the best value.
 * Against random draws: `tests/properties/doubts.test.ts`.
 */
export function combinedEnds(
  sources: readonly DoubtChange[],
  key: DoubtedKey,
  counts: (source: DoubtChange) => boolean = () => true,
): Range {
  const sum = emptySum();
  for (const source of sources) {
    if (counts(source)) addSource(sum, source.upIn(key), source.downIn(key));
  }
  return endsOf(sum);
}

/** What independent sources add up to: their moments, and their own ends in plain sums. */
export interface SourceSum {
  mean: number;
  variance: number;
  third: number;
  most: number;
  least: number;
}

export function emptySum(): SourceSum {
  return { mean: 0, variance: 0, third: 0, most: 0, least: 0 };
}

/** Adds a source by the changes at its two states. */
export function addSource(into: SourceSum, up: number, down: number): void {
  if (up === 0 && down === 0) return;
  const above = Math.max(up, down, 0) / deviationsTo95;
  const below = -Math.min(up, down, 0) / deviationsTo95;
  const lean = above - below;
  const own = above * below + lopsidedVariance * lean * lean;
  into.most += Math.max(up, down, 0);
  into.least += Math.min(up, down, 0);
  into.mean += lean / rootTwoPi;
  into.variance += own;
  into.third += (lean / rootTwoPi) * (3 * own - lopsidedThird * lean * lean);
}

/** The ends of the sum's range, see `combinedEnds`. */
export function endsOf({ mean, variance, third, most, least }: SourceSum): Range {
  if (variance === 0) return { low: 0, high: 0 };
  const lean = leanFrom(variance, third);
  const product = Math.max(variance - lopsidedVariance * lean * lean, 0);
  // Sides a and b from a - b and a b.
  const span = Math.sqrt(lean * lean + 4 * product);
  const middle = mean - lean / rootTwoPi;
  return {
    low: Math.max(middle - (deviationsTo95 * (span - lean)) / 2, least),
    high: Math.min(middle + (deviationsTo95 * (span + lean)) / 2, most),
  };
}

/** a - b of the shape with a variance and a third moment, by Newton's method; one-sided at most. */
function leanFrom(variance: number, third: number): number {
  const most = Math.sqrt(variance / lopsidedVariance);
  let lean = (third * rootTwoPi) / (3 * variance);
  for (let step = 0; step < 8; step += 1) {
    const value = lean * (3 * variance - lopsidedThird * lean * lean) - third * rootTwoPi;
    const change = value / (3 * variance - 3 * lopsidedThird * lean * lean);
    lean = Math.min(Math.max(lean - change, -most), most);
    if (Math.abs(change) < 1e-12 * most) break;
  }
  return lean;
}
