import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { columnDecimals, formatValue } from '../../units/print';

/** The place to which each column is rounded: parts, zones and total alike, so that the eye can add them up. */
export interface LedgerPlaces {
  readonly dragN: number;
  readonly airW: number;
  /** Before, after, saving and full price share one. */
  readonly trackW: number;
}

/** Taken from the largest part, so that a total may show a figure more. */
export function ledgerPlaces({ rows }: ProjectLedger): LedgerPlaces {
  const outcomes = rows.flatMap(({ before, after }) => [before.outcome, after.outcome]);
  return {
    dragN: columnDecimals(
      outcomes.map(({ dragAgainstTrackN }) => dragAgainstTrackN),
      'N',
    ),
    airW: columnDecimals(
      outcomes.map(({ airPowerW }) => airPowerW),
      'W',
    ),
    trackW: columnDecimals(
      outcomes.map(({ trackPowerW }) => trackPowerW),
      'W',
    ),
  };
}

/** Widths of the columns of numbers, px. */
export interface NumberWidths {
  readonly dragPx: number;
  readonly airPx: number;
  readonly trackPx: number;
}

/** A figure of the typeface in the bold of the sums, and the room between two columns. */
const figurePx = 6.9;
const betweenPx = 9;
const leastWidthPx = 42;

/** So wide that the totals, the longest numbers, are never cut. */
export function numberWidths({ forces }: ProjectLedger, places: LedgerPlaces): NumberWidths {
  const totals = [forces.before.outcome, forces.after.outcome];
  const widthOf = (texts: readonly string[]): number =>
    Math.max(leastWidthPx, Math.ceil(betweenPx + figurePx * Math.max(...texts.map(({ length }) => length))));
  return {
    dragPx: widthOf(
      totals.map((total) => formatValue(total.dragAgainstTrackN, 'N', { decimals: places.dragN })),
    ),
    airPx: widthOf(totals.map((total) => formatValue(total.airPowerW, 'W', { decimals: places.airW }))),
    trackPx: widthOf(
      totals.flatMap((total) =>
        [total.trackPowerW, total.fullPriceW].map((power) =>
          formatValue(power, 'W', { decimals: places.trackW }),
        ),
      ),
    ),
  };
}
