import type { Quantity } from '../../physics/quantity';
import { formatValue, formatValueRange } from '../../units/print';
import { displayUnit, withNumbers, type FormulaPiece, type KnownSymbols } from './formula';

/** One quantity of the working, with a cell for each side that is shown. */
export interface WorkingLine {
  readonly key: string;
  readonly quantity: Quantity;
  readonly cells: readonly (LineCell | null)[];
}

export interface LineCell {
  readonly text: string;
  /** Low to high, where the number has a range. */
  readonly spread: string | null;
  /** The equation with its numbers; null where it has none. */
  readonly numbers: readonly FormulaPiece[] | null;
  /** Where it comes from, what it is based on. */
  readonly note: string | null;
}

/** What a cell is made from. */
export interface LineInput {
  readonly value: number | null;
  readonly low?: number | null;
  readonly high?: number | null;
  readonly note?: string | null;
  readonly decimals?: number;
}

/** A line from its quantity; null when no side has a value. */
export function workingLine(
  key: string,
  quantity: Quantity,
  inputs: readonly LineInput[],
  known: readonly KnownSymbols[],
): WorkingLine | null {
  const cells = inputs.map((input, i) => cellOf(quantity, input, known[i] ?? new Map()));
  return cells.every((cell) => cell === null) ? null : { key, quantity, cells };
}

function cellOf(quantity: Quantity, input: LineInput, known: KnownSymbols): LineCell | null {
  const { value, low = null, high = null, note = null, decimals } = input;
  if (value === null) return null;
  const unit = displayUnit(quantity.unit);
  const place = decimals === undefined ? {} : { decimals };
  return {
    text: formatValue(unit === '1' ? threeFigures(value) : value, unit, place),
    spread: low === null || high === null || low === high ? null : formatValueRange(low, high, unit, place),
    numbers: quantity.equation === undefined ? null : withNumbers(quantity.equation, known),
    note,
  };
}

/** Pure numbers, a Reynolds number above all, to three figures: 101 985 would promise too much. */
export function threeFigures(value: number): number {
  return Number(value.toPrecision(3));
}

/** The lines that have something to say. */
export function present(lines: readonly (WorkingLine | null)[]): WorkingLine[] {
  return lines.filter((each): each is WorkingLine => each !== null);
}
