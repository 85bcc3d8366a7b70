import type { SailingState } from '../condition/sailingState';
import { emptyWind, windAt, windAtLog, type PointWind, type Setting } from '../fitting/localWind';
import type { CoefficientDoubts } from '../fitting/coefficientDoubts';
import { addPointForce } from '../fitting/pointForce';
import type { BluffBodyShape, Ranged } from '../fitting/fittingInput';
import type { Sums } from '../fitting/outcome';
import { heightAlong, type MemberGeometry, type MemberNode } from '../member/memberGeometry';
import { cornerFactor, roundedCrisisShare } from '../section/rectangle';
import type { TypedCoefficient } from '../section/roundBarSection';
import type { Vector3 } from '../vector/vector3';

/**
 * A cube face-on, on frontal area: 1.05, with the range of sharp-edged bluff bodies standing free or on a deck (0.8 to
 * 1.3, assumed). Source: cengel-cimbala for 1.05.
 */
export const edgedBodyCoefficient: Ranged = { best: 1.05, low: 0.8, high: 1.3 };

/**
 * How rounded edges take force off a body, as EN has it for rectangular bars: best by `cornerFactor` on the smaller side
 * of the face. The low edge lets the drag crisis of rounded corners take half of the rest, at any speed; the high edge
 * gives back part of the relief, because a body's flow is not a bar's (both assumed). Source: en-rectangles.
 */
export function roundedBodyCoefficient(radiusOverSide: number): Ranged {
  const factor = cornerFactor(radiusOverSide);
  const rounded = (1 - factor) / 0.5;
  const { best, low, high } = edgedBodyCoefficient;
  return {
    best: factor * best,
    low: factor * low * (1 - roundedCrisisShare * rounded),
    high: high * (factor + returnedShare * (1 - factor)),
  };
}

/** A bar's relief by rounding that a body may not have (assumed). */
const returnedShare = 0.3;

/** Off the axes the three-axis rule is good to -15 / +25 % (common practice, no source). */
export const offAxisBand = { low: -0.15, high: 0.25 } as const;
const offAxisDoubtId = 'coefficient:bluffBody:off-axis';

/** Frontal area of a body along one of the boat's axes, with its coefficient and the name of the doubt in it. */
export interface AxisArea {
  readonly areaM2: number;
  readonly coefficient: Ranged;
  readonly doubtId: string;
}

export type BodyAxes = readonly [x: AxisArea, y: AxisArea, z: AxisArea];

const known = new WeakMap<BluffBodyShape, BodyAxes>();

/**
 * Frontal areas and coefficients of a bluff body, worked out once for a shape. A typed coefficient is a doubt of its own,
 * the handbook's is shared.
 */
export function bodyAxes(shape: BluffBodyShape): BodyAxes {
  const before = known.get(shape);
  if (before !== undefined) return before;
  const axes = axesOf(shape);
  known.set(shape, axes);
  return axes;
}

function axesOf(shape: BluffBodyShape): BodyAxes {
  const { cornerRadiusM, coefficients, coefficientDoubtId } = shape;
  const [length, width, height] = [shape.length.valueM, shape.width.valueM, shape.height.valueM];
  return [
    axisArea(width, height, cornerRadiusM, coefficients.x, `${coefficientDoubtId}-x`),
    axisArea(length, height, cornerRadiusM, coefficients.y, `${coefficientDoubtId}-y`),
    axisArea(length, width, cornerRadiusM, coefficients.z, `${coefficientDoubtId}-z`),
  ];
}

function axisArea(
  sideM: number,
  otherSideM: number,
  cornerRadiusM: number,
  typed: TypedCoefficient | null,
  ownId: string,
): AxisArea {
  const areaM2 = sideM * otherSideM;
  if (typed !== null) return { areaM2, coefficient: typed, doubtId: ownId };
  const coefficient = roundedBodyCoefficient(cornerRadiusM / Math.min(sideM, otherSideM));
  return { areaM2, coefficient, doubtId: 'coefficient:bluffBody:edges' };
}

/** How far a direction (unit vector) lies off the axes: 0 on an axis, 1 at 45 deg between two, and held there. */
function offAxisShare(nx: number, ny: number, nz: number): number {
  const [a, b, c] = [nx * nx, ny * ny, nz * nz];
  return Math.min(1, 2 * (1 - (a * a + b * b + c * c)));
}

/** The air at the middle of a body, for the working. */
export interface BodyPoint {
  readonly heightM: number;
  readonly wind: PointWind;
  readonly localSpeedMs: number;
  /** Unit vector of the local flow in the boat's axes. */
  readonly direction: readonly [number, number, number];
}

const scratch = emptyWind();

/**
 * Adds the force on a three-axis body: F_i = rho/2 (Cd A)_i |u| u_i along the boat's axes i, spread evenly over the
 * body's height so that a tall one feels the gradient; the part under water has none. Source: ledger-practice.
 * @returns false when no part of the body is dry.
 */
export function addThreeAxisBody(
  geometry: MemberGeometry,
  axes: BodyAxes,
  state: SailingState,
  setting: Setting,
  sums: Sums,
  doubts: CoefficientDoubts | null,
): boolean {
  for (const node of geometry.nodes) addBodyPoint(axes, state, setting, node, sums, doubts);
  return geometry.nodes.length > 0;
}

function addBodyPoint(
  axes: BodyAxes,
  state: SailingState,
  setting: Setting,
  node: MemberNode,
  sums: Sums,
  doubts: CoefficientDoubts | null,
): void {
  const wind = windAtLog(state, setting, node.logHeight, scratch);
  const { rowX, rowY } = state.rotation;
  const speed = Math.sqrt(wind.localX * wind.localX + wind.localY * wind.localY);
  const pressure = 0.5 * state.air.densityKgM3 * speed * node.weight;
  for (let axis = 0; axis < 3; axis += 1) {
    const { areaM2, coefficient } = axes[axis]!;
    const perCoefficient = pressure * areaM2 * (rowX[axis]! * wind.localX + rowY[axis]! * wind.localY);
    scratchPer[axis] = perCoefficient;
    scratchForce[axis] = perCoefficient * coefficient.best;
  }
  addAlongAxes(sums, state, scratchForce, 1, node, wind);
  if (doubts === null) return;
  addAxisDoubts(doubts, axes, state, node, wind);
  const off = speed === 0 ? 0 : offAxisAt(state, wind, speed);
  const offAxis = doubts.entry(offAxisDoubtId);
  addAlongAxes(offAxis.up, state, scratchForce, off * offAxisBand.high, node, wind);
  addAlongAxes(offAxis.down, state, scratchForce, off * offAxisBand.low, node, wind);
}

type AxisForces = [number, number, number];

/** Along the boat's axes: force per unit of coefficient, and force at the best coefficient, N. Used again at every point. */
const scratchPer: AxisForces = [0, 0, 0];
const scratchForce: AxisForces = [0, 0, 0];
const scratchChange: AxisForces = [0, 0, 0];

/** The coefficient of each axis at its high and low state, under the axis's own name. */
function addAxisDoubts(
  doubts: CoefficientDoubts,
  axes: BodyAxes,
  state: SailingState,
  node: MemberNode,
  wind: PointWind,
): void {
  for (let axis = 0; axis < 3; axis += 1) {
    const { coefficient, doubtId } = axes[axis]!;
    const entry = doubts.entry(doubtId);
    scratchChange.fill(0);
    scratchChange[axis] = scratchPer[axis]!;
    addAlongAxes(entry.up, state, scratchChange, coefficient.high - coefficient.best, node, wind);
    addAlongAxes(entry.down, state, scratchChange, coefficient.low - coefficient.best, node, wind);
  }
}

/** Adds `factor` times the forces along the boat's axes at a body's point. */
function addAlongAxes(
  into: Sums,
  { rotation }: SailingState,
  forces: AxisForces,
  factor: number,
  node: MemberNode,
  wind: PointWind,
): void {
  const { rowX, rowY, rowZ } = rotation;
  const x = factor * forces[0];
  const y = factor * forces[1];
  const z = factor * forces[2];
  addPointForce(
    into,
    x * rowX[0] + y * rowX[1] + z * rowX[2],
    x * rowY[0] + y * rowY[1] + z * rowY[2],
    x * rowZ[0] + y * rowZ[1] + z * rowZ[2],
    node.x,
    node.y,
    node.z,
    wind,
  );
}

function offAxisAt(state: SailingState, wind: PointWind, speed: number): number {
  const [x, y, z] = directionInBoat(state, wind, speed);
  return offAxisShare(x, y, z);
}

/** Unit vector of the local wind in the boat's axes; zero without wind. */
function directionInBoat(state: SailingState, wind: PointWind, speed: number): [number, number, number] {
  if (speed === 0) return [0, 0, 0];
  const { rowX, rowY } = state.rotation;
  const x = wind.localX / speed;
  const y = wind.localY / speed;
  return [rowX[0] * x + rowY[0] * y, rowX[1] * x + rowY[1] * y, rowX[2] * x + rowY[2] * y];
}

/** A body's coefficient in the wind from one direction, on its frontal areas weighted with that direction. */
export interface BodyCoefficient extends Ranged {
  readonly areaM2: number;
}

/**
 * The mean of a body's coefficients by axes: sum n_i^2 C_i A_i / sum n_i^2 A_i, with the range of the axes and that of
 * the directions between them. Zero for a body without area. Source: ledger-practice.
 * @param direction of the wind in the axes' frame, a unit vector.
 */
export function bodyCoefficient(axes: BodyAxes, direction: Vector3): BodyCoefficient {
  const squares = direction.map((component) => component * component);
  const weighted = (value: (axis: AxisArea) => number): number =>
    axes.reduce((sum, axis, i) => sum + squares[i]! * value(axis), 0);
  const areaM2 = weighted((axis) => axis.areaM2);
  const mean = (key: keyof Ranged): number =>
    areaM2 > 0 ? weighted((axis) => axis.areaM2 * axis.coefficient[key]) / areaM2 : 0;
  const best = mean('best');
  const off = offAxisShare(...direction);
  return {
    areaM2,
    best,
    low: best - Math.hypot(best - mean('low'), best * off * offAxisBand.low),
    high: best + Math.hypot(mean('high') - best, best * off * offAxisBand.high),
  };
}

/** The middle of a body's dry height. */
export function bodyPoint(geometry: MemberGeometry, state: SailingState, setting: Setting): BodyPoint {
  const heightM = heightAlong(geometry, (geometry.dryFrom + geometry.dryTo) / 2);
  const wind = windAt(state, setting, heightM, emptyWind());
  const localSpeedMs = Math.hypot(wind.localX, wind.localY);
  return { heightM, wind, localSpeedMs, direction: directionInBoat(state, wind, localSpeedMs) };
}
