import type { Sums } from './outcome';
import type { PointWind } from './localWind';

/** Adds a force (track's frame, N) acting at a point (track's frame, m, from the boat's origin) in a point's wind. */
export function addPointForce(
  sums: Sums,
  fx: number,
  fy: number,
  fz: number,
  x: number,
  y: number,
  z: number,
  wind: PointWind,
): void {
  sums.fx += fx;
  sums.fy += fy;
  sums.fz += fz;
  sums.mx += y * fz - z * fy;
  sums.my += z * fx - x * fz;
  sums.mz += x * fy - y * fx;
  sums.airPower += fx * wind.freeX + fy * wind.freeY;
  sums.windPower += fx * wind.trueX + fy * wind.trueY;
}
