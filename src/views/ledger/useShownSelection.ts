import { useEffect, useRef, type RefObject } from 'react';
import { rowButton } from './useLedgerKeys';

/**
 * Scrolls to a row that was selected elsewhere, as by a word of another pane, and to the selected one when the ledger comes
 * back from another place; what is in sight stays where it is.
 */
export function useShownSelection(
  tableRef: RefObject<HTMLTableElement | null>,
  selectedId: string | null,
): void {
  const lastId = useRef<string | null>(null);
  useEffect(() => {
    if (selectedId === lastId.current) return;
    lastId.current = selectedId;
    const row = selectedId === null ? null : rowButton(tableRef.current, selectedId);
    // Nothing is in sight or out of it where nothing is laid out: a ledger that is swapped away, the view tests.
    if (row === null || row.clientHeight === 0) return;
    row.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [tableRef, selectedId]);
}
