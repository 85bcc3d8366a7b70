import type { Range } from '../../physics/doubt/doubts';
import type { LedgerSide, ProjectLedger } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';
import { formatValue, formatValueRange, printUnit } from '../../units/print';
import type { Unit } from '../../units/unitTable';
import {
  columnHeads,
  figureColumns,
  isFigure,
  stateOf,
  type ColumnId,
  type FigureColumn,
} from './ledgerColumns';
import { endsOf, figuresOf, type LedgerPlaces } from './ledgerPlaces';

/** Advances of a figure in the bold of the sums, in a spread's small type, and of a letter of a head, px. */
const figurePx = 6.9;
const spreadFigurePx = 5.9;
const headLetterPx = 5.9;
/** Room between two columns, px. */
const betweenPx = 9;
const leastWidthPx = 42;
/** So that its head takes no more lines than the others, px. */
const sideForceWidthPx = 78;

const wordWidthsPx: Partial<Record<ColumnId, number>> = {
  coefficient: 62,
  coefficientSpread: 59,
  regime: 77,
  reynolds: 92,
  doubts: 480,
};

/** Room between the bars and the numbers to their left, px. */
const barGapPx = 14;

/**
 * How wide each column is, so that no number is ever cut, px.
 * @param typeScale how much larger than on a desk the figures are set.
 */
export function columnWidths(
  ids: readonly ColumnId[],
  { rows, forces }: ProjectLedger,
  places: LedgerPlaces,
  barWidthPx: number,
  shown: Shown,
  typeScale: number,
): readonly number[] {
  const sides: readonly LedgerSide[] = [forces, ...rows];
  return ids.map((id) => {
    if (id === 'bar') return barWidthPx + barGapPx;
    const words = wordWidthsPx[id];
    if (words !== undefined) return Math.ceil(words * typeScale);
    const leastPx = id === 'sideForce' ? sideForceWidthPx : leastWidthPx;
    return Math.ceil(
      Math.max(leastPx, headWidthPx(id), typeScale * contentWidthPx(id, sides, places, shown)),
    );
  });
}

function contentWidthPx(
  id: Exclude<ColumnId, 'bar'>,
  sides: readonly LedgerSide[],
  places: LedgerPlaces,
  shown: Shown,
): number {
  if (isFigure(id)) {
    const figure: FigureColumn = figureColumns[id];
    return figuresPx(figuresOf(sides, figure.key), figure.unit, places[figure.place]);
  }
  if (id === 'bought') return figuresPx(endsOf(sides, savedSideN), 'N', places.sideN);
  if (id === 'saving') return figuresPx(endsOf(sides, savedW), 'W', places.trackW);
  const state = stateOf(id, shown);
  const rangeOf =
    id === 'savingSpread'
      ? ({ saving }: LedgerSide) => saving.ranges.item.trackPowerW
      : (side: LedgerSide) => side[state].ranges.item.trackPowerW;
  return betweenPx + spreadFigurePx * longest(longestRanges(sides, rangeOf, places.trackW));
}

const savedSideN = ({ saving }: LedgerSide): number => saving.change.sideForceN;
const savedW = ({ saving }: LedgerSide): number => saving.change.trackPowerW;

/** Ranges no shorter than the longest: the ends that lie furthest out, for ranges with a minus sign and for those without. */
function longestRanges(
  sides: readonly LedgerSide[],
  rangeOf: (side: LedgerSide) => Range,
  decimals: number,
): readonly string[] {
  const negative = noRanges();
  const positive = noRanges();
  for (const side of sides) {
    const { low, high } = rangeOf(side);
    const part = low < 0 ? negative : positive;
    part.firstHigh ??= high;
    part.low = Math.min(part.low, low);
    part.high = Math.max(part.high, high);
  }
  return [negative, positive].flatMap(({ firstHigh, low, high }) =>
    firstHigh === null ? [] : [low, firstHigh].map((from) => formatValueRange(from, high, 'W', { decimals })),
  );
}

/** The ends of several ranges that lie furthest out; the high end of the first is null until there is one. */
function noRanges(): { firstHigh: number | null; low: number; high: number } {
  return { firstHigh: null, low: Infinity, high: -Infinity };
}

function figuresPx(ends: readonly [number, number], unit: Unit, decimals: number): number {
  return Math.ceil(betweenPx + figurePx * longest(ends.map((end) => formatValue(end, unit, { decimals }))));
}

/** The longest word of the head, which may take several lines. */
function headWidthPx(id: ColumnId): number {
  const lengths = headText(id)
    .split(' ')
    .map((word) => word.length + word.replace(/[^mwMW]/g, '').length / 2);
  return Math.ceil(betweenPx + headLetterPx * Math.max(...lengths));
}

/** Names of so few letters have room for their unit beside them. */
const mostShortLetters = 4;

/** True for a short name and for one of several words: the unit stands beside it, to save a line. */
export function hasUnitBeside(name: string): boolean {
  return name.includes(' ') || name.length <= mostShortLetters;
}

/** A head's name and unit. */
export function headText(id: ColumnId): string {
  const { name, unit } = columnHeads[id];
  if (unit === undefined) return name;
  return `${name}${hasUnitBeside(name) ? '\u00a0' : ' '}${shortUnit(unit)}`;
}

/** A unit without what stands in brackets: the head of the bars and the totals say which horsepower it is. */
export function shortUnit(unit: Unit): string {
  return printUnit(unit).replace(/\u00a0\(.*$/, '');
}

function longest(texts: readonly string[]): number {
  return Math.max(0, ...texts.map(({ length }) => length));
}
