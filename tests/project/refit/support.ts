import {
  between,
  blankCondition,
  blankFitting,
  blankItem,
  blankPlan,
  blankProject,
  point,
  roundBar,
} from '../../../src/project/file/blankParts';
import type {
  ItemChange,
  Project,
  ProjectFitting,
  ProjectPlan,
  RefitItem,
} from '../../../src/project/file/schema';
import { applyPlan, statesAsSailed, type AppliedPlan } from '../../../src/project/refit/applyPlan';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import type { LedgerBasis, ProjectLedger } from '../../../src/project/ledger/ledgerTypes';

const safetyFlags = {
  safetyRequired: true,
  structural: false,
  movingPart: false,
  classRule: null,
} as const;
const measured = (m: number) => ({ m, basis: 'measured' as const });

/** A bar across the wind, a second one, a body, a stanchion that keeps people safe, and a pole behind the body. */
export const pole: ProjectFitting = blankFitting({
  id: 'pole',
  name: 'Pole',
  zoneId: 'deck',
  shape: roundBar(0.1),
  placement: between(point(2, -1, 1.5), point(2, 1, 1.9)),
});
export const thin: ProjectFitting = { ...pole, id: 'thin', name: 'Thin tube', shape: roundBar(0.03) };
export const box: ProjectFitting = blankFitting({
  id: 'box',
  name: 'Box',
  zoneId: 'deck',
  shape: {
    kind: 'bluffBody',
    length: measured(1),
    width: measured(0.6),
    height: measured(0.5),
    cornerRadiusM: 0,
    coefficients: { x: null, y: null, z: null },
  },
  placement: between(point(0, 0, 1.2), point(0, 0, 1.2)),
});
const stanchion: ProjectFitting = {
  ...thin,
  id: 'stanchion',
  name: 'Stanchion',
  placement: between(point(-3, -1.8, 1.2), point(-3, -1.8, 1.85)),
  flags: safetyFlags,
};
export const hidden: ProjectFitting = {
  ...thin,
  id: 'hidden',
  name: 'Hidden pole',
  exposure: { best: 0.5, low: 0.4, high: 0.6, source: 'behind the box' },
  shelteredByFittingId: 'box',
};
export const leftOut: ProjectFitting = {
  ...thin,
  id: 'left-out',
  name: 'Left out',
  excluded: { reason: 'sold' },
};

export const reach = blankCondition({
  id: 'reach',
  name: 'Reach',
  wind: { kind: 'true', speedMs: 10, heightM: 10, angleFromCourseDeg: 70 },
  boatSpeedMs: 8,
  heelDeg: 15,
  leewayDeg: 3,
});

export function item(
  id: string,
  fittingId: string,
  change: ItemChange,
  rest: Partial<RefitItem> = {},
): RefitItem {
  return blankItem({ id, name: id, fittingId, change, ...rest });
}

export function planOf(...items: RefitItem[]): ProjectPlan {
  return blankPlan({ id: 'plan', name: 'Plan', items });
}

export function projectWith(plan: ProjectPlan, changes: Partial<Project> = {}): Project {
  return blankProject({
    fittings: [pole, thin, box, stanchion, hidden, leftOut],
    conditions: [reach],
    plans: [plan],
    ...changes,
  });
}

/** The plan of these items, applied to the project as sailed. */
export function applied(...items: RefitItem[]): AppliedPlan {
  const plan = planOf(...items);
  const project = projectWith(plan);
  return applyPlan(project, plan, statesAsSailed(project));
}

export function statuses(plan: AppliedPlan): string[] {
  return plan.steps.map(({ status }) => status);
}

export function ledgerOf(
  project: Project,
  planId: string | null = 'plan',
  againstPlanId: string | null = null,
  basis: LedgerBasis = { kind: 'condition', conditionId: 'reach' },
): ProjectLedger {
  const answer = projectLedger(project, { basis, planId, againstPlanId });
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  return answer.ledger;
}

export function rowOf(ledger: ProjectLedger, fittingId: string): ProjectLedger['rows'][number] {
  const row = ledger.rows.find((each) => each.fittingId === fittingId);
  if (row === undefined) throw new Error(`no row ${fittingId}`);
  return row;
}

export const slim = (m: number): ItemChange => ({ kind: 'slimmer', diameter: measured(m) });
export const removed: ItemChange = { kind: 'removed' };
export const stowedAway: ItemChange = { kind: 'stowed', stowed: null };
export const reason = { person: 'A. Person', reason: 'a reason of hers' } as const;
