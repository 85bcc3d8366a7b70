import { memo, type MouseEvent, type ReactNode } from 'react';
import { ledgerBarGeometry } from '../../charts/ledgerBarGeometry';
import { isOutsideValidity } from '../../charts/ledgerBarScale';
import { zeroResult } from '../../physics/ledger/ledgerSums';
import type { ProjectBoat, ProjectFitting } from '../../project/file/schema';
import type { LedgerRow } from '../../project/ledger/ledgerTypes';
import { exclusionText } from '../../project/wording/noReason';
import { fittingSize } from '../../ui/fittingSize';
import { UnfinishedMark } from '../../ui/fields/UnfinishedMark';
import { OutsideMark } from '../../ui/OutsideMark';
import { flagLetters } from './flagLetters';
import { Cell, EmptyCells, ledgerCells } from './LedgerCells';
import type { RowInPlaceProps } from './RowInPlace';
import type { RowSetting } from './rowSetting';

/** How a row is picked by hand: alone, along with others, or with all on the way. */
export type PickKind = 'one' | 'toggle' | 'range';

/** What a row hands upwards. One object for all rows, so that none is drawn anew for it. */
export interface RowHandlers {
  readonly onPick: (fittingId: string, kind: PickKind) => void;
  readonly onOpenInPlace: (fittingId: string) => void;
  readonly onCloseInPlace: (returnsToRow: boolean) => void;
  /** Draws name and size as fields; the page fetches them when they are first needed. */
  readonly renderInPlace: (props: RowInPlaceProps) => ReactNode;
}

interface LedgerRowProps {
  readonly row: LedgerRow;
  readonly setting: RowSetting;
  readonly isSelected: boolean;
  /** True for the one row that the tabulator key reaches. */
  readonly isTabStop: boolean;
  /** True when it is picked out together with others; undefined when no rows are. */
  readonly isPicked: boolean | undefined;
  /** True while name and size are fields. */
  readonly isInPlace: boolean;
  /** Its place among all rows, where not all are drawn. */
  readonly rowIndex: number | undefined;
  readonly handlers: RowHandlers;
}

function pickKind({ shiftKey, ctrlKey, metaKey }: MouseEvent): PickKind {
  if (shiftKey) return 'range';
  return ctrlKey || metaKey ? 'toggle' : 'one';
}

type NameButtonProps = Pick<LedgerRowProps, 'isSelected' | 'isTabStop' | 'isPicked'> & {
  readonly fittingId: string;
  readonly children: ReactNode;
};

/** The part of a row that takes the focus. */
function NameButton({ fittingId, isSelected, isTabStop, isPicked, children }: NameButtonProps) {
  return (
    <button
      type="button"
      className="row-pick"
      data-fitting-id={fittingId}
      tabIndex={isTabStop ? 0 : -1}
      aria-current={isSelected ? 'true' : undefined}
      aria-pressed={isPicked}
    >
      <span className="row-name">{children}</span>
    </button>
  );
}

function rowClass(kind: string, isSelected: boolean, isPicked: boolean | undefined): string {
  return [kind, isSelected && 'selected', isPicked === true && 'picked'].filter(Boolean).join(' ');
}

/** A row names its fitting already, so its doubts need not. */
export const noNames: readonly ProjectFitting[] = [];

/** No bar: only the grid of the rows runs through. */
export const noBar = { before: zeroResult, after: zeroResult };

/**
 * One fitting: a button in its name selects it, and so does a click anywhere in the row. Remembered, because an edit or
 * a move of the selection draws the one or two rows anew that it touches, and not all of them.
 */
export const LedgerRowView = memo(function LedgerRowView({
  row,
  setting,
  isSelected,
  isTabStop,
  isPicked,
  isInPlace,
  rowIndex,
  handlers,
}: LedgerRowProps) {
  const { fittingId, fitting, number } = row;
  const { boat, shown, places, columns, scale, rowHeightPx } = setting;
  const isWithheld = row.withheldItemIds.length > 0;
  return (
    <tr
      role="row"
      className={rowClass('ledger-row', isSelected, isPicked)}
      aria-rowindex={rowIndex}
      onClick={(event) => {
        handlers.onPick(fittingId, pickKind(event));
      }}
    >
      <Cell
        className={row.isRankSafe === true ? 'number column-number rank-safe' : 'number column-number'}
        title={rankText(row)}
        text={number}
      />
      <NameCell
        fitting={fitting}
        boat={boat}
        isSelected={isSelected}
        isTabStop={isTabStop}
        isPicked={isPicked}
        isInPlace={isInPlace}
        handlers={handlers}
      />
      <FlagCell isOutside={isOutsideValidity(row.notices)} flags={fitting.flags} />
      {ledgerCells({
        columns,
        side: row,
        shown,
        places,
        fittings: noNames,
        bar: ledgerBarGeometry(row, scale, { shown, heightPx: rowHeightPx }),
        isChanged: row.isChanged,
        savingNote: isWithheld && !row.isChanged ? 'waits' : undefined,
      })}
    </tr>
  );
}, areSame);

type NameCellProps = Omit<LedgerRowProps, 'row' | 'setting' | 'rowIndex'> & {
  readonly fitting: ProjectFitting;
  readonly boat: ProjectBoat;
};

/** Name and size, or the fields for them. Remembered: the air changes neither. */
const NameCell = memo(function NameCell({ fitting, boat, isInPlace, handlers, ...button }: NameCellProps) {
  const size = sizeTexts(fitting, boat);
  return (
    <th
      role="rowheader"
      scope="row"
      className={isInPlace ? 'column-name open-in-place' : 'column-name'}
      title={isInPlace ? undefined : `${fitting.name}, ${size.whole}`}
      onDoubleClick={() => {
        handlers.onOpenInPlace(fitting.id);
      }}
    >
      <span className="name-line">
        <NameButton fittingId={fitting.id} {...button}>
          {fitting.name}
        </NameButton>{' '}
        <UnfinishedMark within={`fitting/${fitting.id}.`} /> <span className="size">{size.breaking}</span>
      </span>
      {isInPlace && handlers.renderInPlace({ fitting, onClose: handlers.onCloseInPlace })}
    </th>
  );
});

function areSame({ row: a, ...before }: LedgerRowProps, { row: b, ...after }: LedgerRowProps): boolean {
  return (
    isSameRow(a, b) &&
    (Object.keys(after) as (keyof typeof after)[]).every((key) => before[key] === after[key])
  );
}

/** True when a row of a new ledger prints what the old one did: a row that no edit touched keeps its two results. */
function isSameRow(a: LedgerRow, b: LedgerRow): boolean {
  return (
    a === b ||
    (rowKeys.every((key) => a[key] === b[key]) &&
      a.withheldItemIds.length === b.withheldItemIds.length &&
      a.notices.length === b.notices.length)
  );
}

const rowKeys = [
  'fitting',
  'number',
  'excludedReason',
  'before',
  'after',
  'isChanged',
  'rank',
  'isRankSafe',
] as const satisfies readonly (keyof LedgerRow)[];

/**
 * A fitting's size, and the same breaking between its parts alone: where the room is short, what does not fit falls away
 * whole, so that no number is ever cut.
 */
function sizeTexts(fitting: ProjectFitting, boat: ProjectBoat): { whole: string; breaking: string } {
  const whole = fittingSize(fitting, boat);
  const breaking = whole
    .replaceAll(' ', '\u00a0')
    .replaceAll('–', '\u2060–\u2060')
    .replace(/([^\d\s])\u00a0×\u00a0/g, '$1 ×\u00a0');
  return { whole, breaking };
}

/** The rank and how sure it is. Numbers of rows whose rank is safe are underlined, as the key says. */
function rankText({ rank, isRankSafe }: LedgerRow): string {
  if (rank === null) return '';
  const place = `rank ${rank} by track power before`;
  if (isRankSafe === null) return place;
  return isRankSafe ? `${place}, safe over every doubt` : `${place}; the next in rank may cost more`;
}

interface FlagCellProps {
  readonly isOutside: boolean;
  readonly flags: ProjectFitting['flags'];
}

const FlagCell = memo(function FlagCell({ isOutside, flags }: FlagCellProps) {
  return (
    <td role="cell" className="column-flags">
      {isOutside && <OutsideMark label="outside its valid range" />}
      {flagLetters(flags).map(({ letter, words }) => (
        <abbr key={letter} title={words}>
          {letter}
        </abbr>
      ))}
    </td>
  );
});

/** A fitting that is left out of the sums: struck, with the reason in the row. */
export const ExcludedRow = memo(function ExcludedRow({
  row,
  setting,
  isSelected,
  isTabStop,
  isPicked,
  rowIndex,
  handlers,
}: LedgerRowProps) {
  const { fittingId, fitting, number, excludedReason } = row;
  const reason = exclusionText(excludedReason ?? '');
  const size = fittingSize(fitting, setting.boat);
  return (
    <tr
      role="row"
      className={rowClass('ledger-row excluded', isSelected, isPicked)}
      aria-rowindex={rowIndex}
      onClick={(event) => {
        handlers.onPick(fittingId, pickKind(event));
      }}
    >
      <td role="cell" className="number column-number">
        {number}
      </td>
      <th role="rowheader" scope="row" className="column-name" title={`${fitting.name}, ${size}`}>
        <span className="name-line">
          <NameButton fittingId={fittingId} isSelected={isSelected} isTabStop={isTabStop} isPicked={isPicked}>
            <s>{fitting.name}</s>
          </NameButton>{' '}
          <span className="excluded-reason" title={reason}>
            left out of the sum: {reason}
          </span>
        </span>
      </th>
      <td role="cell" className="column-flags" />
      <EmptyCells
        columns={setting.columns}
        bar={ledgerBarGeometry(noBar, setting.scale, { heightPx: setting.rowHeightPx })}
      />
    </tr>
  );
}, areSame);
