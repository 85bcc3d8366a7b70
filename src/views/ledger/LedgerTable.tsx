import { useMemo, useRef, useState, type MouseEvent } from 'react';
import type { ProjectFitting } from '../../project/file/schema';
import { GroupHead, TailLine } from './GroupLines';
import { LedgerColumns } from './LedgerColumns';
import { selectableIds, type LedgerGroup } from '../../project/ledger/ledgerGroups';
import { LedgerHead } from './LedgerHead';
import { drawnParts, ledgerLines, rowCountOf, type LedgerLine } from './ledgerLines';
import { ExcludedRow, LedgerRowView, noNames } from './LedgerRowView';
import type { RowSetting } from './rowSetting';
import { useDrawnStretch } from './useDrawnStretch';
import { focusedIdOf, useLedgerKeys, type LedgerActions } from './useLedgerKeys';
import { useShownSelection } from './useShownSelection';

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
  const tableRef = useRef<HTMLTableElement>(null);
  const [focusedId, setFocusedId] = useState<string | null>(null);
  const ids = useMemo(() => selectableIds(groups), [groups]);
  const lines = useMemo(() => ledgerLines(groups, setting, totalW), [groups, setting, totalW]);
  const rowCount = rowCountOf(lines);
  const stretch = useDrawnStretch(tableRef, rowCount);
  const tabStopId = selectedId !== null && ids.includes(selectedId) ? selectedId : (ids[0] ?? null);
  const { inPlaceId, handlers, onKeyDown } = useLedgerKeys(tableRef, ids, selectedId, actions);
  useShownSelection(tableRef, selectedId);
  const keptIds = new Set([tabStopId, focusedId, inPlaceId].filter((id) => id !== null));
  const picked = new Set(pickedIds);
  // Only the doubts of a sum name fittings.
  const namedFittings = setting.columns.includes('doubts') ? fittings : noNames;

  const drawLine = (line: LedgerLine) => {
    const rowIndex = stretch === null ? undefined : line.rowIndex;
    switch (line.kind) {
      case 'head': {
        const { name, pushingElsewhere, sum, rows } = line.group;
        const isChanged = rows.some((row) => row.isChanged);
        const head = { name, pushingElsewhere, sum, isChanged, setting, fittings: namedFittings, rowIndex };
        return <GroupHead key={line.key} {...head} />;
      }
      case 'tail':
        return <TailLine key={line.key} share={line.share} setting={setting} rowIndex={rowIndex} />;
      default: {
        const { row } = line;
        const isSelected = row.fittingId === selectedId;
        const isPicked = picked.size === 0 ? undefined : picked.has(row.fittingId);
        const isTabStop = row.fittingId === tabStopId;
        const rowProps = { row, setting, handlers, rowIndex, isSelected, isTabStop, isPicked };
        if (line.kind === 'excluded') return <ExcludedRow key={line.key} isInPlace={false} {...rowProps} />;
        return <LedgerRowView key={line.key} isInPlace={row.fittingId === inPlaceId} {...rowProps} />;
      }
    }
  };

  return (
    <table
      role="table"
      ref={tableRef}
      className="ledger-table"
      style={{ minWidth: setting.leastWidthPx }}
      aria-rowcount={stretch === null ? undefined : rowCount}
      onFocus={(event) => {
        setFocusedId(focusedIdOf(event) ?? null);
      }}
      onMouseDown={pickWithoutMarking}
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
      <LedgerHead setting={setting} rowIndex={stretch === null ? undefined : 1} />
      {lines.map((group) => (
        <tbody role="rowgroup" key={group.id}>
          {drawnParts(group.lines, stretch, keptIds).map((part) =>
            part.kind === 'gap' ? <GapLine key={part.key} heightPx={part.heightPx} /> : drawLine(part),
          )}
        </tbody>
      ))}
    </table>
  );
}

/** With Shift, which picks rows, the browser would mark the text of all that lies on the way. */
function pickWithoutMarking(event: MouseEvent): void {
  const isInField = (event.target as Element).closest('input') !== null;
  if (event.shiftKey && !isInField) event.preventDefault();
}

/** Keeps the place of lines that are not drawn. */
function GapLine({ heightPx }: { readonly heightPx: number }) {
  return <tr role="presentation" className="gap-line" style={{ height: heightPx }} />;
}
