import { memo, type ReactElement, type ReactNode } from 'react';
import { LedgerBar } from '../../charts/LedgerBar';
import type { LedgerBarGeometry } from '../../charts/ledgerBarGeometry';
import { savingTone } from '../../ui/savingTone';
import { cellText, cellTitle, type CellQuestion } from './cellText';
import type { ColumnId } from './ledgerColumns';

interface LedgerCellsProps extends CellQuestion {
  readonly columns: readonly ColumnId[];
  readonly bar: LedgerBarGeometry;
  /** Under the bar of the total, its own scale. */
  readonly axis?: ReactNode;
  /** In place of the saving: a row whose saving waits for a reason. */
  readonly savingNote?: string | undefined;
}

interface CellProps {
  readonly className: string;
  readonly title?: string | undefined;
  readonly text: string | number;
}

/** A cell of one text. Remembered: at an edit of the wind most cells of most rows print what they did. */
export const Cell = memo(function Cell({ className, title, text }: CellProps) {
  return (
    <td role="cell" className={className} title={title}>
      {text}
    </td>
  );
});

/** The cells of a row, a zone or the total, right of its name and flags. */
export function ledgerCells(props: LedgerCellsProps): ReactElement[] {
  return props.columns.map((id) => (id === 'bar' ? barCell(props) : cellOf(id, props)));
}

function barCell({ bar, axis }: LedgerCellsProps): ReactElement {
  return (
    <td role="cell" key="bar" className="column-bar">
      <LedgerBar bar={bar} />
      {axis}
    </td>
  );
}

function cellOf(id: Exclude<ColumnId, 'bar'>, props: LedgerCellsProps): ReactElement {
  const { savingNote } = props;
  if (id === 'saving' && savingNote !== undefined && props.shown === 'both') {
    return <Cell key={id} className="number column-saving saving-note" text={savingNote} />;
  }
  const text = cellText(id, props);
  return <Cell key={id} className={cellClass(id, props)} title={titleOf(id, text, props)} text={text} />;
}

/** What may be cut has all of it as a title. */
function titleOf(id: ColumnId, text: string, props: LedgerCellsProps): string | undefined {
  if (id !== 'regime' && id !== 'doubts') return cellTitle(id, props);
  return text === '' ? undefined : text;
}

function cellClass(id: ColumnId, { side, isChanged }: CellQuestion): string {
  switch (id) {
    case 'coefficientSpread':
    case 'spread':
    case 'savingSpread':
    case 'regime':
    case 'doubts':
      return `fine-cell column-${id}`;
    case 'after':
      return isChanged ? 'number changed column-after' : 'number unchanged column-after';
    case 'saving':
      return `number column-saving ${savingTone(side.saving.change.trackPowerW)}`;
    case 'bought':
      return 'number column-bought adds';
    default:
      return `number column-${id}`;
  }
}

/** Empty cells: what the name's says runs over them, and the grid of the bars through them. */
export function EmptyCells({ columns, bar }: Pick<LedgerCellsProps, 'columns' | 'bar'>) {
  return columns.map((id) => (
    <td role="cell" key={id} className={`column-${id}`}>
      {id === 'bar' && <LedgerBar bar={bar} />}
    </td>
  ));
}
