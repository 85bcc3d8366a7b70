import { memo } from 'react';
import { ledgerBarGeometry } from '../../charts/ledgerBarGeometry';
import { isOutsideValidity, type PowerScale } from '../../charts/ledgerBarScale';
import type { ProjectBoat } from '../../project/file/schema';
import type { LedgerRow } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';
import { fittingSize } from '../../ui/fittingSize';
import { OutsideMark } from '../../ui/OutsideMark';
import { coefficientText } from './coefficientText';
import { flagLetters } from './flagLetters';
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

interface LedgerRowProps {
  readonly row: LedgerRow;
  readonly setting: RowSetting;
  readonly isSelected: boolean;
  /** True for the one row that the tabulator key reaches. */
  readonly isTabStop: boolean;
  readonly onPick: (fittingId: string) => void;
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
  onPick,
}: LedgerRowProps) {
  const { fittingId, fitting, number } = row;
  const { boat, shown, places, scale, hasFullPrice, rowHeightPx } = setting;
  const size = fittingSize(fitting, boat);
  const isOutside = isOutsideValidity(row.notices);
  const isWithheld = row.withheldItemIds.length > 0;
  return (
    <tr
      className={isSelected ? 'ledger-row selected' : 'ledger-row'}
      onClick={() => {
        onPick(fittingId);
      }}
    >
      <td
        className={row.isRankSafe === false ? 'number column-number rank-unsure' : 'number column-number'}
        title={rankText(row)}
      >
        {number}
      </td>
      <th scope="row" className="column-name" title={`${fitting.name}, ${size}`}>
        <span className="name-line">
          <button
            type="button"
            className="row-pick"
            data-fitting-id={fittingId}
            tabIndex={isTabStop ? 0 : -1}
            aria-current={isSelected ? 'true' : undefined}
          >
            {fitting.name}
          </button>
          <span className="size">{size}</span>
        </span>
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

/** Empty cells: the reason runs over them from the name's. */
function NoNumbers({ hasFullPrice }: { readonly hasFullPrice: boolean }) {
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
export function ExcludedRow({ row, setting }: { readonly row: LedgerRow; readonly setting: RowSetting }) {
  const { fitting, number, excludedReason } = row;
  const size = fittingSize(fitting, setting.boat);
  return (
    <tr className="ledger-row excluded">
      <td className="number column-number">{number}</td>
      <th scope="row" className="column-name" title={`${fitting.name}, ${size}`}>
        <span className="name-line">
          <s>{fitting.name}</s>
          <span className="excluded-reason" title={excludedReason ?? ''}>
            left out of the sum: {excludedReason}
          </span>
        </span>
      </th>
      <NoNumbers hasFullPrice={setting.hasFullPrice} />
    </tr>
  );
}
