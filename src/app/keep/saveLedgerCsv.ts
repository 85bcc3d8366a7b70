import { ledgerOf } from '../../state/ledgerOf';
import { useAppStore } from '../../state/appStore';
import { downloadText } from '../../state/storage/downloadText';
import { fileNameFor } from '../../state/storage/fileNameFor';
import { addFinding } from './keeping';

/**
 * Hands the ledger that is on the page to the browser as CSV. What writes it is fetched when it is asked for; a fetch that
 * fails is said where the storage speaks.
 */
export async function saveLedgerCsv(): Promise<void> {
  const { project, question } = useAppStore.getState();
  if (project === null) return;
  const ledger = ledgerOf(project, question);
  if (ledger === null) return;
  try {
    const { ledgerCsv } = await import('../../project/tables/ledgerCsv');
    downloadText(fileNameFor(project, ', ledger.csv'), ledgerCsv(project, ledger), 'text/csv;charset=utf-8');
  } catch {
    addFinding({
      kind: 'trouble',
      text: 'Not saved as CSV: the part of the page that writes it did not load. Try again when the connection is back.',
    });
  }
}
