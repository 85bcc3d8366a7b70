/**
 * Columns of a published table joined by monotone cubic pieces (Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980)
 * 238): the curve passes through every node, has no step in value or slope, and makes no bump that the table lacks.
 * Outside the table the end value is held; the caller gives the notice.
 */
export interface CubicTable {
  readonly abscissae: Float64Array;
  /** coefficients[column][4 * piece + power] of the cubic in (x - x_piece). */
  readonly coefficients: readonly Float64Array[];
}

/** How the curve leaves the table: level, so that the held end value joins smoothly, or on along its own slope. */
export type TableEnds = 'level' | 'sloping';

/** Builds the table from abscissae in rising order and one row of values per abscissa. */
export function cubicTable(
  abscissae: readonly number[],
  rows: readonly (readonly number[])[],
  ends: TableEnds = 'level',
): CubicTable {
  const columnCount = rows[0]?.length ?? 0;
  const coefficients: Float64Array[] = [];
  for (let column = 0; column < columnCount; column += 1) {
    coefficients.push(
      monotoneCoefficients(
        abscissae,
        rows.map((row) => row[column]!),
        ends,
      ),
    );
  }
  return { abscissae: Float64Array.from(abscissae), coefficients };
}

/** The piece that holds `x`, for `valueOnPiece`; the first or last piece outside the table. */
export function pieceAt(table: CubicTable, x: number): number {
  const { abscissae } = table;
  let low = 0;
  let high = abscissae.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (abscissae[middle]! <= x) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Value of a column at `x` on a piece found with `pieceAt`; held constant beyond the ends. */
export function valueOnPiece(table: CubicTable, column: number, piece: number, x: number): number {
  const { abscissae } = table;
  const first = abscissae[0]!;
  const last = abscissae[abscissae.length - 1]!;
  const h = Math.min(Math.max(x, first), last) - abscissae[piece]!;
  const c = table.coefficients[column]!;
  const at = 4 * piece;
  return c[at]! + h * (c[at + 1]! + h * (c[at + 2]! + h * c[at + 3]!));
}

/** Value of a column at `x`. */
export function valueAt(table: CubicTable, column: number, x: number): number {
  return valueOnPiece(table, column, pieceAt(table, x), x);
}

function monotoneCoefficients(x: readonly number[], y: readonly number[], ends: TableEnds): Float64Array {
  const pieces = x.length - 1;
  const secants = Array.from({ length: pieces }, (_, i) => (y[i + 1]! - y[i]!) / (x[i + 1]! - x[i]!));
  const slopes = x.map((_, i) => nodeSlope(x, secants, i, ends));
  const out = new Float64Array(4 * pieces);
  for (let i = 0; i < pieces; i += 1) {
    const h = x[i + 1]! - x[i]!;
    const secant = secants[i]!;
    out[4 * i] = y[i]!;
    out[4 * i + 1] = slopes[i]!;
    out[4 * i + 2] = (3 * secant - 2 * slopes[i]! - slopes[i + 1]!) / h;
    out[4 * i + 3] = (slopes[i]! + slopes[i + 1]! - 2 * secant) / (h * h);
  }
  return out;
}

/** Weighted harmonic mean of the neighbouring secants; zero at a turning point. */
function nodeSlope(x: readonly number[], secants: readonly number[], i: number, ends: TableEnds): number {
  const before = secants[i - 1];
  const after = secants[i];
  if (before === undefined) return ends === 'level' ? 0 : endSlope(secants[0]!, secants[1]);
  if (after === undefined) return ends === 'level' ? 0 : endSlope(before, secants[i - 2]);
  if (before * after <= 0) return 0;
  const left = x[i]! - x[i - 1]!;
  const right = x[i + 1]! - x[i]!;
  const weightBefore = 2 * right + left;
  const weightAfter = right + 2 * left;
  return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
}

/** Slope at an end that is left sloping: the end secant carried on from its neighbour, kept within monotone bounds. */
function endSlope(secant: number, neighbour: number | undefined): number {
  const carried = neighbour === undefined ? secant : 1.5 * secant - 0.5 * neighbour;
  if (carried * secant <= 0) return 0;
  return Math.abs(carried) > 3 * Math.abs(secant) ? 3 * secant : carried;
}
