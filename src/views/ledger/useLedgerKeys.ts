import { useEffect, useMemo, useRef, useState, type KeyboardEvent, type RefObject } from 'react';
import { flushSync } from 'react-dom';
import type { PickKind, RowHandlers } from './LedgerRowView';
import { meaningOf, type KeyMeaning } from './ledgerKeys';
import type { RowCommand } from './rowCommands';

/** What the ledger does with its rows; one object that stays. */
export interface LedgerActions {
  /** The arrow keys came to a row. */
  readonly onGo: (fittingId: string, picks: 'one' | 'range' | 'keep') => void;
  /** A row was picked by hand, as against being passed by the arrow keys. */
  readonly onPick: (fittingId: string, kind: PickKind) => void;
  readonly onCommand: (command: RowCommand) => void;
  readonly onEdit: () => void;
  readonly onAdd: () => void;
  readonly onLetGo: () => void;
  readonly renderInPlace: RowHandlers['renderInPlace'];
}

/** Keys of the rows, the row whose name and size are fields, and where the focus goes after an edit. */
export function useLedgerKeys(
  tableRef: RefObject<HTMLTableElement | null>,
  ids: readonly string[],
  selectedId: string | null,
  actions: LedgerActions,
) {
  const isFocusWanted = useRef(false);
  const [inPlaceId, setInPlaceId] = useState<string | null>(null);

  // After a command by key the row that took the place of the old one is not there until the table is drawn anew.
  useEffect(() => {
    if (!isFocusWanted.current || selectedId === null) return;
    isFocusWanted.current = false;
    rowButton(tableRef.current, selectedId)?.focus();
  });

  const handlers = useMemo<RowHandlers>(
    () => ({
      onPick: (fittingId, kind) => {
        focusRow(tableRef.current, fittingId);
        actions.onPick(fittingId, kind);
      },
      onOpenInPlace: setInPlaceId,
      renderInPlace: actions.renderInPlace,
      onCloseInPlace: (returnsToRow) => {
        isFocusWanted.current = returnsToRow;
        setInPlaceId(null);
      },
    }),
    [actions, tableRef],
  );

  const obey = (meaning: KeyMeaning, focusedId: string): void => {
    switch (meaning.kind) {
      case 'go': {
        const next = ids[placeOf(meaning.to, ids.indexOf(focusedId), ids.length)];
        if (next === undefined) return;
        // In a long ledger the row may not be drawn before it is selected.
        flushSync(() => {
          actions.onGo(next, meaning.picks);
        });
        rowButton(tableRef.current, next)?.focus();
        return;
      }
      case 'command':
        isFocusWanted.current = true;
        actions.onCommand(meaning.command);
        return;
      case 'edit':
        actions.onGo(focusedId, 'keep');
        actions.onEdit();
        return;
      case 'inPlace':
        setInPlaceId(focusedId);
        return;
      case 'add':
        actions.onAdd();
        return;
      case 'pick':
        actions.onPick(focusedId, 'toggle');
        return;
      case 'letGo':
        actions.onLetGo();
        return;
    }
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const focusedId = focusedIdOf(event);
    const meaning = meaningOf(event);
    if (focusedId === undefined || meaning === null) return;
    event.preventDefault();
    obey(meaning, focusedId);
  };
  return { inPlaceId, handlers, onKeyDown };
}

/** Where the focus goes from the row at `index`. */
function placeOf(to: 'up' | 'down' | 'first' | 'last', index: number, count: number): number {
  switch (to) {
    case 'down':
      return Math.min(index + 1, count - 1);
    case 'up':
      return Math.max(index - 1, 0);
    case 'first':
      return 0;
    case 'last':
      return count - 1;
  }
}

export function focusedIdOf({ target }: { readonly target: EventTarget }): string | undefined {
  return (target as HTMLElement).dataset['fittingId'];
}

/** The part of a row that takes the focus; null while the row is not drawn. */
export function rowButton(table: HTMLTableElement | null, fittingId: string): HTMLElement | null {
  return table?.querySelector<HTMLElement>(`[data-fitting-id="${fittingId}"]`) ?? null;
}

/** A click beside the name leaves the focus nowhere, and the arrow keys would be dead; a field of the row keeps it. */
function focusRow(table: HTMLTableElement | null, fittingId: string): void {
  const button = rowButton(table, fittingId);
  if (button?.closest('tr')?.contains(document.activeElement) === false)
    button.focus({ preventScroll: true });
}
