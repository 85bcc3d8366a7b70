import { smoothStep } from '../numerics/smoothStep';
import { noseLoadingAt, stallDegAt, type FairingRows, type RowPlace } from './fairingRows';
import { plateEndFactor } from './rectangle';

const degreesPerRadian = 180 / Math.PI;
/** Shorter pieces than half a chord are taken as half a chord: the lifting line says nothing about them. */
const leastAspectRatio = 0.5;
/** Incidence, degrees, at which the tail, facing the wind, stalls. Source: sheldahl-klimas-1981. */
const tailStallDeg = 10;
/** The blend into the plate begins at the stall of the finite piece, but no later than this. */
const latestBlendDeg = 60;

/** Span efficiency: best, and in the low and the high state (0.75 to 1). */
export const spanEfficiency = { best: 0.9, low: 1, high: 0.75 } as const;

/** What a finite length does to a section at one incidence. */
export interface FiniteSpan {
  /** Effective incidence from nose or tail, degrees. */
  effectiveDeg: number;
  /** Factor on lift and drag of the section: 1 below the stall, the plate's finite-length factor square to the wind. */
  plateFactor: number;
  /** Induced drag is lift times this angle. */
  inducedRad: number;
}

export function emptySpan(): FiniteSpan {
  return { effectiveDeg: 0, plateFactor: 1, inducedRad: 0 };
}

/** Induced angle CL / (pi A e), rad. Source: prandtl-lifting-line. */
export function inducedAngleRad(lift: number, aspectRatio: number, efficiency: number): number {
  return lift / (Math.PI * aspectRatio * efficiency);
}

/**
 * Effective incidence a_e = a - CL(a_e) / (pi A e) below the stall; from there to 90 deg the induced angle fades and the
 * plate's finite-length factor comes in.
 *
 * CL in this equation is the sum of the rises of lift from the nose (or the tail): the section's own lift up to its first
 * peak, level where lift drops, so that there is one answer and it moves without a jump. Straight lines between whole
 * degrees make the solution exact. Induced drag is the lift times the induced angle: CL^2 / (pi A e) below the stall.
 * @param angleDeg incidence from the nose, or from the tail where it faces the wind: 0 to 90 deg.
 * @param aspectRatio length over chord, ends counted in; infinite gives the section itself.
 */
export function finiteSpan(
  rows: FairingRows,
  place: RowPlace,
  isTailFirst: boolean,
  angleDeg: number,
  aspectRatio: number,
  efficiency: number,
  out: FiniteSpan,
): FiniteSpan {
  out.effectiveDeg = angleDeg;
  out.plateFactor = 1;
  out.inducedRad = 0;
  if (aspectRatio === Infinity) return out;
  const perLift = inducedAngleRad(1, Math.max(aspectRatio, leastAspectRatio), efficiency);
  const stall = isTailFirst ? tailStallDeg : stallDegAt(rows, place);
  const stallLift = loadingAt(rows, place, isTailFirst, stall);
  const blendFrom = Math.min(stall + degreesPerRadian * perLift * stallLift, latestBlendDeg);
  const separated = smoothStep(blendFrom, 90, angleDeg);
  const inducedPerLift = perLift * (1 - separated);
  out.effectiveDeg = solveIncidence(rows, place, isTailFirst, angleDeg, degreesPerRadian * inducedPerLift);
  if (separated > 0) out.plateFactor = 1 + separated * (plateEndFactor(aspectRatio) - 1);
  out.inducedRad = (angleDeg - out.effectiveDeg) / degreesPerRadian;
  return out;
}

function loadingAtDegree(rows: FairingRows, place: RowPlace, isTailFirst: boolean, degree: number): number {
  return isTailFirst ? rows.tailLoading[degree]! : noseLoadingAt(rows, place, degree);
}

function loadingAt(rows: FairingRows, place: RowPlace, isTailFirst: boolean, degrees: number): number {
  const at = Math.min(Math.floor(degrees), 89);
  const first = loadingAtDegree(rows, place, isTailFirst, at);
  return first + (degrees - at) * (loadingAtDegree(rows, place, isTailFirst, at + 1) - first);
}

/** The x with x + perLift loading(x) = angle, in degrees; the left side rises by at least one degree a degree. */
function solveIncidence(
  rows: FairingRows,
  place: RowPlace,
  isTailFirst: boolean,
  angleDeg: number,
  perLiftDeg: number,
): number {
  let low = Math.min(Math.floor(angleDeg), 89);
  let atLow = low + perLiftDeg * loadingAtDegree(rows, place, isTailFirst, low);
  let atHigh = low + 1 + perLiftDeg * loadingAtDegree(rows, place, isTailFirst, low + 1);
  while (low > 0 && atLow > angleDeg) {
    low -= 1;
    atHigh = atLow;
    atLow = low + perLiftDeg * loadingAtDegree(rows, place, isTailFirst, low);
  }
  return low + (angleDeg - atLow) / (atHigh - atLow);
}
