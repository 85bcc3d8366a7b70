import type { ConditionStates } from '../condition/conditionStates';
import type { SailingState } from '../condition/sailingState';
import { endsDoubtId, endTableDoubtId } from '../doubt/doubtSource';
import type { DoubtChange } from '../doubt/doubts';
import { isMemberShape, type FittingInput } from './fittingInput';
import { memberTrace, type MemberTrace } from './memberTrace';
import { noticesOf, type Notice } from './notice';
import { addSums, changeOf, outcomeOf, zeroSums, type Change, type Outcome, type Sums } from './outcome';
import { ownVariants } from './ownDoubts';
import type { CoefficientDoubts } from './pointForce';
import { layMembers, sumDeployed, sumMean, sumStowed, type LaidMembers, type Methods } from './sumFitting';

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
  const { best } = states;
  const deployedDoubts: CoefficientDoubts = new Map();
  const stowedDoubts: CoefficientDoubts = new Map();
  const members: MemberTrace[] = [];
  const laid = layMembers(fitting, best);
  const deployed = sumDeployed(
    fitting,
    laid,
    best,
    methods,
    deployedDoubts,
    (geometry, setting, sums, point) => {
      members.push(memberTrace(fitting, best, geometry, setting, sums, point));
    },
  );
  const stowed = sumStowed(fitting, best, stowedDoubts);
  const mean = zeroSums();
  addSums(mean, deployed, dutyFraction);
  addSums(mean, stowed, 1 - dutyFraction);
  return {
    fittingId: fitting.id,
    dutyFraction,
    mean: outcomeOf(mean, best),
    deployed: outcomeOf(deployed, best),
    stowed: outcomeOf(stowed, best),
    members,
    doubts: [
      ...collected(deployedDoubts, dutyFraction, best),
      ...collected(stowedDoubts, 1 - dutyFraction, best),
      ...endDoubts(fitting, laid, best, methods, dutyFraction, mean),
      ...ownDoubts(fitting, laid, best, methods, dutyFraction, mean),
      ...airDoubts(fitting, laid, states, methods, dutyFraction, mean),
    ],
    notices: noticesOf(fitting, members, laid),
  };
}

function collected(doubts: CoefficientDoubts, weight: number, state: SailingState): DoubtChange[] {
  if (weight === 0) return [];
  return [...doubts].map(([id, { up, down }]) => ({
    id,
    up: changeOf(weighted(up, weight), state),
    down: changeOf(weighted(down, weight), state),
  }));
}

function weighted(sums: Sums, weight: number): Sums {
  const out = zeroSums();
  addSums(out, sums, weight);
  return out;
}

/** Published end-effect tables of free ends scatter by about this much, whichever method is chosen (assumed). */
const endTableDoubt = 0.04;

/** The other published end effect, one state, the chosen method being the best value; and the tables' own scatter. */
function endDoubts(
  fitting: FittingInput,
  laid: LaidMembers,
  state: SailingState,
  methods: Methods,
  duty: number,
  mean: Sums,
): DoubtChange[] {
  const { shape } = fitting;
  if (!isMemberShape(shape) || !shape.ends.includes('free')) return [];
  const other: Methods = { ...methods, ends: methods.ends === 'dnv' ? 'en' : 'dnv' };
  const up = difference(sumMean(fitting, laid, state, other, duty), mean);
  const deployed = difference(mean, weighted(sumStowed(fitting, state), 1 - duty));
  return [
    { id: endsDoubtId, up: changeOf(up, state), down: changeOf(zeroSums(), state) },
    {
      id: endTableDoubtId,
      up: changeOf(weighted(deployed, endTableDoubt), state),
      down: changeOf(weighted(deployed, -endTableDoubt), state),
    },
  ];
}

function ownDoubts(
  fitting: FittingInput,
  laid: LaidMembers,
  state: SailingState,
  methods: Methods,
  duty: number,
  mean: Sums,
): DoubtChange[] {
  if (duty === 0) return [];
  return ownVariants(fitting).map(({ id, up, down, movesMembers }) => {
    const changed = (variant: FittingInput): Change => {
      const place = movesMembers ? layMembers(variant, state) : laid;
      return changeOf(difference(sumMean(variant, place, state, methods, duty), mean), state);
    };
    return { id, up: changed(up), down: changed(down) };
  });
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
    up: changeOf(difference(sumMean(fitting, laid, up, methods, duty), mean), states.best),
    down: changeOf(difference(sumMean(fitting, laid, down, methods, duty), mean), states.best),
  }));
}

function difference(a: Sums, b: Sums): Sums {
  const out = weighted(a, 1);
  addSums(out, b, -1);
  return out;
}
