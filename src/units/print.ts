import { fromSi, toSi } from './convert';
import { shownUnit } from './shownUnits';
import {
  decimalsIn,
  quantityIn,
  rangeIn,
  unitSign,
  valueIn,
  valueRangeIn,
  type PrintOptions,
} from './printIn';
import type { Unit } from './unitTable';

export type { PrintOptions } from './printIn';

/*
 * For people, in the unit that the reader chose: each takes the usual unit of the quantity (kn, m, mm, N, W, N m) and
 * prints in the chosen one. Units that stand in no choice are printed as they are. What must stay in the unit that is
 * named, such as a formula with its numbers, is printed by `printIn.ts`.
 */

/**
 * The place for a column, in the reader's unit: as fine as it is in the usual unit, so that a small row beside a large
 * total does not read 0.00 hp where it read 3 W.
 */
export function columnDecimals(valuesSi: readonly number[], unit: Unit): number {
  const usual = decimalsIn(valuesSi, unit);
  const shown = shownUnit(unit);
  if (shown === unit) return usual;
  const placeSi = toSi(10 ** -usual, unit);
  return Math.max(decimalsIn(valuesSi, shown), Math.ceil(-Math.log10(fromSi(placeSi, shown)) - 1e-9));
}

/** The reader's unit, as it stands in the head of a column: "kn", "hp (metric)". */
export function printUnit(unit: Unit): string {
  return unitSign(shownUnit(unit));
}

/** A value for a column whose head names the reader's unit. */
export function formatValue(valueSi: number, unit: Unit, options: PrintOptions = {}): string {
  return valueIn(valueSi, shownUnit(unit), options);
}

/** A value with the reader's unit. */
export function formatQuantity(valueSi: number, unit: Unit, options: PrintOptions = {}): string {
  return quantityIn(valueSi, shownUnit(unit), options);
}

/** A spread for a column whose head names the reader's unit. */
export function formatValueRange(
  lowSi: number,
  highSi: number,
  unit: Unit,
  options: PrintOptions = {},
): string {
  return valueRangeIn(lowSi, highSi, shownUnit(unit), options);
}

/** A spread with the reader's unit once: "36–48 W". */
export function formatRange(lowSi: number, highSi: number, unit: Unit, options: PrintOptions = {}): string {
  return rangeIn(lowSi, highSi, shownUnit(unit), options);
}
