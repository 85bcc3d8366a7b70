import type { Saving } from '../../physics/ledger/ledgerSums';
import type { ProjectFitting } from '../../project/file/schema';
import type { LedgerSide } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';
import { formatRange, formatValue, formatValueRange } from '../../units/print';
import { largestDoubts } from './doubtText';
import { figureColumns, isFigure, isInSight, stateOf, type ColumnId } from './ledgerColumns';
import type { LedgerPlaces } from './ledgerPlaces';
import { coefficientSpreadText, coefficientText, regimeText, reynoldsText } from './memberTexts';

/** What the cells of one row, zone or total print. */
export interface CellQuestion {
  readonly side: LedgerSide;
  readonly shown: Shown;
  readonly places: LedgerPlaces;
  /** True when the plan touches the row, or a row of the sum. */
  readonly isChanged: boolean;
  /** Whose names the doubts of a sum need; empty for a row, which is named already. */
  readonly fittings: readonly ProjectFitting[];
}

/** A cell in words and figures; '' where the row has no such thing, or a sum would make no sense. */
export function cellText(id: Exclude<ColumnId, 'bar'>, question: CellQuestion): string {
  const { side, shown, places, isChanged, fittings } = question;
  if (!isInSight(id, shown)) return '';
  const state = stateOf(id, shown);
  const result = id === 'before' || id === 'after' ? side[id] : side[state];
  if (isFigure(id)) {
    const { key, unit, place } = figureColumns[id];
    return formatValue(result.outcome[key], unit, { decimals: places[place] });
  }
  const watts = { decimals: places.trackW };
  switch (id) {
    case 'coefficient':
      return coefficientText(result);
    case 'coefficientSpread':
      return coefficientSpreadText(result);
    case 'regime':
      return regimeText(result);
    case 'reynolds':
      return reynoldsText(result);
    case 'spread':
      return rangeText(result.outcome.trackPowerW, result.ranges.item.trackPowerW, watts.decimals);
    case 'doubts':
      return largestDoubts(result.doubts, places.trackW, fittings);
    case 'saving':
      return isChanged ? formatValue(side.saving.change.trackPowerW, 'W', watts) : '';
    case 'savingSpread': {
      if (!isChanged) return '';
      return rangeText(side.saving.change.trackPowerW, side.saving.ranges.item.trackPowerW, watts.decimals);
    }
    case 'bought':
      return isChanged ? boughtText(side.saving, places) : '';
  }
}

/** '' where nothing is uncertain: a row that no air moves. */
function rangeText(bestW: number, { low, high }: { low: number; high: number }, decimals: number): string {
  return low === bestW && high === bestW && bestW === 0 ? '' : formatValueRange(low, high, 'W', { decimals });
}

/** Side force that a plan adds; '' where it adds none that can be printed. */
export function boughtText({ change }: Saving, { sideN }: LedgerPlaces): string {
  if (change.sideForceN >= 0) return '';
  const text = formatValue(-change.sideForceN, 'N', { decimals: sideN });
  return /[1-9]/.test(text) ? text : '';
}

/** What a mouse that rests on a cell is told; undefined where the cells beside it say it all. */
export function cellTitle(
  id: ColumnId,
  { side, shown, places, isChanged }: CellQuestion,
): string | undefined {
  if (!isChanged || shown !== 'both' || (id !== 'before' && id !== 'saving')) return undefined;
  const { low, high } = (id === 'saving' ? side.saving : side.before).ranges.item.trackPowerW;
  return `${id}: ${formatRange(low, high, 'W', { decimals: places.trackW })} by the fittings`;
}
