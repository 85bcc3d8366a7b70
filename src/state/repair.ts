import type { Project } from '../project/file/schema';
import type { LedgerBasis, LedgerQuestion } from '../project/ledger/ledgerTypes';
import type { AppState } from './appState';

type Repaired = Pick<AppState, 'question' | 'selectedFittingId' | 'selectedIds' | 'anchorId'>;

/**
 * Question and selection without anything that the project no longer has: the first condition for a condition that is
 * gone, the boat as sailed for a plan, the row that took its place for a row. What is still right keeps its identity.
 * @param before the project in which they were right.
 */
export function repaired(state: Repaired, before: Project | null, project: Project): Repaired {
  const has = (id: string | null): boolean => project.fittings.some((fitting) => fitting.id === id);
  const { selectedFittingId, anchorId } = state;
  const selectedIds = state.selectedIds.filter(has);
  const focusId =
    selectedFittingId === null || has(selectedFittingId)
      ? selectedFittingId
      : neighbourOf(selectedFittingId, before, project);
  return {
    question: repairedQuestion(state.question, project),
    selectedFittingId: focusId,
    selectedIds: selectedIds.length === state.selectedIds.length ? state.selectedIds : selectedIds,
    anchorId: has(anchorId) ? anchorId : focusId,
  };
}

/** The next row of the file's order that is still there, else the one before. */
function neighbourOf(id: string, before: Project | null, project: Project): string | null {
  const kept: ReadonlySet<string> = new Set(project.fittings.map((fitting) => fitting.id));
  const order = (before?.fittings ?? []).map((fitting) => fitting.id);
  const index = order.indexOf(id);
  const following = order.slice(index + 1).find((other) => kept.has(other));
  const preceding = order
    .slice(0, Math.max(index, 0))
    .reverse()
    .find((other) => kept.has(other));
  return following ?? preceding ?? project.fittings[0]?.id ?? null;
}

function repairedQuestion(question: LedgerQuestion, project: Project): LedgerQuestion {
  const basis = repairedBasis(question.basis, project);
  const hasPlan = (id: string | null): boolean => project.plans.some((plan) => plan.id === id);
  const planId = hasPlan(question.planId) ? question.planId : null;
  const againstPlanId =
    hasPlan(question.againstPlanId) && question.againstPlanId !== planId ? question.againstPlanId : null;
  const isSame =
    basis === question.basis && planId === question.planId && againstPlanId === question.againstPlanId;
  return isSame ? question : { basis, planId, againstPlanId };
}

function repairedBasis(basis: LedgerBasis, { conditions, profile }: Project): LedgerBasis {
  const isThere =
    basis.kind === 'profile' ? profile !== null : conditions.some(({ id }) => id === basis.conditionId);
  return isThere ? basis : { kind: 'condition', conditionId: conditions[0]?.id ?? '' };
}
