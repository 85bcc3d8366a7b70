import type { SailingState } from '../condition/sailingState';
import { emptyWind, windAt, type Setting } from '../fitting/localWind';
import type { CoefficientDoubts } from '../fitting/coefficientDoubts';
import { addPointForce } from '../fitting/pointForce';
import type { Ranged } from '../fitting/fittingInput';
import type { Sums } from '../fitting/outcome';
import type { MemberGeometry } from '../member/memberGeometry';

const scratch = emptyWind();

/**
 * Adds the force on an isotropic drag area at a member's start: F = rho/2 CdA |u| u. A point under water has none.
 * Source: ledger-practice.
 * @returns false when the point is under water.
 */
export function addMeasuredArea(
  geometry: MemberGeometry,
  dragAreaM2: Ranged,
  doubtId: string,
  state: SailingState,
  setting: Setting,
  sums: Sums,
  doubts: CoefficientDoubts | null,
): boolean {
  if (geometry.startHeightM <= 0) return false;
  const [x, y, z] = geometry.start;
  const wind = windAt(state, setting, geometry.startHeightM, scratch);
  const speed = Math.sqrt(wind.localX * wind.localX + wind.localY * wind.localY);
  const perArea = 0.5 * state.air.densityKgM3 * speed;
  const add = (into: Sums, areaM2: number): void => {
    addPointForce(into, perArea * areaM2 * wind.localX, perArea * areaM2 * wind.localY, 0, x, y, z, wind);
  };
  add(sums, dragAreaM2.best);
  if (doubts === null) return true;
  const entry = doubts.entry(doubtId);
  add(entry.up, dragAreaM2.high - dragAreaM2.best);
  add(entry.down, dragAreaM2.low - dragAreaM2.best);
  return true;
}
