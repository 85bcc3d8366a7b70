import type { Quantity } from '../../physics/quantity';
import { formatQuantity } from '../../units/print';
import { valueIn, valueRangeIn } from '../../units/printIn';
import { shownUnit } from '../../units/shownUnits';
import { displayUnit, readableSi, withNumbers, type FormulaPiece, type KnownSymbols } from './formula';

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
  const cells = inputs.map((input, i) =>
    cellOf(quantity, withAnswer(key, quantity, input), known[i] ?? new Map()),
  );
  return cells.every((cell) => cell === null) ? null : { key, quantity, cells };
}

/** What the ledger shows of a row: the working is in SI, and its answers also stand in the reader's own units. */
const answers: readonly string[] = [
  'meanDragN',
  'airPowerW',
  'trackPowerW',
  'fullPriceW',
  'sideForceN',
  'heelingMomentNm',
];

function withAnswer(key: string, { unit }: Quantity, input: LineInput): LineInput {
  const { value, note = null } = input;
  const shown = displayUnit(unit);
  if (value === null || !answers.includes(key) || shownUnit(shown) === shown) return input;
  const answer = formatQuantity(value, shown);
  return { ...input, note: note === null ? answer : `${answer}; ${note}` };
}

function cellOf(quantity: Quantity, input: LineInput, known: KnownSymbols): LineCell | null {
  const { value, low = null, high = null, note = null, decimals } = input;
  if (value === null) return null;
  const unit = displayUnit(quantity.unit);
  const place = decimals === undefined ? {} : { decimals };
  return {
    text: valueIn(unit === '1' ? threeFigures(value) : readableSi(value, quantity.symbol), unit, place),
    spread: low === null || high === null || low === high ? null : valueRangeIn(low, high, unit, place),
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
