import type { Air } from '../air/air';
import type { SailingState } from '../condition/sailingState';
import { stateWithWind } from '../condition/sailingState';
import { rangesOf } from '../doubt/doubts';
import { evaluateFitting } from '../fitting/evaluateFitting';
import type { FittingInput, Ranged, Shape } from '../fitting/fittingInput';
import type { Notice } from '../fitting/notice';
import type { EndKind, EndMethod } from '../section/endEffect';
import { boatVector } from '../vector/vector3';

/** A shape of the ledger with its length, as it stands in a wind of one speed square to it. */
export interface StandingShape {
  readonly shape: Shape;
  /** 0 for a shape that sits at a point. */
  readonly lengthM: number;
}

/** The force on one of them, as the ledger has it: best value by DNV's ends, its 90 % range, and what lies behind it. */
export interface UniformDrag {
  readonly forceN: Ranged;
  readonly reynolds: number | null;
  readonly regime: string;
  readonly notices: readonly Notice[];
}

/** High enough above the water for any length to be dry; in a uniform wind the height is of no account. */
const footHeightM = 1;
const still = {
  tack: 'starboard',
  boatSpeedMs: 0,
  heelRad: 0,
  leewayRad: 0,
  riseM: 0,
  air: { temperatureC: 15, pressurePa: 101_325, relativeHumidity: 0 },
  windLaw: { kind: 'uniform' },
  windSpeedDoubt: 0,
  windAngleDoubtRad: 0,
  densityDoubt: 0,
  hullDragPerSideForce: null,
  driveLostPerHeelingMomentPerM: null,
  atHeelLimit: false,
  totalResistanceN: null,
  centreOfLateralResistance: boatVector(0, 0, 0),
} as const;

function stateIn(speedMs: number, air: Air): SailingState {
  const wind = { speedAt10Ms: speedMs, angleFromCourseRad: 0 };
  const windInput = { kind: 'true', speedMs, heightM: 10, angleFromCourseRad: 0 } as const;
  return stateWithWind({ ...still, wind: windInput }, wind, air);
}

function standing({ shape, lengthM }: StandingShape): FittingInput {
  const asWritten: Ranged = { best: 1, low: 1, high: 1 };
  return {
    id: 'envelope',
    shape,
    members: [{ start: boatVector(0, 0, footHeightM), end: boatVector(0, 0, footHeightM + lengthM) }],
    lengthDoubt: null,
    exposure: asWritten,
    exposureLeeward: asWritten,
    exposureDoubtId: 'own:envelope:exposure',
    localTurnRad: 0,
    stowed: null,
  };
}

/**
 * Force on one upright shape in a uniform wind from ahead, through the ledger's own code. Doubts of sizes are left out: an
 * envelope's sizes count as written.
 * @param ends the method of finite length whose value is the best one; the other is a doubt.
 */
export function dragInUniformWind(
  member: StandingShape,
  speedMs: number,
  air: Air,
  ends: EndMethod = 'dnv',
): UniformDrag {
  const methods = { ends, inclined: 'cross-flow', fairing: 'turbulent' } as const;
  const states = { best: stateIn(speedMs, air), variants: [] };
  const trace = evaluateFitting(standing(member), states, methods, 1);
  const doubts = trace.doubts.filter(({ id }) => !id.startsWith('own:'));
  const best = trace.mean.dragAgainstTrackN;
  const range = rangesOf(trace.mean, doubts).item.dragAgainstTrackN;
  const [first] = trace.members;
  return {
    forceN: { best, low: range.low, high: range.high },
    reynolds: first?.reynolds ?? null,
    regime: first?.regime ?? '',
    notices: trace.notices,
  };
}

/** The same with both ends joined: nothing of finite length. */
export function withoutEnds(member: StandingShape): StandingShape {
  const { shape } = member;
  const joined: readonly [EndKind, EndKind] = ['joined', 'joined'];
  return 'ends' in shape ? { ...member, shape: { ...shape, ends: joined } } : member;
}
