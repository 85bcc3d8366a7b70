import type { DoubtChange } from '../../src/physics/doubt/doubtChange';
import type { Range } from '../../src/physics/doubt/doubts';
import { doubtedKeys, type Change, type DoubtedKey } from '../../src/physics/fitting/change';

/** A 90 % range reaches this many standard deviations to each side. */
const deviationsTo95 = 1.6448536269514722;

/** Mulberry32: a small generator of numbers in [0, 1) with a seed, so that a failure comes back. */
function uniformNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Standard normal numbers by Box and Muller. */
function normalNumbers(seed: number): () => number {
  const uniform = uniformNumbers(seed);
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/**
 * The 5 to 95 % ranges of `draws` random outcomes. Each source is drawn on its own, upwards or downwards with even
 * chances and half-normal to each side, so that its own 5 to 95 % range is its low to high end.
 */
export function drawnRanges(
  best: Change,
  doubts: readonly DoubtChange[],
  draws: number,
  seed: number,
): Record<DoubtedKey, Range> {
  const normal = normalNumbers(seed);
  const deviations = doubts.map(() => Float64Array.from({ length: draws }, () => normal() / deviationsTo95));
  const ranges: Partial<Record<DoubtedKey, Range>> = {};
  for (const key of doubtedKeys) {
    const values = new Float64Array(draws).fill(best[key]);
    doubts.forEach(({ up, down }, i) => {
      const high = Math.max(up[key], down[key], 0);
      const low = Math.min(up[key], down[key], 0);
      if (high === 0 && low === 0) return;
      deviations[i]?.forEach((deviation, draw) => {
        values[draw] = (values[draw] ?? NaN) + (deviation > 0 ? deviation * high : -deviation * low);
      });
    });
    values.sort();
    ranges[key] = { low: quantile(values, 0.05), high: quantile(values, 0.95) };
  }
  return ranges as Record<DoubtedKey, Range>;
}

function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const [low = NaN, high = NaN] = [sorted[below], sorted[Math.min(below + 1, sorted.length - 1)]];
  return low + (place - below) * (high - low);
}
