import {
  addSavings,
  savingOf,
  totalOf,
  totalWith,
  zeroSaving,
  type Saving,
} from '../../physics/ledger/ledgerSums';
import type { FittingState } from '../core/fittingState';
import type { Project } from '../file/schema';
import type { FittingStates } from '../refit/applyItem';
import type { AppliedPlan, ItemStep } from '../refit/applyPlan';
import type { ItemAccount, PlanAccount, PlanBalance } from './ledgerTypes';
import type { RowEvaluator } from './rowEvaluator';

/** Above this share of the total saving, what the items do to each other is named. */
const togetherShare = 0.01;

/** Savings of a plan's items against the boat as sailed, in order and alone, with mass and cost of what counts. */
export function planAccount(
  project: Project,
  applied: AppliedPlan,
  asSailed: FittingStates,
  evaluate: RowEvaluator,
): PlanAccount {
  const items: ItemAccount[] = [];
  let total = totalOf([...asSailed.values()].map(evaluate));
  const first = total;
  for (const step of applied.steps) {
    const account = itemAccount(project, step, evaluate);
    if (step.status !== 'counted' || step.after === null) {
      items.push(account);
      continue;
    }
    const next = step.before === null ? total : totalWith(total, evaluate(step.before), evaluate(step.after));
    items.push({ ...account, totalBefore: total, totalAfter: next });
    total = next;
  }
  const together = togetherOf(savingOf(first, total), items);
  return {
    planId: applied.plan.id,
    items,
    balance: balanceOf(applied.steps),
    together,
    isTogetherNamed: isNamed(together, savingOf(first, total)),
  };
}

function itemAccount(project: Project, step: ItemStep, evaluate: RowEvaluator): ItemAccount {
  return {
    item: step.item,
    fitting: project.fittings.find(({ id }) => id === step.item.fittingId) ?? null,
    status: step.status,
    contradiction: step.contradiction,
    savingInOrder: between(step.before, step.after, evaluate),
    savingAlone: between(step.aloneBefore, step.aloneAfter, evaluate),
    totalBefore: null,
    totalAfter: null,
  };
}

function between(
  before: FittingState | null,
  after: FittingState | null,
  evaluate: RowEvaluator,
): Saving | null {
  return before === null || after === null ? null : savingOf(evaluate(before), evaluate(after));
}

/** The total saving less every counted item's saving alone; an item that cannot stand alone adds nothing. */
function togetherOf(total: Saving, items: readonly ItemAccount[]): Saving {
  const alone = items
    .filter(({ status }) => status === 'counted')
    .map(({ savingAlone }) => savingAlone ?? zeroSaving);
  return alone.reduce((rest, saving) => addSavings(rest, saving, -1), total);
}

function isNamed(together: Saving, total: Saving): boolean {
  return Math.abs(together.change.trackPowerW) > togetherShare * Math.abs(total.change.trackPowerW);
}

function balanceOf(steps: readonly ItemStep[]): PlanBalance {
  const counted = steps.filter(({ status }) => status === 'counted').map(({ item }) => item);
  const sum = (value: (item: (typeof counted)[number]) => number): number =>
    counted.reduce((total, item) => total + value(item), 0);
  return {
    massChangeKg: sum(({ massChangeKg }) => massChangeKg),
    momentXKgM: sum(({ massChangeKg, massPlace }) => massChangeKg * (massPlace?.xM ?? 0)),
    momentYKgM: sum(({ massChangeKg, massPlace }) => massChangeKg * (massPlace?.yM ?? 0)),
    momentZKgM: sum(({ massChangeKg, massPlace }) => massChangeKg * (massPlace?.zM ?? 0)),
    massWithoutPlaceKg: sum(({ massChangeKg, massPlace }) => (massPlace === null ? massChangeKg : 0)),
    cost: sum(({ cost }) => cost),
  };
}
