import { airOf, type Air } from '../../src/physics/air/air';
import type { ConditionStates } from '../../src/physics/condition/conditionStates';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import { stateWithWind, trueWindOf, type SailingState } from '../../src/physics/condition/sailingState';
import { evaluateFitting, type FittingTrace } from '../../src/physics/fitting/evaluateFitting';
import type {
  FittingInput,
  PlacedMember,
  Ranged,
  RoundBarShape,
  Shape,
} from '../../src/physics/fitting/fittingInput';
import type { MemberTrace } from '../../src/physics/fitting/memberTrace';
import { boatVector, type BoatVector } from '../../src/physics/vector/vector3';

const exactly = (best: number): Ranged => ({ best, low: best, high: best });

/** A boat at rest, upright, in a uniform wind of 10 m/s from ahead, dry standard air; a check changes what it needs. */
export function conditionOf(changes: Partial<SailingCondition> = {}): SailingCondition {
  return {
    wind: { kind: 'true', speedMs: 10, heightM: 10, angleFromCourseRad: 0 },
    tack: 'starboard',
    boatSpeedMs: 0,
    heelRad: 0,
    leewayRad: 0,
    riseM: 0,
    air: { temperatureC: 15, pressurePa: 101325, relativeHumidity: 0 },
    windLaw: { kind: 'uniform' },
    windSpeedDoubt: 0,
    windAngleDoubtRad: 0,
    densityDoubt: 0,
    hullDragPerSideForce: null,
    driveLostPerHeelingMomentPerM: null,
    atHeelLimit: false,
    totalResistanceN: null,
    centreOfLateralResistance: boatVector(0, 0, 0),
    ...changes,
  };
}

/** A true wind from `angleFromCourseDeg`. */
export function trueWind(speedMs: number, angleFromCourseDeg: number): SailingCondition['wind'] {
  return {
    kind: 'true',
    speedMs,
    heightM: 10,
    angleFromCourseRad: (angleFromCourseDeg * Math.PI) / 180,
  };
}

/** The true wind that is met as `apparentMs` from `angleDeg` off the course at boat speed `boatSpeedMs`. */
export function windMetAs(
  apparentMs: number,
  angleDeg: number,
  boatSpeedMs: number,
): SailingCondition['wind'] {
  const angle = (angleDeg * Math.PI) / 180;
  const ahead = apparentMs * Math.cos(angle) - boatSpeedMs;
  const abeam = apparentMs * Math.sin(angle);
  return {
    kind: 'true',
    speedMs: Math.hypot(ahead, abeam),
    heightM: 10,
    angleFromCourseRad: Math.atan2(abeam, ahead),
  };
}

/** A fluid given by its density and kinematic viscosity, as a textbook problem gives it. */
export function fluid(densityKgM3: number, kinematicViscosityM2S: number): Air {
  return {
    temperatureK: NaN,
    pressurePa: NaN,
    vapourPressurePa: NaN,
    densityKgM3,
    kinematicViscosityM2S,
    dynamicViscosityPaS: densityKgM3 * kinematicViscosityM2S,
  };
}

export function stateOf(condition: SailingCondition, air: Air = airOf(condition.air)): SailingState {
  return stateWithWind(condition, trueWindOf(condition), air);
}

interface Bar {
  readonly diameterM: number;
  readonly start?: BoatVector;
  readonly end: BoatVector;
  /** A typed drag coefficient; without it the model's own curve is used. */
  readonly coefficient?: number;
  readonly ends?: RoundBarShape['ends'];
  readonly friction?: boolean;
}

/** A round bar from `start` (1 m above the water) to `end`, with joined ends and no friction unless said otherwise. */
export function bar(input: Bar): FittingInput {
  const typed = input.coefficient;
  return fittingOf(
    {
      kind: 'roundBar',
      diameter: { valueM: input.diameterM, basis: 'measured', doubtId: 'own:check:diameter' },
      roughnessM: 0,
      coefficient:
        typed === undefined
          ? null
          : { ...exactly(typed), areaBase: 'diameter x length', source: 'the check' },
      coefficientDoubtId: 'own:check:coefficient',
      friction: input.friction ?? false,
      ends: input.ends ?? ['joined', 'joined'],
    },
    [{ start: input.start ?? boatVector(0, 0, 1), end: input.end }],
  );
}

/** An isotropic drag area 10 m above the water. */
export function dragArea(dragAreaM2: number): FittingInput {
  const place = boatVector(0, 0, 10);
  const shape: Shape = {
    kind: 'measuredArea',
    dragAreaM2: exactly(dragAreaM2),
    doubtId: 'own:check:drag-area',
  };
  return fittingOf(shape, [{ start: place, end: place }]);
}

/** The shape in the free wind, always in use, with no doubt beside the shape's own. */
export function fittingOf(shape: Shape, members: readonly PlacedMember[], id = 'check'): FittingInput {
  return {
    id,
    shape,
    members,
    lengthDoubt: null,
    exposure: exactly(1),
    exposureLeeward: exactly(1),
    exposureDoubtId: `own:${id}:exposure`,
    localTurnRad: 0,
    stowed: null,
  };
}

/** The fitting in the condition through the same code that the ledger uses. */
export function evaluate(fitting: FittingInput, condition: SailingCondition, air?: Air): FittingTrace {
  const states: ConditionStates = { best: stateOf(condition, air), variants: [] };
  return evaluateFitting(fitting, states, { ends: 'dnv', inclined: 'cross-flow', fairing: 'turbulent' }, 1);
}

/** The working of the fitting's only member. */
export function memberOf(trace: FittingTrace): MemberTrace {
  const [member] = trace.members;
  if (member === undefined) throw new Error('the check has no dry member');
  return member;
}

/** An entry of the working that a bar always has. */
export function known(value: number | null): number {
  if (value === null) throw new Error('the check asks for an entry that this fitting does not have');
  return value;
}
