import type { Tack } from '../../physics/frames/boatToTrack';
import {
  apparentWindAt,
  heightAboveWaterM,
  solveCondition,
  stateWithApparentWind,
  stateWithWind,
  trueWindOf,
  type ApparentWind,
  type SailingState,
} from '../../physics/condition/sailingState';
import { formatQuantity } from '../../units/print';
import { conditionToPhysics } from '../core/conditionToPhysics';
import { pointToBoat } from '../core/fittingToPhysics';
import type { Project } from '../file/schema';
import { solveProjectCondition, type SolvedCondition } from '../ledger/conditionSummary';
import { memberMiddle } from './benchMember';
import type { BenchMember, SweepOver, SweepQuestion } from './benchTypes';

/** The air and the boat at one place of a sweep, with the wind's angle from the course at the member. */
export interface SweepPoint {
  readonly state: SailingState;
  readonly angleFromCourseRad: number;
}

/** What every candidate of a member shares in a sweep. */
export interface SweepStates {
  readonly xs: Float64Array;
  /** One for each of xs; of the same heel, leeway, tack and rise. */
  readonly points: readonly [SweepPoint, ...SweepPoint[]];
  /** Any place between the ends, for what is looked for more closely. */
  readonly pointAt: (x: number) => SweepPoint;
  readonly presentAt: number | null;
  readonly held: () => string;
}

const pieces: Readonly<Record<SweepOver, number>> = { apparentAngle: 180, apparentSpeed: 60, boatSpeed: 60 };
const leastApparentMs = 1;
const usualApparentMs = 31;
const usualBoatMs = 20;
/** A sweep goes on this far beyond the present value where that is more. */
const beyondPresent = 1.5;

const known = new WeakMap<SolvedCondition, Map<string, SweepStates>>();
/** Of one condition: a member's height, three sweeps, two tacks. */
const mostKnown = 24;

/** The states of a sweep, remembered by condition and the member's height; null where there is no such condition. */
export function sweepStates(
  project: Project,
  member: BenchMember,
  { conditionId, over, tack }: SweepQuestion,
): SweepStates | null {
  const condition = project.conditions.find(({ id }) => id === conditionId);
  if (condition === undefined) return null;
  const solved = solveProjectCondition(project, condition);
  const ofCondition = known.get(solved) ?? new Map<string, SweepStates>();
  known.set(solved, ofCondition);
  const middle = memberMiddle(project, member);
  const key = [over, tack, middle.xM, middle.yM, middle.zM].join(' ');
  const before = ofCondition.get(key);
  if (before !== undefined) return before;
  const base = onTack(project, solved, tack);
  const heightM = heightAboveWaterM(base, pointToBoat(middle));
  const states = laidOut(base, heightM, over, tack === condition.tack);
  ofCondition.set(key, states);
  if (ofCondition.size > mostKnown) ofCondition.delete(ofCondition.keys().next().value ?? '');
  return states;
}

/** The condition as it stands, or its mirror image. */
function onTack(project: Project, { states, summary }: SolvedCondition, tack: Tack): SailingState {
  if (tack === summary.condition.tack) return states.best;
  return solveCondition({ ...conditionToPhysics(project, summary.condition), tack });
}

function laidOut(base: SailingState, heightM: number, over: SweepOver, isPresent: boolean): SweepStates {
  const present = apparentWindAt(base, heightM);
  const { from, to, at } = rangeOf(base, present, over);
  const xs = Float64Array.from({ length: pieces[over] + 1 }, (_, i) =>
    i === pieces[over] ? to : from + ((to - from) * i) / pieces[over],
  );
  const pointAt = (x: number): SweepPoint => {
    const state = stateAt(base, present, over, x);
    return { state, angleFromCourseRad: apparentWindAt(state, heightM).angleFromCourseRad };
  };
  return {
    xs,
    points: [pointAt(from), ...Array.from(xs.slice(1), pointAt)],
    pointAt,
    presentAt: isPresent && at >= from && at <= to ? at : null,
    // Worked out when asked: the states are remembered, and the reader's units may change.
    held: () => heldText(base, present, over),
  };
}

function rangeOf(
  { boatSpeedMs }: SailingState,
  { speedMs, angleFromBowRad }: ApparentWind,
  over: SweepOver,
): { readonly from: number; readonly to: number; readonly at: number } {
  if (over === 'apparentAngle') return { from: 0, to: Math.PI, at: angleFromBowRad };
  if (over === 'apparentSpeed') {
    return { from: leastApparentMs, to: Math.max(usualApparentMs, beyondPresent * speedMs), at: speedMs };
  }
  return { from: 0, to: Math.max(usualBoatMs, beyondPresent * boatSpeedMs), at: boatSpeedMs };
}

/**
 * Over angle and apparent speed, the apparent wind at the member's middle is what is set: boat speed, heel, leeway and the
 * wind law stay, and the true wind follows, so that at the present place the state is the condition's own. Over boat
 * speed the true wind stays and the apparent wind follows.
 */
function stateAt(base: SailingState, present: ApparentWind, over: SweepOver, x: number): SailingState {
  const { condition, air } = base;
  if (over === 'boatSpeed')
    return stateWithWind({ ...condition, boatSpeedMs: x }, trueWindOf(condition), air);
  const [speedMs, angleRad] = over === 'apparentAngle' ? [present.speedMs, x] : [x, present.angleFromBowRad];
  return stateWithApparentWind(condition, speedMs, angleRad, present.heightM, air);
}

function heldText(base: SailingState, present: ApparentWind, over: SweepOver): string {
  const { heightM, speedMs, angleFromBowRad } = present;
  const boat = `boat speed ${formatQuantity(base.boatSpeedMs, 'kn')}`;
  const place = `at ${formatQuantity(heightM, 'm')} above the water`;
  const rest = 'heel and leeway stay as they are';
  if (over === 'apparentAngle') {
    return `Apparent wind ${formatQuantity(speedMs, 'kn')} ${place}, ${boat}, ${rest}; the true wind follows.`;
  }
  if (over === 'apparentSpeed') {
    return `Apparent wind ${formatQuantity(angleFromBowRad, 'deg')} off the bow ${place}, ${boat}, ${rest}; the true wind follows.`;
  }
  const wind = trueWindOf(base.condition);
  return `True wind ${formatQuantity(wind.speedAt10Ms, 'kn')} at 10 m, ${formatQuantity(wind.angleFromCourseRad, 'deg')} off the course, ${rest}; the apparent wind follows.`;
}
