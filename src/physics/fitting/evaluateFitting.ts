import type { ConditionStates } from '../condition/conditionStates';
import type { DoubtChange } from '../doubt/doubts';
import type { FittingInput } from './fittingInput';
import { changeBetween, inputDoubts, itemForces, layFitting, type LaidFitting } from './itemForces';
import { memberTrace, type MemberTrace } from './memberTrace';
import { noticesOf, type Notice } from './notice';
import { outcomeOf, type Outcome, type Sums } from './outcome';
import { sumMean, type LaidMembers, type Methods } from './sumFitting';

/** The whole result for one fitting in one condition: what it does on the mean, deployed and stowed, and every doubt. */
export interface FittingTrace {
  readonly fittingId: string;
  readonly dutyFraction: number;
  /** d x deployed + (1 - d) x stowed: what the ledger adds up. */
  readonly mean: Outcome;
  readonly deployed: Outcome;
  readonly stowed: Outcome;
  readonly members: readonly MemberTrace[];
  readonly doubts: readonly DoubtChange[];
  readonly notices: readonly Notice[];
}

/**
 * Evaluates a fitting in a condition with all its doubts. Each doubt is the same calculation with one input changed
 * (the air, a size, the end method); a coefficient's doubt scales the force and is collected on the way, by regime.
 */
export function evaluateFitting(
  fitting: FittingInput,
  states: ConditionStates,
  methods: Methods,
  dutyFraction: number,
): FittingTrace {
  return evaluateLaid(layFitting(fitting, states.best), states, methods, dutyFraction);
}

/** The same for a fitting that is laid already, in a condition of the heel, leeway, tack and rise that it was laid for. */
export function evaluateLaid(
  laidFitting: LaidFitting,
  states: ConditionStates,
  methods: Methods,
  dutyFraction: number,
): FittingTrace {
  const { best } = states;
  const { fitting, laid } = laidFitting;
  const members: MemberTrace[] = [];
  const { deployed, stowed, mean, coefficientDoubts } = itemForces(
    laidFitting,
    best,
    methods,
    dutyFraction,
    (geometry, setting, sums, point) => {
      members.push(memberTrace(fitting, best, geometry, setting, sums, point));
    },
  );
  return {
    fittingId: fitting.id,
    dutyFraction,
    mean: outcomeOf(mean, best),
    deployed: outcomeOf(deployed, best),
    stowed: outcomeOf(stowed, best),
    members,
    doubts: [
      ...coefficientDoubts,
      ...inputDoubts(laidFitting, best, methods, dutyFraction, mean),
      ...airDoubts(fitting, laid, states, methods, dutyFraction, mean),
    ],
    notices: noticesOf(fitting, members, laid),
  };
}

function airDoubts(
  fitting: FittingInput,
  laid: LaidMembers,
  states: ConditionStates,
  methods: Methods,
  duty: number,
  mean: Sums,
): DoubtChange[] {
  return states.variants.map(({ id, up, down }) => ({
    id,
    up: changeBetween(sumMean(fitting, laid, up, methods, duty), mean, states.best),
    down: changeBetween(sumMean(fitting, laid, down, methods, duty), mean, states.best),
  }));
}
