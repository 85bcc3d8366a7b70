import type { SailingState } from '../condition/sailingState';
import { plainZero } from '../numerics/plainZero';
import type { BoatVector } from '../vector/vector3';
import type { OutcomeKey, Sums } from './outcome';

/** The outcome's entries for which every doubt is followed. */
export const doubtedKeys = [
  'dragAgainstTrackN',
  'sideForceN',
  'heelingMomentNm',
  'airPowerW',
  'trackPowerW',
  'fullPriceW',
] as const satisfies readonly OutcomeKey[];
export type DoubtedKey = (typeof doubtedKeys)[number];

/** A change of the outcome, or a value of it, for the entries whose doubt is followed. */
export type Change = Readonly<Record<DoubtedKey, number>>;

/** So many numbers hold one change in an array of many, in the order of `doubtedKeys`. */
export const numbersPerChange = doubtedKeys.length;

/** The change whose numbers stand in an array from a place on. */
export function changeAt(numbers: Float64Array, from: number): Change {
  return {
    dragAgainstTrackN: numbers[from]!,
    sideForceN: numbers[from + 1]!,
    heelingMomentNm: numbers[from + 2]!,
    airPowerW: numbers[from + 3]!,
    trackPowerW: numbers[from + 4]!,
    fullPriceW: numbers[from + 5]!,
  };
}

/**
 * Writes the doubted entries of sums into an array from a place on, in the order of `doubtedKeys`. All are linear
 * in the sums, so the change of the sums gives the change of the entries.
 */
export function writeChange(sums: Sums, state: SailingState, into: Float64Array, from: number): void {
  const dragAgainstTrackN = plainZero(-sums.fx);
  const sideForceN = plainZero(state.tackSign * sums.fy);
  const heelingMomentNm = plainZero(heelingMoment(sums, state));
  const trackPowerW = plainZero(dragAgainstTrackN * state.boatSpeedMs);
  const { hullDragPerSideForce, driveLostPerHeelingMomentPerM, atHeelLimit } = state.condition;
  const sidePrice = (hullDragPerSideForce ?? 0) * sideForceN;
  const heelPrice = atHeelLimit ? (driveLostPerHeelingMomentPerM ?? 0) * heelingMomentNm : 0;
  into[from] = dragAgainstTrackN;
  into[from + 1] = sideForceN;
  into[from + 2] = heelingMomentNm;
  into[from + 3] = sums.airPower;
  into[from + 4] = trackPowerW;
  into[from + 5] = trackPowerW + state.boatSpeedMs * (sidePrice + heelPrice);
}

const scratchNumbers = new Float64Array(numbersPerChange);

/** The doubted entries of sums alone. */
export function changeOf(sums: Sums, state: SailingState): Change {
  writeChange(sums, state, scratchNumbers, 0);
  return changeAt(scratchNumbers, 0);
}

/**
 * Moment about the boat's x axis through the centre of lateral resistance, positive to leeward. A positive turn about x
 * puts the starboard side down, so starboard tack, whose leeward side is port, takes the minus sign.
 */
function heelingMoment(sums: Sums, state: SailingState): number {
  const { rowX, rowY, rowZ } = state.rotation;
  const momentX = rowX[0] * sums.mx + rowY[0] * sums.my + rowZ[0] * sums.mz;
  const forceY = rowX[1] * sums.fx + rowY[1] * sums.fy + rowZ[1] * sums.fz;
  const forceZ = rowX[2] * sums.fx + rowY[2] * sums.fy + rowZ[2] * sums.fz;
  const centre: BoatVector = state.centreOfLateralResistance;
  return -state.tackSign * (momentX - (centre[1] * forceZ - centre[2] * forceY));
}

/** Entry by entry: a + factor b. */
export function addChange(a: Change, b: Change, factor: number): Change {
  return {
    dragAgainstTrackN: a.dragAgainstTrackN + factor * b.dragAgainstTrackN,
    sideForceN: a.sideForceN + factor * b.sideForceN,
    heelingMomentNm: a.heelingMomentNm + factor * b.heelingMomentNm,
    airPowerW: a.airPowerW + factor * b.airPowerW,
    trackPowerW: a.trackPowerW + factor * b.trackPowerW,
    fullPriceW: a.fullPriceW + factor * b.fullPriceW,
  };
}
