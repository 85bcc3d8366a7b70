import type { Project } from '../file/schema';
import { solveProjectCondition } from './conditionSummary';
import type { BasisPart, LedgerBasis } from './ledgerTypes';
import type { WeightedCondition } from './rowEvaluator';

export type ChosenConditions =
  | {
      readonly ok: true;
      readonly conditions: readonly WeightedCondition[];
      readonly parts: readonly BasisPart[];
    }
  | { readonly ok: false; readonly errors: readonly { readonly path: string; readonly message: string }[] };

/** Solves the conditions of a basis; those without hours are left out. */
export function chooseConditions(project: Project, basis: LedgerBasis): ChosenConditions {
  if (basis.kind === 'profile' && project.profile === null) {
    return { ok: false, errors: [{ path: 'profile', message: 'The project has no course profile.' }] };
  }
  const entries =
    basis.kind === 'condition'
      ? [{ conditionId: basis.conditionId, hours: null }]
      : (project.profile?.entries ?? []).filter(({ hours }) => hours > 0);
  const allHours = entries.reduce((sum, { hours }) => sum + (hours ?? 0), 0);
  const parts: BasisPart[] = [];
  const conditions: WeightedCondition[] = [];
  for (const { conditionId, hours } of entries) {
    const condition = project.conditions.find(({ id }) => id === conditionId);
    if (condition === undefined) {
      return {
        ok: false,
        errors: [{ path: 'conditions', message: `There is no condition ${conditionId}.` }],
      };
    }
    const solved = solveProjectCondition(project, condition);
    const weight = hours === null ? 1 : hours / allHours;
    parts.push({ summary: solved.summary, hours, weight });
    conditions.push({ solved, weight });
  }
  return { ok: true, conditions, parts };
}
