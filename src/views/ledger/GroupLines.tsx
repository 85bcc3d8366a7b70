import { memo } from 'react';
import { ledgerBarGeometry } from '../../charts/ledgerBarGeometry';
import type { ProjectFitting } from '../../project/file/schema';
import type { LedgerSide } from '../../project/ledger/ledgerTypes';
import { formatQuantity } from '../../units/print';
import { EmptyCells, ledgerCells } from './LedgerCells';
import { tailHeightPx } from './ledgerLines';
import { noBar } from './LedgerRowView';
import type { RowSetting } from './rowSetting';

interface TailLineProps {
  readonly share: number;
  readonly setting: RowSetting;
  readonly rowIndex: number | undefined;
}

/** Tells the small rows of a group as one. */
export const TailLine = memo(function TailLine({ share, setting, rowIndex }: TailLineProps) {
  return (
    <tr role="row" className="tail-line" aria-rowindex={rowIndex}>
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
});

interface GroupHeadProps {
  readonly name: string;
  readonly pushingElsewhere: number;
  readonly sum: LedgerSide;
  readonly isChanged: boolean;
  readonly setting: RowSetting;
  readonly fittings: readonly ProjectFitting[];
  readonly rowIndex: number | undefined;
}

/** Remembered like the rows: an edit draws the head of its own group anew. */
export const GroupHead = memo(function GroupHead(props: GroupHeadProps) {
  const { name, pushingElsewhere, sum, isChanged, setting, fittings, rowIndex } = props;
  const { columns, shown, places, scale, rowHeightPx } = setting;
  return (
    <tr role="row" className="group-head" aria-rowindex={rowIndex}>
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
