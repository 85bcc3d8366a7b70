import type { Project } from '../project/file/schema';
import type { LedgerQuestion, LedgerRow } from '../project/ledger/ledgerTypes';
import type { AppState } from './appState';
import { ledgerOf } from './ledgerOf';

type FirstReading = Pick<AppState, 'question' | 'selectedFittingId' | 'selectedIds' | 'anchorId' | 'shown'>;

/** What a freshly opened project shows: its first condition, its first plan, the row that the plan helps most. */
export function firstReading(project: Project): FirstReading {
  const question: LedgerQuestion = {
    basis: { kind: 'condition', conditionId: project.conditions[0]?.id ?? '' },
    planId: project.plans[0]?.id ?? null,
    againstPlanId: null,
  };
  const rowId = tellingRow(ledgerOf(project, question)?.rows ?? []);
  return { question, shown: 'both', selectedFittingId: rowId, selectedIds: [], anchorId: rowId };
}

/** The row with the largest saving; where nothing is saved, the one that costs most. */
function tellingRow(rows: readonly LedgerRow[]): string | null {
  const best = rows.reduce<LedgerRow | null>(
    (most, row) => (row.saving.change.trackPowerW > (most?.saving.change.trackPowerW ?? 0) ? row : most),
    null,
  );
  return (best ?? rows.find(({ rank }) => rank === 1))?.fittingId ?? null;
}
