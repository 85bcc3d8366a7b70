import { columnDecimals, formatValue, formatValueRange } from '../units/print';
import type { Unit } from '../units/unitTable';

/** Finer than a thousandth of a newton or a watt is what floating point left over, not a result. */
const mostDecimals = 3;

/** The decimals that a column of values shares, so that the eye can add and subtract. */
export function placesOf(valuesSi: readonly number[], unit: Unit): number {
  return Math.min(columnDecimals(valuesSi, unit), mostDecimals);
}

export function formatAt(valueSi: number, unit: Unit, decimals: number): string {
  return formatValue(valueSi, unit, { decimals });
}

export function formatRangeAt(
  { low, high }: { readonly low: number; readonly high: number },
  unit: Unit,
  decimals: number,
): string {
  return formatValueRange(zeroWhenUnseen(low, decimals), zeroWhenUnseen(high, decimals), unit, { decimals });
}

/** Zero for what rounds to zero at this place: a range of tiny ends would otherwise be written in powers of ten. */
function zeroWhenUnseen(value: number, decimals: number): number {
  return Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value;
}

/** A whole number that counts or ranks something: no decimals are meant. */
export function formatCount(count: number): string {
  return formatAt(count, '1', 0);
}
