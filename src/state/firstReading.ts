import type { Project } from '../project/file/schema';
import type { LedgerQuestion } from '../project/ledger/ledgerTypes';
import type { AppState } from './appState';
import { ledgerOf } from './ledgerOf';

type FirstReading = Pick<AppState, 'question' | 'selectedFittingId' | 'selectedIds' | 'anchorId' | 'shown'>;

/** What a freshly opened project shows: its first condition, its first plan, the row that costs most. */
export function firstReading(project: Project): FirstReading {
  const question: LedgerQuestion = {
    basis: { kind: 'condition', conditionId: project.conditions[0]?.id ?? '' },
    planId: project.plans[0]?.id ?? null,
    againstPlanId: null,
  };
  const costliest = ledgerOf(project, question)?.rows.find(({ rank }) => rank === 1)?.fittingId ?? null;
  return { question, shown: 'both', selectedFittingId: costliest, selectedIds: [], anchorId: costliest };
}
