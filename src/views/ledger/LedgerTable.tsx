import { useRef, type KeyboardEvent } from 'react';
import { ledgerBarGeometry } from '../../charts/ledgerBarGeometry';
import { zeroResult } from '../../physics/ledger/ledgerSums';
import { ExcludedRow, LedgerRowView, type RowSetting } from './LedgerRowView';
import { LedgerColumns } from './LedgerColumns';
import { LedgerHead } from './LedgerHead';
import { selectableIds, type LedgerGroup } from './ledgerGroups';
import { SideCells } from './SideCells';

interface LedgerTableProps {
  readonly groups: readonly LedgerGroup[];
  readonly setting: RowSetting;
  readonly selectedId: string | null;
  readonly onSelect: (fittingId: string) => void;
  /** A row was picked by click, Enter or Space, as against being passed by the arrow keys. */
  readonly onPick: (fittingId: string) => void;
}

/** The rows, group by group. Arrow keys move the selection; the tabulator key meets one row only. */
export function LedgerTable({ groups, setting, selectedId, onSelect, onPick }: LedgerTableProps) {
  const tableRef = useRef<HTMLTableElement>(null);
  const ids = selectableIds(groups);
  const tabStopId = selectedId !== null && ids.includes(selectedId) ? selectedId : ids[0];

  const onKeyDown = (event: KeyboardEvent) => {
    const focused = (event.target as HTMLElement).dataset['fittingId'];
    if (focused === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    const next = ids[stepTo(event.key, ids.indexOf(focused), ids.length)];
    if (next === undefined) return;
    event.preventDefault();
    onSelect(next);
    tableRef.current?.querySelector<HTMLElement>(`[data-fitting-id="${next}"]`)?.focus();
  };

  return (
    <table ref={tableRef} className="ledger-table" onKeyDown={onKeyDown}>
      <caption className="visually-hidden">
        What each fitting costs, zone by zone, the costliest first. Arrow keys move between the rows.
      </caption>
      <LedgerColumns
        barWidthPx={setting.scale.widthPx}
        hasFullPrice={setting.hasFullPrice}
        widths={setting.widths}
      />
      <LedgerHead scale={setting.scale} hasFullPrice={setting.hasFullPrice} />
      {groups.map((group) => (
        <tbody key={group.id}>
          <GroupHead group={group} setting={setting} />
          {group.rows.map((row) => (
            <LedgerRowView
              key={row.fittingId}
              row={row}
              setting={setting}
              isSelected={row.fittingId === selectedId}
              isTabStop={row.fittingId === tabStopId}
              onPick={onPick}
            />
          ))}
          {group.excluded.map((row) => (
            <ExcludedRow key={row.fittingId} row={row} setting={setting} />
          ))}
        </tbody>
      ))}
    </table>
  );
}

/** Where a key leads from the row at `index`; -1 for a key that leads nowhere. */
function stepTo(key: string, index: number, count: number): number {
  switch (key) {
    case 'ArrowDown':
      return Math.min(index + 1, count - 1);
    case 'ArrowUp':
      return Math.max(index - 1, 0);
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return -1;
  }
}

/** A sum draws no bar: only the grid of the rows runs through it. */
const noBar = { before: zeroResult, after: zeroResult };
const headHeightPx = 24;

function GroupHead({ group, setting }: { readonly group: LedgerGroup; readonly setting: RowSetting }) {
  const { name, pushingElsewhere, rows, sum } = group;
  const isChanged = rows.some((row) => row.isChanged);
  return (
    <tr className="group-head">
      <td className="column-number" />
      <th scope="rowgroup" className="column-name">
        <span className="name-line">
          <span className="group-name">{name}</span>
          {pushingElsewhere > 0 && <span className="size">without what pushes, below</span>}
        </span>
      </th>
      <td className="column-flags" />
      <td className="column-coefficient" />
      <td className="column-spread" />
      <td className="column-regime" />
      <SideCells
        side={sum}
        shown={setting.shown}
        places={setting.places}
        hasFullPrice={setting.hasFullPrice}
        bar={ledgerBarGeometry(noBar, setting.scale, { heightPx: headHeightPx })}
        isChanged={isChanged}
      />
    </tr>
  );
}
