import { memo, type MouseEvent, type ReactNode } from 'react';
import { ledgerBarGeometry } from '../../charts/ledgerBarGeometry';
import { isOutsideValidity, type PowerScale } from '../../charts/ledgerBarScale';
import type { ProjectBoat } from '../../project/file/schema';
import type { LedgerRow } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';
import { fittingSize } from '../../ui/fittingSize';
import { OutsideMark } from '../../ui/OutsideMark';
import { coefficientText } from './coefficientText';
import { flagLetters } from './flagLetters';
import type { RowInPlaceProps } from './RowInPlace';
import type { LedgerPlaces, NumberWidths } from './ledgerPlaces';
import { SideCells } from './SideCells';

/** What all rows share. */
export interface RowSetting {
  readonly boat: ProjectBoat;
  readonly shown: Shown;
  readonly places: LedgerPlaces;
  readonly widths: NumberWidths;
  readonly scale: PowerScale;
  readonly hasFullPrice: boolean;
  readonly rowHeightPx: number;
}

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
      {children}
    </button>
  );
}

function rowClass(kind: string, isSelected: boolean, isPicked: boolean | undefined): string {
  return [kind, isSelected && 'selected', isPicked === true && 'picked'].filter(Boolean).join(' ');
}

/**
 * One fitting: a button in its name selects it, and so does a click anywhere in the row. Remembered, because moving the
 * selection draws two rows anew and not all of them.
 */
export const LedgerRowView = memo(function LedgerRowView({
  row,
  setting,
  isSelected,
  isTabStop,
  isPicked,
  isInPlace,
  handlers,
}: LedgerRowProps) {
  const { fittingId, fitting, number } = row;
  const { boat, shown, places, scale, hasFullPrice, rowHeightPx } = setting;
  const size = fittingSize(fitting, boat);
  const isOutside = isOutsideValidity(row.notices);
  const isWithheld = row.withheldItemIds.length > 0;
  return (
    <tr
      className={rowClass('ledger-row', isSelected, isPicked)}
      onClick={(event) => {
        handlers.onPick(fittingId, pickKind(event));
      }}
    >
      <td
        className={row.isRankSafe === false ? 'number column-number rank-unsure' : 'number column-number'}
        title={rankText(row)}
      >
        {number}
      </td>
      <th
        scope="row"
        className={isInPlace ? 'column-name open-in-place' : 'column-name'}
        title={isInPlace ? undefined : `${fitting.name}, ${size}`}
        onDoubleClick={() => {
          handlers.onOpenInPlace(fittingId);
        }}
      >
        <span className="name-line">
          <NameButton fittingId={fittingId} isSelected={isSelected} isTabStop={isTabStop} isPicked={isPicked}>
            {fitting.name}
          </NameButton>
          <span className="size">{size}</span>
        </span>
        {isInPlace && handlers.renderInPlace({ fitting, onClose: handlers.onCloseInPlace })}
      </th>
      <td className="column-flags">
        {flagLetters(fitting.flags).map(({ letter, words }) => (
          <abbr key={letter} title={words}>
            {letter}
          </abbr>
        ))}
      </td>
      <CoefficientCells row={row} shown={shown} isOutside={isOutside} />
      <SideCells
        side={row}
        shown={shown}
        places={places}
        hasFullPrice={hasFullPrice}
        bar={ledgerBarGeometry(row, scale, { shown, heightPx: rowHeightPx })}
        isChanged={row.isChanged}
        savingNote={isWithheld && !row.isChanged ? 'waits' : undefined}
      />
    </tr>
  );
});

/** The rank and how sure it is. Numbers of rows whose rank is unsure are set in italics, as the key says. */
function rankText({ rank, isRankSafe }: LedgerRow): string {
  if (rank === null) return '';
  const place = `rank ${rank} by cost before`;
  if (isRankSafe === null) return place;
  return isRankSafe ? `${place}, safe over every doubt` : `${place}; the next in rank may cost more`;
}

function CoefficientCells({
  row,
  shown,
  isOutside,
}: {
  readonly row: LedgerRow;
  readonly shown: Shown;
  readonly isOutside: boolean;
}) {
  const { best, spread, regime } = coefficientText(shown === 'after' ? row.after : row.before);
  return (
    <>
      <td className="number column-coefficient">{best}</td>
      <td className="column-spread">{spread}</td>
      <td className="column-regime" title={regime}>
        {isOutside && <OutsideMark label="outside its valid range" />} {regime}
      </td>
    </>
  );
}

/** Empty cells: what the name's says runs over them. */
export function EmptyCells({ hasFullPrice }: { readonly hasFullPrice: boolean }) {
  const columns = [
    'flags',
    'coefficient',
    'spread',
    'regime',
    'drag',
    'air',
    'before',
    'after',
    ...(hasFullPrice ? ['price'] : []),
    'bar',
    'saving',
  ];
  return columns.map((column) => <td key={column} className={`column-${column}`} />);
}

/** A fitting that is left out of the sums: struck, with the reason in the row. */
export const ExcludedRow = memo(function ExcludedRow({
  row,
  setting,
  isSelected,
  isTabStop,
  isPicked,
  handlers,
}: Omit<LedgerRowProps, 'isInPlace'>) {
  const { fittingId, fitting, number, excludedReason } = row;
  const size = fittingSize(fitting, setting.boat);
  return (
    <tr
      className={rowClass('ledger-row excluded', isSelected, isPicked)}
      onClick={(event) => {
        handlers.onPick(fittingId, pickKind(event));
      }}
    >
      <td className="number column-number">{number}</td>
      <th scope="row" className="column-name" title={`${fitting.name}, ${size}`}>
        <span className="name-line">
          <NameButton fittingId={fittingId} isSelected={isSelected} isTabStop={isTabStop} isPicked={isPicked}>
            <s>{fitting.name}</s>
          </NameButton>
          <span className="excluded-reason" title={excludedReason ?? ''}>
            left out of the sum: {excludedReason}
          </span>
        </span>
      </th>
      <EmptyCells hasFullPrice={setting.hasFullPrice} />
    </tr>
  );
});
