import { oneOfEach, type Notice } from '../../physics/fitting/notice';
import {
  orderIsSafe,
  savingOf,
  totalOf,
  totalSavingOf,
  zeroResult,
  zeroSaving,
  type RowResult,
} from '../../physics/ledger/ledgerSums';
import { lossBlock } from '../../physics/ledger/losses';
import { windLawNotice } from '../../physics/ledger/windLawNotice';
import type { FittingState } from '../core/fittingState';
import type { Project, ProjectFitting, ProjectZone } from '../file/schema';
import type { FittingStates } from '../refit/applyItem';
import { applyPlan, shelterLost, statesAsSailed, type AppliedPlan } from '../refit/applyPlan';
import { chooseConditions } from './chooseConditions';
import type { BasisPart, LedgerQuestion, LedgerRow, LedgerSide, ProjectLedger, ZoneSum } from './ledgerTypes';
import { planAccount } from './planAccount';
import { rowEvaluator, type RowEvaluator } from './rowEvaluator';

export type LedgerAnswer =
  | { readonly ok: true; readonly ledger: ProjectLedger }
  | { readonly ok: false; readonly errors: readonly { readonly path: string; readonly message: string }[] };

const noRow: RowResult = { ...zeroResult, parts: [], notices: [] };

/**
 * The drag ledger of a project for a condition or the course profile, before and after a plan. Before and after run
 * through the same code; the terminal and every screen read this one object.
 */
export function projectLedger(project: Project, question: LedgerQuestion): LedgerAnswer {
  const chosen = chooseConditions(project, question.basis);
  if (!chosen.ok) return chosen;
  const plans = choosePlans(project, question);
  if (!plans.ok) return plans;
  const evaluate = rowEvaluator(project, chosen.conditions);
  const sailed = statesAsSailed(project);
  const plan = plans.plan === null ? null : applyPlan(project, plans.plan, sailed);
  const against = plans.against === null ? null : applyPlan(project, plans.against, sailed);
  const before = against?.after ?? sailed;
  const after = plan?.after ?? sailed;
  const rows = ranked(rowsOf(project, before, after, [plan, against], evaluate));
  const forces = sideOf(rows);
  return {
    ok: true,
    ledger: {
      question,
      parts: chosen.parts,
      rows,
      zones: project.zones.map((zone) => zoneSum(zone, rows)),
      forces,
      losses: lossBlock([]),
      plan: plan === null ? null : planAccount(project, plan, sailed, evaluate),
      against: against === null ? null : planAccount(project, against, sailed, evaluate),
      notices: present([windLawNotice(forces.before)]),
      hasFullPrice: chosen.parts.some(({ summary }) => hasPrice(summary.condition.prices)),
      totalPaidW: totalPaid(chosen.parts),
    },
  };
}

function hasPrice(prices: Project['conditions'][number]['prices']): boolean {
  return prices.hullDragPerSideForce !== null || prices.driveLostPerHeelingMomentPerM !== null;
}

function present<T>(values: readonly (T | null)[]): T[] {
  return values.filter((value): value is T => value !== null);
}

/** The conditions of a basis with their shares of the time, or why there are none. */
type ChosenPlans =
  | {
      readonly ok: true;
      readonly plan: Project['plans'][number] | null;
      readonly against: Project['plans'][number] | null;
    }
  | { readonly ok: false; readonly errors: readonly { readonly path: string; readonly message: string }[] };

function choosePlans(project: Project, { planId, againstPlanId }: LedgerQuestion): ChosenPlans {
  for (const id of [planId, againstPlanId]) {
    if (id !== null && !project.plans.some((plan) => plan.id === id)) {
      return { ok: false, errors: [{ path: 'plans', message: `There is no plan ${id}.` }] };
    }
  }
  const find = (id: string | null): Project['plans'][number] | null =>
    project.plans.find((plan) => plan.id === id) ?? null;
  return { ok: true, plan: find(planId), against: find(againstPlanId) };
}

function rowsOf(
  project: Project,
  before: FittingStates,
  after: FittingStates,
  plans: readonly (AppliedPlan | null)[],
  evaluate: RowEvaluator,
): LedgerRow[] {
  const lost = shelterLost(before, after);
  const withheld = (plans[0]?.steps ?? [])
    .filter(({ status }) => status === 'withheld')
    .map(({ item }) => item);
  return project.fittings.map((fitting, index) => {
    const own = withheld.filter(({ fittingId }) => fittingId === fitting.id).map(({ id }) => id);
    return rowFor(fitting, index + 1, before, after, lost.has(fitting.id), own, evaluate);
  });
}

function rowFor(
  fitting: ProjectFitting,
  number: number,
  before: FittingStates,
  after: FittingStates,
  isShelterLost: boolean,
  withheldItemIds: readonly string[],
  evaluate: RowEvaluator,
): LedgerRow {
  const stateBefore = before.get(fitting.id);
  const stateAfter = after.get(fitting.id);
  const rowBefore = stateBefore === undefined ? noRow : evaluate(stateBefore);
  const rowAfter = stateAfter === undefined ? noRow : evaluate(stateAfter);
  const notice: Notice[] = isShelterLost ? [{ code: 'shelter-removed', values: {} }] : [];
  return {
    number,
    fittingId: fitting.id,
    fitting,
    fittingBefore: presentFitting(stateBefore),
    fittingAfter: presentFitting(stateAfter),
    excludedReason: fitting.excluded?.reason ?? null,
    before: rowBefore,
    after: rowAfter,
    saving: rowBefore === rowAfter ? zeroSaving : savingOf(rowBefore, rowAfter),
    isChanged: stateBefore !== stateAfter,
    withheldItemIds,
    notices: oneOfEach([...notice, ...rowBefore.notices, ...rowAfter.notices]),
    rank: null,
    isRankSafe: null,
  };
}

function presentFitting(state: FittingState | undefined): ProjectFitting | null {
  return state === undefined || state.gone === 'removed' ? null : state.fitting;
}

/**
 * The rows in the file's order, each with its rank by track power and whether the next one stays behind it. A row that
 * no air moves (out of use, under water) has no rank.
 */
function ranked(rows: readonly LedgerRow[]): LedgerRow[] {
  const order = rows
    .filter(({ excludedReason, before }) => excludedReason === null && before.outcome.airPowerW !== 0)
    .sort((a, b) => b.before.outcome.trackPowerW - a.before.outcome.trackPowerW);
  const places = new Map(order.map((row, i) => [row.fittingId, { rank: i + 1, next: order[i + 1] }]));
  return rows.map((row) => {
    const place = places.get(row.fittingId);
    if (place === undefined) return row;
    const isRankSafe =
      place.next === undefined ? null : orderIsSafe(row.before, place.next.before, 'trackPowerW');
    return { ...row, rank: place.rank, isRankSafe };
  });
}

function sideOf(rows: readonly LedgerRow[]): LedgerSide {
  const before = totalOf(rows.map((row) => row.before));
  const after = totalOf(rows.map((row) => row.after));
  const savings = rows.map(({ saving }) => saving);
  return { before, after, saving: totalSavingOf(before, after, savings) };
}

function zoneSum(zone: ProjectZone, rows: readonly LedgerRow[]): ZoneSum {
  const own = rows.filter(({ fitting }) => fitting.zoneId === zone.id);
  return { zone, fittingIds: own.map(({ fittingId }) => fittingId), ...sideOf(own) };
}

function totalPaid(parts: readonly BasisPart[]): number | null {
  let paid = 0;
  for (const { summary, weight } of parts) {
    const { totalResistanceN, boatSpeedMs } = summary.condition;
    if (totalResistanceN === null) return null;
    paid += weight * totalResistanceN * boatSpeedMs;
  }
  return paid;
}
