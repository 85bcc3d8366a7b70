import type { ConditionStates } from '../condition/conditionStates';
import type { SailingState } from '../condition/sailingState';
import { DoubtChange } from '../doubt/doubtChange';
import { CoefficientDoubts } from './coefficientDoubts';
import type { FittingInput } from './fittingInput';
import {
  changeFrom,
  inputDoubts,
  itemForces,
  layFitting,
  type ItemForces,
  type LaidFitting,
} from './itemForces';
import { memberTrace, type MemberTrace } from './memberTrace';
import { memberReach, type MemberReach } from './memberReach';
import { noticesOf, type Notice } from './notice';
import { outcomeOf, zeroOutcome, type Outcome, type Sums } from './outcome';
import { sumDeployed, type LaidMembers, type Methods } from './sumFitting';

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
  const { sums, reaches } = forcesWithReach(laidFitting, best, methods, dutyFraction);
  const mean = outcomeOf(sums.mean, best);
  return new LazyTrace(() => memberTraces(fitting, laid, best, methods), {
    fittingId: fitting.id,
    dutyFraction,
    mean,
    deployed: dutyFraction === 1 ? mean : outcomeOf(sums.deployed, best),
    stowed: fitting.stowed === null ? zeroOutcome : outcomeOf(sums.stowed, best),
    doubts: [
      ...sums.coefficientDoubts,
      ...inputDoubts(laidFitting, best, methods, dutyFraction, sums.mean),
      ...airDoubts(fitting, laid, states, methods, dutyFraction, sums.mean),
    ],
    notices: noticesOf(fitting, reaches, laid),
  });
}

/** Apart from the trace, whose closure would keep what the visitor collects. */
function forcesWithReach(
  laidFitting: LaidFitting,
  state: SailingState,
  methods: Methods,
  dutyFraction: number,
): { readonly sums: ItemForces; readonly reaches: readonly MemberReach[] } {
  const reaches: MemberReach[] = [];
  const sums = itemForces(laidFitting, state, methods, dutyFraction, (geometry, setting, _sums, point) => {
    reaches.push(memberReach(laidFitting.fitting, state, geometry, setting, point));
  });
  return { sums, reaches };
}

/** A trace whose members' workings are worked out when they are first read, since few rows of a ledger are. */
class LazyTrace implements FittingTrace {
  readonly fittingId: string;
  readonly dutyFraction: number;
  readonly mean: Outcome;
  readonly deployed: Outcome;
  readonly stowed: Outcome;
  readonly doubts: readonly DoubtChange[];
  readonly notices: readonly Notice[];
  readonly #membersOf: () => readonly MemberTrace[];
  #members: readonly MemberTrace[] | null = null;

  constructor(membersOf: () => readonly MemberTrace[], rest: Omit<FittingTrace, 'members'>) {
    this.fittingId = rest.fittingId;
    this.dutyFraction = rest.dutyFraction;
    this.mean = rest.mean;
    this.deployed = rest.deployed;
    this.stowed = rest.stowed;
    this.doubts = rest.doubts;
    this.notices = rest.notices;
    this.#membersOf = membersOf;
  }

  get members(): readonly MemberTrace[] {
    return (this.#members ??= this.#membersOf());
  }
}

/** The working of each dry member, from one more sum. */
function memberTraces(
  fitting: FittingInput,
  laid: LaidMembers,
  state: SailingState,
  methods: Methods,
): readonly MemberTrace[] {
  const members: MemberTrace[] = [];
  sumDeployed(fitting, laid, state, methods, new CoefficientDoubts(), (geometry, setting, sums, point) => {
    members.push(memberTrace(fitting, state, geometry, setting, sums, point));
  });
  return members;
}

function airDoubts(
  fitting: FittingInput,
  laid: LaidMembers,
  { best, variants }: ConditionStates,
  methods: Methods,
  duty: number,
  mean: Sums,
): DoubtChange[] {
  return variants.map(({ id, up, down }) => {
    const doubt = new DoubtChange(id);
    doubt.writeUp(changeFrom(mean, fitting, laid, up, methods, duty), best);
    doubt.writeDown(changeFrom(mean, fitting, laid, down, methods, duty), best);
    return doubt;
  });
}
