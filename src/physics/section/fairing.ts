import { alignedDrag, type AlignedDrag, type FairingSurface } from './fairingAligned';
import { bandColumn, bandWidening, fairingBandAt } from './fairingBand';
import {
  fairingRowsAt,
  placeRow,
  rowValue,
  stallDegAt,
  type FairingRows,
  type RowPlace,
} from './fairingRows';
import { emptySpan, finiteSpan, spanEfficiency, type FiniteSpan } from './fairingSpan';

/** Names of the stretches of incidence: below the stall, from it to 30 deg, to 150 deg, the tail into the wind. */
export const fairingRegimes = ['attached', 'stall', 'separated', 'reversed'] as const;

const separatedFromDeg = 30;
const reversedFromDeg = 150;
/** Below this the flow is attached in every row. */
const leastSquareForceDeg = 3;

/** Coefficients on chord x length. Low and high are states, of drag: lift goes with the drag of its state and may be larger in the low one. */
export interface FairingCoefficients {
  drag: number;
  dragLow: number;
  dragHigh: number;
  lift: number;
  liftLow: number;
  liftHigh: number;
  /** Index into `fairingRegimes`. */
  regime: number;
}

export function emptyFairing(): FairingCoefficients {
  return { drag: 0, dragLow: 0, dragHigh: 0, lift: 0, liftLow: 0, liftHigh: 0, regime: 0 };
}

type State = 'best' | 'low' | 'high';

/** Scratch of one evaluation: a sweep allocates nothing. */
const place: RowPlace = { row: 0, share: 0 };
const aligned: AlignedDrag = { best: 0, low: 0, high: 0 };
const span: FiniteSpan = emptySpan();
const force = { drag: 0, lift: 0 };
let tableAligned = 0;

/**
 * Section coefficients in two dimensions: symmetric in incidence (drag even, lift odd), from the published table, straight
 * lines over incidence (per degree) and ln Re, monotone cubic over thickness ratio. Drag at no incidence comes from
 * `alignedDrag` and fades with cos^2 to 90 deg; the rest is the table's.
 * @param incidenceRad -pi to pi, 0 with the nose into the wind.
 * Range: t/c 0.12 to 0.25, chord Re 4e4 to 5e6; nearest outside (`isOutsideFairingTable`), the band half as wide again.
 * Source: sheldahl-klimas-1981, hoerner-sections.
 */
export function fairingCoefficients(
  thicknessRatio: number,
  chordReynolds: number,
  incidenceRad: number,
  surface: FairingSurface,
  out: FairingCoefficients,
): FairingCoefficients {
  const rows = fairingRowsAt(thicknessRatio);
  return finiteFairing(rows, thicknessRatio, chordReynolds, incidenceRad, Infinity, surface, out, true);
}

/** The same for a piece of finite length; `aspectRatio` is length over chord with its ends counted in. */
export function finiteFairing(
  rows: FairingRows,
  thicknessRatio: number,
  chordReynolds: number,
  incidenceRad: number,
  aspectRatio: number,
  surface: FairingSurface,
  out: FairingCoefficients,
  withBand: boolean,
): FairingCoefficients {
  const incidenceDeg = Math.min(Math.abs((incidenceRad * 180) / Math.PI), 180);
  const side = incidenceRad < 0 ? -1 : 1;
  placeRow(chordReynolds, place);
  tableAligned = rowValue(rows.drag, place, 0);
  alignedDrag(thicknessRatio, chordReynolds, tableAligned, surface, aligned, withBand);
  stateForce(rows, incidenceDeg, aspectRatio, 'best');
  out.drag = force.drag;
  out.lift = side * force.lift;
  out.regime = regimeAt(rows, incidenceDeg);
  if (!withBand) return out;
  const widening = bandWidening(thicknessRatio, chordReynolds);
  stateForce(rows, incidenceDeg, aspectRatio, 'low');
  out.dragLow = widenedLow(out.drag, Math.min(force.drag, out.drag), widening);
  out.liftLow = out.lift + widening * (side * force.lift - out.lift);
  stateForce(rows, incidenceDeg, aspectRatio, 'high');
  out.dragHigh = out.drag + widening * Math.max(force.drag - out.drag, 0);
  out.liftHigh = out.lift + widening * (side * force.lift - out.lift);
  return out;
}

/** Low edges keep above nothing: the distance grows by the factor, but the edge falls by no more than it. */
function widenedLow(best: number, edge: number, widening: number): number {
  return Math.max(best - widening * (best - edge), edge / widening);
}

/** Fills `force` with drag and lift of one state. */
function stateForce(rows: FairingRows, incidenceDeg: number, aspectRatio: number, state: State): void {
  const isTailFirst = incidenceDeg > 90;
  const angleDeg = isTailFirst ? 180 - incidenceDeg : incidenceDeg;
  finiteSpan(rows, place, isTailFirst, angleDeg, aspectRatio, spanEfficiency[state], span);
  const effectiveDeg = isTailFirst ? 180 - span.effectiveDeg : span.effectiveDeg;
  const lift = span.plateFactor * sectionLift(rows, effectiveDeg, state);
  force.lift = lift;
  force.drag = span.plateFactor * sectionDrag(rows, effectiveDeg, state) + span.inducedRad * Math.abs(lift);
}

function sectionLift(rows: FairingRows, degrees: number, state: State): number {
  const lift = rowValue(rows.lift, place, degrees);
  if (state === 'best') return lift;
  const shift = fairingBandAt(bandColumn.stallShift, degrees);
  if (state === 'low') {
    const later = Math.max(lift, rowValue(rows.lift, place, degrees - shift), squareForceLift(rows, degrees));
    return later * fairingBandAt(bandColumn.liftLow, degrees);
  }
  const earlier = Math.min(lift, rowValue(rows.lift, place, degrees + shift));
  return earlier * fairingBandAt(bandColumn.liftHigh, degrees);
}

/** Lift of a force square to the chord that makes the table's drag: what separated flow gives, more than the table's lift there. */
function squareForceLift(rows: FairingRows, degrees: number): number {
  if (degrees < leastSquareForceDeg || degrees >= 90) return -Infinity;
  return pressureDrag(rows, degrees) / Math.tan((degrees * Math.PI) / 180);
}

function sectionDrag(rows: FairingRows, degrees: number, state: State): number {
  const fade = alignedFade(degrees);
  const own = aligned[state] * fade;
  const pressure = rowValue(rows.drag, place, degrees) - tableAligned * fade;
  if (state === 'best') return own + pressure;
  const shift = fairingBandAt(bandColumn.stallShift, degrees);
  if (state === 'low') {
    const later = Math.min(pressure, pressureDrag(rows, degrees - shift));
    return own + later * fairingBandAt(bandColumn.pressureLow, degrees);
  }
  const earlier = Math.max(pressure, pressureDrag(rows, degrees + shift));
  return own + earlier * fairingBandAt(bandColumn.pressureHigh, degrees);
}

/** The table's drag less its own drag at no incidence: what incidence adds. */
function pressureDrag(rows: FairingRows, degrees: number): number {
  return rowValue(rows.drag, place, degrees) - tableAligned * alignedFade(degrees);
}

/** cos^2 of the incidence to 90 deg, nothing beyond: there the table's own value stands. */
function alignedFade(degrees: number): number {
  if (degrees >= 90) return 0;
  const cosine = Math.cos((degrees * Math.PI) / 180);
  return cosine * cosine;
}

function regimeAt(rows: FairingRows, incidenceDeg: number): number {
  if (incidenceDeg >= reversedFromDeg) return 3;
  if (incidenceDeg >= separatedFromDeg) return 2;
  return incidenceDeg < stallDegAt(rows, place) ? 0 : 1;
}
