import type { SailingState } from '../condition/sailingState';
import type { Quantity, SiUnit } from '../quantity';
import type { EndMethod } from '../section/endEffect';
import { logWindHeight, vonKarman, type WindLaw } from '../wind/windProfile';
import type { BluffBodyShape, Shape } from './fittingInput';
import type { WireConstruction } from '../section/wire';
import { memberQuantities, type MemberTraceKey } from './memberTrace';

export type MemberQuantities = Readonly<Record<MemberTraceKey, Quantity>>;

/**
 * The working's table for one kind of fitting and the methods chosen: `memberQuantities` with the equations and sources
 * that this kind, this end effect and this wind law have.
 */
export function memberQuantitiesFor(shape: Shape, ends: EndMethod, law: WindLaw): MemberQuantities {
  return {
    ...memberQuantities,
    trueWindMs: { ...memberQuantities.trueWindMs, ...windLawEquations(law) },
    endFactor: { ...memberQuantities.endFactor, source: ends === 'dnv' ? 'dnv-rp-c205' : 'en-1991-1-4' },
    ...kindQuantities(shape),
  };
}

/** The exponent that iec-61400-3 gives; another has no source here. */
const iecExponent = 0.14;

function windLawEquations(law: WindLaw): Pick<Quantity, 'equation' | 'source'> {
  switch (law.kind) {
    case 'log':
      return { equation: '(u_f / kappa) ln(z_w / z_0)', source: 'charnock' };
    case 'power':
      return {
        equation: 'W_10 (z_w / 10)^alpha',
        ...(law.exponent === iecExponent ? { source: 'iec-61400-3' } : {}),
      };
    case 'uniform':
      return { equation: 'W_10' };
  }
}

type SomeQuantities = Partial<Record<MemberTraceKey, Quantity>>;

function kindQuantities(shape: Shape): SomeQuantities {
  switch (shape.kind) {
    case 'roundBar':
      return shape.coefficient === null ? {} : typedCoefficient;
    case 'wire':
      return shape.coefficient === null ? wireOf(shape.construction) : typedCoefficient;
    case 'ellipticalBar':
      return { ...sectionMember, ...(shape.coefficient === null ? ellipse : typedCoefficient) };
    case 'rectangularBar':
      return { ...sectionMember, ...(shape.coefficient === null ? rectangle : typedCoefficient) };
    case 'fairing':
      return { ...sectionMember, ...(shape.coefficient === null ? fairing : typedCoefficient) };
    case 'sphere':
      return { ...sphere, ...(shape.coefficient === null ? {} : typedCoefficient) };
    case 'net':
      return net;
    case 'bluffBody':
      return isTyped(shape) ? bluffBody : handbookBody;
    case 'measuredArea':
      return measuredArea;
  }
}

/** A typed coefficient names its source in the project, not here. */
const typedCoefficient: SomeQuantities = {
  coefficientBest: { symbol: 'C_d', label: 'drag coefficient, typed', unit: '1' },
};

/** On the chord instead of the diameter, and with a lift. */
const sectionMember: SomeQuantities = {
  reynolds: { symbol: 'Re', label: 'Reynolds number on the chord', unit: '1', equation: 'u_n c / nu' },
  slenderness: {
    symbol: 'L/c',
    label: 'slenderness of the whole length, closed ends counted in',
    unit: '1',
  },
  areaM2: { symbol: 'A_r', label: 'area the coefficients are based on', unit: 'm2', equation: 'c L' },
  forceTrackXN: {
    ...memberQuantities.forceTrackXN,
    equation: 'sum of [(rho/2) k c |u_n| (C_d u_nX + C_l (t x u_n)_X) + (rho/2) C_f p |u_t| u_t t_X] dL',
  },
};

const rectangle: SomeQuantities = {
  coefficientBest: {
    symbol: 'C_d',
    label: 'drag coefficient, best',
    unit: '1',
    equation: 'C_c (b/c) cos^2 a_i + C_t sin^2 a_i',
    source: 'en-rectangles',
  },
  liftCoefficient: {
    symbol: 'C_l',
    label: 'lift coefficient, best',
    unit: '1',
    equation: '(C_t - C_c b/c) sin a_i cos a_i',
    source: 'en-rectangles',
  },
};

const ellipse: SomeQuantities = {
  coefficientBest: {
    symbol: 'C_d',
    label: 'drag coefficient, best (few sources)',
    unit: '1',
    source: 'hoerner-ellipse',
  },
  liftCoefficient: {
    symbol: 'C_l',
    label: 'lift coefficient, best (few sources)',
    unit: '1',
    source: 'ledger-practice',
  },
};

const fairing: SomeQuantities = {
  coefficientBest: {
    symbol: 'C_d',
    label: 'drag coefficient, best, finite length in it',
    unit: '1',
    equation: 'c_d(a_e) + C_l^2 / (pi A e)',
    source: 'sheldahl-klimas-1981',
  },
  liftCoefficient: {
    symbol: 'C_l',
    label: 'lift coefficient, best',
    unit: '1',
    equation: 'c_l(a_e), a_e = a_i - C_l / (pi A e)',
    source: 'sheldahl-klimas-1981',
  },
};

function wireOf(construction: WireConstruction): SomeQuantities {
  if (construction === 'rod') return {};
  return {
    coefficientBest: {
      symbol: 'C_d',
      label: 'drag coefficient, best',
      unit: '1',
      source: construction === 'braidedRope' ? 'rope-design-values' : 'hoerner-cables',
    },
  };
}

const sphere: SomeQuantities = {
  reynolds: { symbol: 'Re', label: 'Reynolds number on the diameter', unit: '1', equation: 'e u d / nu' },
  coefficientBest: { symbol: 'C_d', label: 'drag coefficient, best', unit: '1', source: 'sphere-curves' },
  areaM2: { symbol: 'A_r', label: 'frontal area', unit: 'm2', equation: 'pi d^2 / 4' },
  forceTrackXN: {
    ...memberQuantities.forceTrackXN,
    equation: '-q C_d A_r cos B_l',
    source: 'vector-mechanics',
  },
};

function isTyped({ coefficients: { x, y, z } }: BluffBodyShape): boolean {
  return x !== null && y !== null && z !== null;
}

const bodyCoefficient: Quantity = {
  symbol: 'C_d',
  label: 'drag coefficient, mean of the axes',
  unit: '1',
  equation: 'sum n_i^2 C_i A_i / sum n_i^2 A_i',
};

const bluffBody: SomeQuantities = {
  coefficientBest: bodyCoefficient,
  areaM2: {
    symbol: 'A_r',
    label: "frontal areas weighted with the wind's direction",
    unit: 'm2',
    equation: 'sum n_i^2 A_i',
  },
  forceTrackXN: {
    ...memberQuantities.forceTrackXN,
    equation: 'sum of R F, F_i = (rho/2) C_i A_i |u| u_i',
    source: 'ledger-practice',
  },
};

/** A net's axes have the gross area each; its coefficients are those onto the face and along it. */
const net: SomeQuantities = {
  ...bluffBody,
  coefficientBest: { ...bodyCoefficient, source: 'porous-structures' },
};

/** With an untyped axis the handbook's cube takes part. */
const handbookBody: SomeQuantities = {
  ...bluffBody,
  coefficientBest: { ...bodyCoefficient, source: 'cengel-cimbala' },
};

const measuredArea: SomeQuantities = {
  dragAlongWindN: { ...memberQuantities.dragAlongWindN, equation: 'q C_dA' },
  dragAreaM2: { symbol: 'C_dA', label: 'drag area, the same from every side', unit: 'm2' },
  forceTrackXN: {
    ...memberQuantities.forceTrackXN,
    equation: '-D_w cos B_l',
    source: 'ledger-practice',
  },
};

/** A number that the equations name and that belongs to the condition, not to the fitting. */
export interface KnownNumber {
  readonly value: number;
  readonly unit: SiUnit;
}

/** Symbols of the condition with their numbers, as the equations of the working use them. */
export function conditionSymbols(state: SailingState): Readonly<Record<string, KnownNumber>> {
  const { profile, air } = state;
  return {
    V: { value: state.boatSpeedMs, unit: 'm/s' },
    rho: { value: air.densityKgM3, unit: 'kg/m3' },
    nu: { value: air.kinematicViscosityM2S, unit: 'm2/s' },
    leeway: { value: state.condition.leewayRad, unit: 'rad' },
    T: { value: state.trueWindAngleRad, unit: 'rad' },
    kappa: { value: vonKarman, unit: '1' },
    u_f: { value: profile.frictionVelocityMs, unit: 'm/s' },
    z_0: { value: profile.roughnessLengthM, unit: 'm' },
    W_10: { value: profile.speedAt10Ms, unit: 'm/s' },
    alpha: { value: profile.law.kind === 'power' ? profile.law.exponent : 0, unit: '1' },
    k_s: { value: state.condition.hullDragPerSideForce ?? 0, unit: '1' },
    k_h: { value: heelPrice(state), unit: '1/m' },
  };
}

/** The price of heel counts at the heel limit only. */
function heelPrice({ condition }: SailingState): number {
  return condition.atHeelLimit ? (condition.driveLostPerHeelingMomentPerM ?? 0) : 0;
}

/** The height that the wind laws are entered with, z_w: 1 m or more. */
export function windHeight(heightM: number): KnownNumber {
  return { value: Math.exp(logWindHeight(heightM)), unit: 'm' };
}

/** From deployed and stowed to the mean that the ledger adds up. */
export const dutyQuantities = {
  dutyFraction: { symbol: 't', label: 'duty, share of the time in use', unit: '1' },
  deployedDragN: { symbol: 'D_d', label: 'force against the track, deployed', unit: 'N' },
  stowedDragN: { symbol: 'D_s', label: 'force against the track, stowed', unit: 'N' },
  meanDragN: {
    symbol: 'D',
    label: 'force against the track, mean',
    unit: 'N',
    equation: 't D_d + (1 - t) D_s',
  },
} as const satisfies Record<string, Quantity>;

export type DutyKey = keyof typeof dutyQuantities;
