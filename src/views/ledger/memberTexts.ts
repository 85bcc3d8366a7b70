import type { Result, RowResult } from '../../physics/ledger/ledgerSums';
import { formatValue, formatValueRange, type PrintOptions } from '../../units/print';

/** The members of a row over all chosen conditions; none for a sum. */
function membersOf(result: Result) {
  return isRow(result) ? result.parts.flatMap(({ trace }) => trace.members) : [];
}

function isRow(result: Result): result is RowResult {
  return 'parts' in result;
}

const twoPlaces = { decimals: 2 };

/** The best coefficient, from the smallest to the largest where the members differ in the printed figures. */
export function coefficientText(result: Result): string {
  return extentText(present(membersOf(result).map(({ coefficientBest }) => coefficientBest)), twoPlaces);
}

/** The lowest and the highest that any member's coefficient may be. */
export function coefficientSpreadText(result: Result): string {
  const ends = present(
    membersOf(result).flatMap(({ coefficientLow, coefficientHigh }) => [coefficientLow, coefficientHigh]),
  );
  return ends.length === 0 ? '' : formatValueRange(Math.min(...ends), Math.max(...ends), '1', twoPlaces);
}

export function regimeText(result: Result): string {
  return [...new Set(membersOf(result).map(({ regime }) => regime))].join(', ');
}

/** To three figures: more would be read as knowledge. */
export function reynoldsText(result: Result): string {
  const values = present(membersOf(result).map(({ reynolds }) => reynolds));
  return extentText(values.map((value) => Number(value.toPrecision(3))));
}

function extentText(values: readonly number[], options: PrintOptions = {}): string {
  if (values.length === 0) return '';
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const isOne = formatValue(least, '1', options) === formatValue(most, '1', options);
  return isOne ? formatValue(most, '1', options) : formatValueRange(least, most, '1', options);
}

function present(values: readonly (number | null)[]): number[] {
  return values.filter((value): value is number => value !== null);
}
