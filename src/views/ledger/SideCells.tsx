import type { ReactNode } from 'react';
import type { LedgerBarGeometry } from '../../charts/ledgerBarGeometry';
import { LedgerBar } from '../../charts/LedgerBar';
import type { LedgerSide } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';
import { formatValue } from '../../units/print';
import type { LedgerPlaces } from './ledgerPlaces';

interface SideCellsProps {
  readonly side: LedgerSide;
  readonly shown: Shown;
  readonly places: LedgerPlaces;
  readonly hasFullPrice: boolean;
  readonly bar: LedgerBarGeometry;
  /** Under the bar of the total, its own scale. */
  readonly axis?: ReactNode;
  /** True when the plan touches the row: what it changes is set in bold. */
  readonly isChanged: boolean;
  /** In place of the saving: a row whose saving waits for a reason. */
  readonly savingNote?: string | undefined;
}

/** The numbers of a row, a group or the total, from newtons to saving. */
export function SideCells({
  side,
  shown,
  places,
  hasFullPrice,
  bar,
  axis,
  isChanged,
  savingNote,
}: SideCellsProps) {
  const { before, after, saving } = side;
  const judged = shown === 'after' ? after : before;
  const savedW = saving.change.trackPowerW;
  const watts = { decimals: places.trackW };
  const changed = isChanged ? 'number changed' : 'number unchanged';
  return (
    <>
      <td className="number column-drag">
        {formatValue(judged.outcome.dragAgainstTrackN, 'N', { decimals: places.dragN })}
      </td>
      <td className="number column-air">
        {formatValue(judged.outcome.airPowerW, 'W', { decimals: places.airW })}
      </td>
      <td className="number column-before">{formatValue(before.outcome.trackPowerW, 'W', watts)}</td>
      <td className={`${changed} column-after`}>{formatValue(after.outcome.trackPowerW, 'W', watts)}</td>
      {hasFullPrice && (
        <td className="number column-price">{formatValue(judged.outcome.fullPriceW, 'W', watts)}</td>
      )}
      <td className="column-bar">
        <LedgerBar bar={bar} />
        {axis}
      </td>
      {savingNote === undefined ? (
        <td className={savedW < 0 ? 'number column-saving adds' : 'number column-saving saves'}>
          {isChanged ? formatValue(savedW, 'W', watts) : ''}
        </td>
      ) : (
        <td className="number column-saving saving-note">{savingNote}</td>
      )}
    </>
  );
}
