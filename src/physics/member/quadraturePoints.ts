import { lowestWindHeightM } from '../wind/windProfile';

/**
 * Gauss points for a stretch between two heights. Below 1 m the wind is even and one point is exact; above, the wind
 * law is smooth in the logarithm of the height, so the ratio of the heights sets the number. A fitting comes within 1e-3
 * of its answer with 64 points; of round bars in the drag crisis, where the curve is steep, fewer than one in two
 * thousand at random misses that, by less than 1e-2. A fairing by its table wants more (`fairingPoints`).
 */
export function pointsBetween(heightA: number, heightB: number): number {
  const low = Math.max(Math.min(heightA, heightB), lowestWindHeightM);
  const high = Math.max(heightA, heightB, lowestWindHeightM);
  const ratio = high / low;
  if (ratio < 1.0001) return 1;
  if (ratio < 2) return 3;
  if (ratio < 4) return 4;
  return ratio < 10 ? 6 : 9;
}
