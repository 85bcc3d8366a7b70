import { netAxes } from '../body/netForce';
import { sphereRegimes } from '../body/sphere';
import { sphereAreaM2, spherePoint, type SpherePoint } from '../body/sphereForce';
import { bodyAxes, bodyCoefficient, bodyPoint, type BodyAxes, type BodyPoint } from '../body/threeAxisBody';
import { apparentWindAt, type SailingState } from '../condition/sailingState';
import type { MemberPoint } from '../member/integrateMember';
import { heightAlong, type MemberGeometry } from '../member/memberGeometry';
import { plainZero } from '../numerics/plainZero';
import type { Quantity } from '../quantity';
import {
  directionOf,
  isMemberShape,
  type BluffBodyShape,
  type FittingInput,
  type MemberShape,
  type NetShape,
  type Ranged,
  type SphereShape,
} from './fittingInput';
import { referenceWidthOf, regimeName } from './memberFamilies';
import { emptyWind, windAt, type PointWind, type Setting } from './localWind';
import { axisAngle, slendernessAt } from './memberReach';
import type { Sums } from './outcome';

/**
 * The working of one member: wind, coefficient and area at the middle of its dry stretch, and the force summed over it.
 * Entries that a kind of fitting does not have are null.
 */
export interface MemberTrace {
  readonly heightM: number;
  readonly lowestHeightM: number;
  readonly highestHeightM: number;
  readonly trueWindMs: number;
  readonly apparentSpeedMs: number;
  readonly apparentAngleFromBowRad: number;
  readonly apparentAngleFromCourseRad: number;
  /** The same with the local turn: where the wind at the fitting comes from. */
  readonly localAngleFromCourseRad: number;
  readonly exposure: number;
  readonly localSpeedMs: number;
  readonly dynamicPressurePa: number;
  /** Angle between the local wind and the member's axis, 0 to pi/2. */
  readonly axisAngleRad: number | null;
  readonly crossSpeedMs: number | null;
  /** Angle from the chord to the air's part square to the axis; null for a section without a direction. */
  readonly incidenceRad: number | null;
  readonly reynolds: number | null;
  readonly crisisReynolds: number | null;
  readonly coefficientBest: number | null;
  readonly coefficientLow: number | null;
  readonly coefficientHigh: number | null;
  /** Lift square to the axis and to the air's part there; null for a section without a direction. */
  readonly liftCoefficient: number | null;
  readonly slenderness: number | null;
  readonly endFactor: number | null;
  readonly frictionCoefficient: number | null;
  readonly dryLengthM: number | null;
  /** The area the coefficient is based on: diameter x dry length, or the body's frontal areas weighted with the wind's direction. */
  readonly areaM2: number | null;
  readonly dragAlongWindN: number;
  /** Drag along the local wind over its dynamic pressure at the middle. */
  readonly dragAreaM2: number;
  readonly forceTrackXN: number;
  readonly forceTrackYN: number;
  readonly forceTrackZN: number;
  readonly trackPowerW: number;
  readonly airPowerW: number;
  readonly regime: string;
}

export type MemberTraceKey = Exclude<keyof MemberTrace, 'regime'>;

/** Symbols, units and equations of the working. */
export const memberQuantities = {
  heightM: { symbol: 'z', label: 'height above the water, middle of the dry length', unit: 'm' },
  lowestHeightM: { symbol: 'z_1', label: 'lowest point above the water', unit: 'm' },
  highestHeightM: { symbol: 'z_2', label: 'highest point above the water', unit: 'm' },
  trueWindMs: {
    symbol: 'W',
    label: 'true wind at that height',
    unit: 'm/s',
    equation: 'the condition’s wind law at z',
  },
  apparentSpeedMs: {
    symbol: 'u',
    label: 'apparent wind speed',
    unit: 'm/s',
    equation: '((W cos T + V)^2 + (W sin T)^2)^0.5',
  },
  apparentAngleFromBowRad: { symbol: 'A', label: 'apparent wind angle from the bow', unit: 'rad' },
  apparentAngleFromCourseRad: {
    symbol: 'B',
    label: 'apparent wind angle from the course',
    unit: 'rad',
    equation: 'A + leeway',
  },
  localAngleFromCourseRad: {
    symbol: 'B_l',
    label: 'wind angle at the fitting, from the course',
    unit: 'rad',
    equation: 'B + turn',
  },
  exposure: { symbol: 'e', label: 'exposure, a factor on the wind speed', unit: '1' },
  localSpeedMs: { symbol: 'e u', label: 'wind speed at the fitting', unit: 'm/s', equation: 'e u' },
  dynamicPressurePa: {
    symbol: 'q',
    label: 'dynamic pressure',
    unit: 'Pa',
    equation: 'rho (e u)^2 / 2',
    source: 'vector-mechanics',
  },
  axisAngleRad: { symbol: 'a', label: 'angle between wind and axis', unit: 'rad' },
  crossSpeedMs: {
    symbol: 'u_n',
    label: 'wind speed square to the axis',
    unit: 'm/s',
    equation: 'e u sin a',
    source: 'cross-flow',
  },
  incidenceRad: { symbol: 'a_i', label: 'incidence, from the chord to the wind', unit: 'rad' },
  reynolds: { symbol: 'Re', label: 'Reynolds number', unit: '1', equation: 'u_n d / nu' },
  crisisReynolds: {
    symbol: 'Re*',
    label: 'Reynolds number as it counts towards the drag crisis',
    unit: '1',
    equation: 'Re moved by roughness and inclination',
    source: 'achenbach-1971',
  },
  coefficientBest: { symbol: 'C_d', label: 'drag coefficient, best', unit: '1', source: 'round-bar-table' },
  coefficientLow: { symbol: 'C_d low', label: 'drag coefficient, low', unit: '1', source: 'round-bar-table' },
  coefficientHigh: {
    symbol: 'C_d high',
    label: 'drag coefficient, high',
    unit: '1',
    source: 'round-bar-table',
  },
  liftCoefficient: { symbol: 'C_l', label: 'lift coefficient, best', unit: '1' },
  slenderness: {
    symbol: 'L/d',
    label: 'slenderness of the whole length, closed ends counted in',
    unit: '1',
    source: 'dnv-rp-c205',
  },
  endFactor: { symbol: 'k', label: 'factor of finite length', unit: '1', source: 'dnv-rp-c205' },
  frictionCoefficient: {
    symbol: 'C_f',
    label: 'friction along the axis',
    unit: '1',
    equation: '0.455 / (log10 Re_L)^2.58',
    source: 'fox-mcdonald',
  },
  dryLengthM: { symbol: 'L', label: 'length above the water', unit: 'm' },
  areaM2: { symbol: 'A_r', label: 'area the coefficient is based on', unit: 'm2', equation: 'd L' },
  dragAlongWindN: {
    symbol: 'D_w',
    label: 'drag along the local wind (does not add up)',
    unit: 'N',
    equation: 'F . u_l / |u_l|, u_l the local wind',
  },
  dragAreaM2: { symbol: 'C_dA', label: 'drag area', unit: 'm2', equation: 'D_w / q' },
  forceTrackXN: {
    symbol: 'F_X',
    label: 'force along the track, forward',
    unit: 'N',
    equation: 'sum of [(rho/2) k C_d d |u_n| u_nX + (rho/2) C_f p |u_t| u_t t_X] dL',
  },
  forceTrackYN: { symbol: 'F_Y', label: 'force across the track, to port', unit: 'N' },
  forceTrackZN: { symbol: 'F_Z', label: 'force upwards', unit: 'N' },
  trackPowerW: { symbol: 'P_t', label: 'track power', unit: 'W', equation: '-F_X V' },
  airPowerW: { symbol: 'P_a', label: 'air power', unit: 'W', equation: 'sum F . u' },
} as const satisfies Record<MemberTraceKey, Quantity>;

/** What is known at the middle of a member, by the kind of fitting; null where a kind has no such thing. */
interface MiddleFacts {
  readonly heightM: number;
  readonly wind: PointWind;
  readonly localSpeedMs: number;
  readonly bar: MemberPoint | null;
  readonly isDirected: boolean;
  /** Of a shape that is no bar and has one. */
  readonly reynolds?: number;
  readonly coefficient: Ranged | null;
  readonly areaM2: number | null;
  readonly regime: string;
}

/** The trace of one dry member from its place, its sums and, for a bar, its middle point. */
export function memberTrace(
  fitting: FittingInput,
  state: SailingState,
  geometry: MemberGeometry,
  setting: Setting,
  sums: Sums,
  point: MemberPoint,
): MemberTrace {
  const { shape } = fitting;
  if (isMemberShape(shape))
    return traceFrom(state, geometry, setting, sums, memberFacts(shape, geometry, point));
  if (shape.kind === 'bluffBody' || shape.kind === 'net') {
    const axes = shape.kind === 'net' ? netAxes(shape, geometry, state, setting) : bodyAxes(shape);
    const facts = bodyFacts(axes, bodyRegime(shape), geometry, bodyPoint(geometry, state, setting));
    return traceFrom(state, geometry, setting, sums, facts);
  }
  if (shape.kind === 'sphere') {
    const facts = sphereFacts(shape, spherePoint(geometry, shape, state, setting));
    return traceFrom(state, geometry, setting, sums, facts);
  }
  const wind = windAt(state, setting, geometry.startHeightM, emptyWind());
  return traceFrom(state, geometry, setting, sums, {
    heightM: geometry.startHeightM,
    wind,
    localSpeedMs: Math.hypot(wind.localX, wind.localY),
    bar: null,
    isDirected: false,
    coefficient: null,
    areaM2: null,
    regime: 'measured',
  });
}

/** One literal, so that every trace has the same shape in memory: the ledger makes thousands of them. */
function traceFrom(
  state: SailingState,
  geometry: MemberGeometry,
  setting: Setting,
  sums: Sums,
  facts: MiddleFacts,
): MemberTrace {
  const { heightM, wind, localSpeedMs, bar, coefficient } = facts;
  const directed = facts.isDirected ? bar : null;
  const apparent = apparentWindAt(state, heightM);
  const dynamicPressurePa = 0.5 * state.air.densityKgM3 * localSpeedMs * localSpeedMs;
  const dragAlongWindN =
    localSpeedMs > 0 ? (sums.fx * wind.localX + sums.fy * wind.localY) / localSpeedMs : 0;
  const from = heightAlong(geometry, geometry.dryFrom);
  const to = heightAlong(geometry, geometry.dryTo);
  return {
    heightM,
    lowestHeightM: Math.min(from, to),
    highestHeightM: Math.max(from, to),
    trueWindMs: apparent.trueWindMs,
    apparentSpeedMs: apparent.speedMs,
    apparentAngleFromBowRad: apparent.angleFromBowRad,
    apparentAngleFromCourseRad: apparent.angleFromCourseRad,
    localAngleFromCourseRad:
      apparent.angleFromCourseRad + Math.atan2(setting.turnSine * state.tackSign, setting.turnCosine),
    exposure: setting.exposure,
    localSpeedMs,
    dynamicPressurePa,
    axisAngleRad: bar === null ? null : axisAngle(bar),
    crossSpeedMs: bar?.crossSpeedMs ?? null,
    incidenceRad: directed?.incidenceRad ?? null,
    reynolds: bar?.strip.reynolds ?? facts.reynolds ?? null,
    crisisReynolds: bar === null ? null : 10 ** bar.strip.logCrisisReynolds,
    coefficientBest: coefficient?.best ?? null,
    coefficientLow: coefficient?.low ?? null,
    coefficientHigh: coefficient?.high ?? null,
    liftCoefficient: directed?.strip.lift ?? null,
    slenderness: bar === null ? null : slendernessAt(bar),
    endFactor: bar?.endFactor ?? null,
    frictionCoefficient: bar?.frictionBest ?? null,
    dryLengthM: bar === null ? null : (geometry.dryTo - geometry.dryFrom) * geometry.lengthM,
    areaM2: facts.areaM2,
    dragAlongWindN,
    dragAreaM2: dynamicPressurePa > 0 ? dragAlongWindN / dynamicPressurePa : 0,
    forceTrackXN: sums.fx,
    forceTrackYN: sums.fy,
    forceTrackZN: sums.fz,
    trackPowerW: plainZero(-sums.fx * state.boatSpeedMs),
    airPowerW: sums.airPower,
    regime: facts.regime,
  };
}

function memberFacts(shape: MemberShape, geometry: MemberGeometry, point: MemberPoint): MiddleFacts {
  const { strip } = point;
  return {
    heightM: point.heightM,
    wind: point.wind,
    localSpeedMs: point.localSpeedMs,
    bar: point,
    isDirected: directionOf(shape) !== null,
    coefficient: { best: strip.drag, low: strip.dragLow, high: strip.dragHigh },
    areaM2: referenceWidthOf(shape) * (geometry.dryTo - geometry.dryFrom) * geometry.lengthM,
    regime: regimeName(shape, strip.regime),
  };
}

function bodyFacts(axes: BodyAxes, regime: string, geometry: MemberGeometry, point: BodyPoint): MiddleFacts {
  const { areaM2, ...coefficient } = bodyCoefficient(axes, point.direction);
  return {
    heightM: point.heightM,
    wind: point.wind,
    localSpeedMs: point.localSpeedMs,
    bar: null,
    isDirected: false,
    coefficient,
    areaM2: areaM2 * (geometry.dryTo - geometry.dryFrom),
    regime,
  };
}

function bodyRegime(shape: BluffBodyShape | NetShape): string {
  if (shape.kind === 'net') return 'net';
  const { x, y, z } = shape.coefficients;
  return x === null && y === null && z === null ? 'edges' : 'typed';
}

function sphereFacts(shape: SphereShape, point: SpherePoint): MiddleFacts {
  const { heightM, wind, localSpeedMs, reynolds, drag } = point;
  return {
    heightM,
    wind,
    localSpeedMs,
    bar: null,
    isDirected: false,
    reynolds,
    coefficient: drag,
    areaM2: sphereAreaM2(shape),
    regime: shape.coefficient === null ? sphereRegimes[drag.regime]! : 'typed',
  };
}
