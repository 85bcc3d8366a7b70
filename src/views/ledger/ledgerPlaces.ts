import type { DoubtedKey } from '../../physics/fitting/change';
import type { LedgerRow, LedgerSide } from '../../project/ledger/ledgerTypes';
import { columnDecimals } from '../../units/print';
import type { Unit } from '../../units/unitTable';

/** The place to which each column is rounded: parts, zones and total alike, so that the eye can add them up. */
export interface LedgerPlaces {
  readonly dragN: number;
  readonly airW: number;
  /** Before, after, spreads, saving and full price share one. */
  readonly trackW: number;
  readonly sideN: number;
  readonly momentNm: number;
}

/** The smallest and the largest of what is read of rows. In place: every edit asks it of all rows. */
export function endsOf(
  rows: readonly LedgerSide[],
  ...reads: readonly ((row: LedgerSide) => number)[]
): readonly [number, number] {
  let least = Infinity;
  let most = -Infinity;
  for (const row of rows) {
    for (const read of reads) {
      const value = read(row);
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
  }
  return [least, most];
}

/** Of what rows come to before and after. */
export function figuresOf(rows: readonly LedgerSide[], key: DoubtedKey): readonly [number, number] {
  return endsOf(
    rows,
    ({ before }) => before.outcome[key],
    ({ after }) => after.outcome[key],
  );
}

/** Taken from the largest part, so that a total may show a figure more. */
export function ledgerPlaces(rows: readonly LedgerRow[]): LedgerPlaces {
  const decimals = (key: DoubtedKey, unit: Unit): number => columnDecimals(figuresOf(rows, key), unit);
  return {
    dragN: decimals('dragAgainstTrackN', 'N'),
    airW: decimals('airPowerW', 'W'),
    trackW: decimals('trackPowerW', 'W'),
    sideN: decimals('sideForceN', 'N'),
    momentNm: decimals('heelingMomentNm', 'N m'),
  };
}
