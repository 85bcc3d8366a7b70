import { evaluateLaid } from '../../physics/fitting/evaluateFitting';
import { rowOf, zeroResult, type RowResult } from '../../physics/ledger/ledgerSums';
import type { FittingState } from '../core/fittingState';
import { laidFitting } from '../core/laidFitting';
import type { Project, ProjectDuty } from '../file/schema';
import type { SolvedCondition } from './conditionSummary';

/** A condition with its share of the time. One condition alone has the share 1. */
export interface WeightedCondition {
  readonly solved: SolvedCondition;
  readonly weight: number;
}

/** Evaluates fittings over the chosen conditions; a state that was met before is answered from memory. */
export type RowEvaluator = (state: FittingState) => RowResult;

const removedRow: RowResult = { ...zeroResult, parts: [], notices: [] };

interface Remembered {
  readonly from: readonly unknown[];
  readonly evaluate: RowEvaluator;
}

/** A ledger and a bench that look at different conditions do not push each other out. */
const mostRemembered = 4;
let recent: readonly Remembered[] = [];

/** An evaluator serves on while boat, methods and conditions stay: an edit of one fitting costs one row. */
export function rowEvaluator(project: Project, conditions: readonly WeightedCondition[]): RowEvaluator {
  const { ends, inclined, fairing } = project.methods;
  const from = [
    project.boat,
    ends,
    inclined,
    fairing,
    ...conditions.flatMap(({ solved, weight }) => [solved, weight]),
  ];
  const known = recent.find((one) => isSame(one.from, from));
  const used = known ?? { from, evaluate: newEvaluator(project, conditions) };
  recent = [used, ...recent.filter((one) => one !== used)].slice(0, mostRemembered);
  return used.evaluate;
}

function isSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((part, i) => part === b[i]);
}

function newEvaluator(project: Project, conditions: readonly WeightedCondition[]): RowEvaluator {
  const known = new WeakMap<FittingState, RowResult>();
  return (state) => {
    const row = known.get(state) ?? evaluateState(project, conditions, state);
    known.set(state, row);
    return row;
  };
}

function evaluateState(
  project: Project,
  conditions: readonly WeightedCondition[],
  state: FittingState,
): RowResult {
  if (state.gone === 'removed') return removedRow;
  return rowOf(
    conditions.map(({ solved, weight }) => {
      const conditionId = solved.summary.condition.id;
      const duty = dutyIn(state.fitting.dutyFraction, conditionId);
      return {
        conditionId,
        weight,
        trace: evaluateLaid(
          laidFitting(state, project.boat, solved.states.best),
          solved.states,
          project.methods,
          duty,
        ),
      };
    }),
  );
}

/** Share of a condition's time in which the fitting is in use: the condition's own, or the default. */
export function dutyIn(duty: ProjectDuty, conditionId: string): number {
  return duty.byCondition.find((entry) => entry.conditionId === conditionId)?.fraction ?? duty.default;
}
