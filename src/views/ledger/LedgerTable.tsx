import { Fragment, memo, useEffect, useMemo, useRef, useState, type KeyboardEvent } from 'react';
import { ledgerBarGeometry } from '../../charts/ledgerBarGeometry';
import type { ProjectFitting } from '../../project/file/schema';
import type { LedgerSide } from '../../project/ledger/ledgerTypes';
import { formatQuantity } from '../../units/print';
import { ExcludedRow, LedgerRowView, noBar, noNames, type PickKind, type RowHandlers } from './LedgerRowView';
import { EmptyCells, ledgerCells } from './LedgerCells';
import { LedgerColumns } from './LedgerColumns';
import { LedgerHead } from './LedgerHead';
import { selectableIds, type LedgerGroup } from './ledgerGroups';
import { meaningOf, type KeyMeaning } from './ledgerKeys';
import type { RowCommand } from './rowCommands';
import type { RowSetting } from './rowSetting';
import { tailOf } from './tail';

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

interface LedgerTableProps {
  readonly groups: readonly LedgerGroup[];
  readonly setting: RowSetting;
  /** Whose names the doubts of a sum are told with. */
  readonly fittings: readonly ProjectFitting[];
  /** Track power of the whole ledger in the state that is shown, W. */
  readonly totalW: number;
  readonly selectedId: string | null;
  readonly pickedIds: readonly string[];
  readonly actions: LedgerActions;
}

/** The rows, group by group. Arrow keys move the selection; the tabulator key meets one row only. */
export function LedgerTable(props: LedgerTableProps) {
  const { groups, setting, fittings, totalW, selectedId, pickedIds, actions } = props;
  const ids = selectableIds(groups);
  const tabStopId = selectedId !== null && ids.includes(selectedId) ? selectedId : ids[0];
  const { tableRef, inPlaceId, handlers, onKeyDown } = useLedgerKeys(ids, selectedId, actions);
  const picked = new Set(pickedIds);
  // Only the doubts of a sum name fittings.
  const namedFittings = setting.columns.includes('doubts') ? fittings : noNames;
  const rowProps = (fittingId: string) => ({
    setting,
    handlers,
    isSelected: fittingId === selectedId,
    isTabStop: fittingId === tabStopId,
    isPicked: picked.size === 0 ? undefined : picked.has(fittingId),
  });

  return (
    <table
      role="table"
      ref={tableRef}
      className="ledger-table"
      style={{ minWidth: setting.leastWidthPx }}
      onKeyDown={onKeyDown}
      onKeyUp={(event) => {
        // Some browsers press a button when the space bar comes up again.
        if (event.key === ' ' && focusedIdOf(event) !== undefined) event.preventDefault();
      }}
    >
      <caption className="visually-hidden">
        What each fitting costs, zone by zone, the costliest first. Arrow keys move between the rows, Enter
        edits one, N adds one.
      </caption>
      <LedgerColumns setting={setting} />
      <LedgerHead setting={setting} />
      {groups.map((group) => {
        const tail = tailOf(group.rows, totalW, setting.shown);
        return (
          <tbody role="rowgroup" key={group.id}>
            <GroupHead
              name={group.name}
              pushingElsewhere={group.pushingElsewhere}
              sum={group.sum}
              isChanged={group.rows.some((row) => row.isChanged)}
              setting={setting}
              fittings={namedFittings}
            />
            {group.rows.map((row, i) => (
              <Fragment key={row.fittingId}>
                {tail?.from === i && <TailLine share={tail.share} setting={setting} />}
                <LedgerRowView
                  row={row}
                  isInPlace={row.fittingId === inPlaceId}
                  {...rowProps(row.fittingId)}
                />
              </Fragment>
            ))}
            {group.excluded.map((row) => (
              <ExcludedRow key={row.fittingId} row={row} isInPlace={false} {...rowProps(row.fittingId)} />
            ))}
          </tbody>
        );
      })}
    </table>
  );
}

function focusedIdOf({ target }: { readonly target: EventTarget }): string | undefined {
  return (target as HTMLElement).dataset['fittingId'];
}

/** Keys of the rows, the row whose name and size are fields, and where the focus goes after an edit. */
function useLedgerKeys(ids: readonly string[], selectedId: string | null, actions: LedgerActions) {
  const tableRef = useRef<HTMLTableElement>(null);
  const isFocusWanted = useRef(false);
  const [inPlaceId, setInPlaceId] = useState<string | null>(null);

  // After a command by key the row that took the place of the old one is not there until the table is drawn anew.
  useEffect(() => {
    if (!isFocusWanted.current || selectedId === null) return;
    isFocusWanted.current = false;
    tableRef.current?.querySelector<HTMLElement>(`[data-fitting-id="${selectedId}"]`)?.focus();
  });

  const handlers = useMemo<RowHandlers>(
    () => ({
      onPick: actions.onPick,
      onOpenInPlace: setInPlaceId,
      renderInPlace: actions.renderInPlace,
      onCloseInPlace: (returnsToRow) => {
        isFocusWanted.current = returnsToRow;
        setInPlaceId(null);
      },
    }),
    [actions],
  );

  const obey = (meaning: KeyMeaning, focusedId: string): void => {
    switch (meaning.kind) {
      case 'go': {
        const next = ids[placeOf(meaning.to, ids.indexOf(focusedId), ids.length)];
        if (next === undefined) return;
        actions.onGo(next, meaning.picks);
        tableRef.current?.querySelector<HTMLElement>(`[data-fitting-id="${next}"]`)?.focus();
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
  return { tableRef, inPlaceId, handlers, onKeyDown };
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

const tailHeightPx = 17;

/** Tells the small rows of a group as one. */
function TailLine({ share, setting }: { readonly share: number; readonly setting: RowSetting }) {
  return (
    <tr role="row" className="tail-line">
      <td role="cell" className="column-number" />
      <th role="rowheader" scope="row" className="column-name fine">
        <span className="tail-words">
          <span className="desk-word">the rows </span>below here
          <span className="desk-word"> are</span> together {formatQuantity(share, '%')} of all
        </span>
      </th>
      <td role="cell" className="column-flags" />
      <EmptyCells
        columns={setting.columns}
        bar={ledgerBarGeometry(noBar, setting.scale, { heightPx: tailHeightPx })}
      />
    </tr>
  );
}

interface GroupHeadProps {
  readonly name: string;
  readonly pushingElsewhere: number;
  readonly sum: LedgerSide;
  readonly isChanged: boolean;
  readonly setting: RowSetting;
  readonly fittings: readonly ProjectFitting[];
}

/** Remembered like the rows: an edit draws the head of its own group anew. */
const GroupHead = memo(function GroupHead(props: GroupHeadProps) {
  const { name, pushingElsewhere, sum, isChanged, setting, fittings } = props;
  const { columns, shown, places, scale, rowHeightPx } = setting;
  return (
    <tr role="row" className="group-head">
      <td role="cell" className="column-number" />
      <th role="rowheader" scope="rowgroup" className="column-name">
        <span className="name-line">
          <span className="group-name">{name}</span>{' '}
          {pushingElsewhere > 0 && <span className="size">without&nbsp;what&nbsp;pushes</span>}
        </span>
      </th>
      <td role="cell" className="column-flags" />
      {ledgerCells({
        columns,
        side: sum,
        shown,
        places,
        fittings,
        bar: ledgerBarGeometry(noBar, scale, { heightPx: rowHeightPx }),
        isChanged,
      })}
    </tr>
  );
});
