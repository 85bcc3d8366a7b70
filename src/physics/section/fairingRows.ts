import { cubicTable, pieceAt, valueAt, valueOnPiece, type CubicTable } from '../numerics/cubicTable';
import {
  fairingDragFrom30,
  fairingRange,
  fairingTable,
  type FairingRow,
  type FairingSectionTable,
} from './fairingTable';

/** Rows carry one value per degree of incidence, 0 to 180. */
const rowLength = 181;
/** Values per degree up to here come from the section's own row, beyond it from the curves that all rows share. */
const sharedFromDeg = 30;
/** Cumulated lift is needed from the nose or from the tail to square to the wind. */
const loadingLength = 91;

/** The lift left after the stall is held at this share of a plate's in separated flow (assumed). */
const leastSeparatedLiftShare = 0.5;
/** Normal coefficient square to the wind, from which the separated plate's lift is taken: 1.8 sin a cos a. */
const separatedNormal = 1.8;

/** Where the drag has come half way to the separated curve, the section counts as stalled. */
const stalledShare = 0.5;

const logReynoldsNodes = Float64Array.from(fairingTable[0]!.rows.map(({ reynolds }) => Math.log(reynolds)));
const rowCount = logReynoldsNodes.length;

/** The table at one thickness ratio: a row per Reynolds number of the table, one value per degree in each. */
export interface FairingRows {
  /** Drag and lift on chord x length: value at [row * 181 + degree]. */
  readonly drag: Float64Array;
  readonly lift: Float64Array;
  /**
   * Sum of all rises of lift from the nose, 0 to 90 deg, at [row * 91 + degree]: equal to lift up to its first peak, and
   * never falling. `tailLoading` is the same from the tail, counted from 180 deg, one row for all Reynolds numbers.
   */
  readonly noseLoading: Float64Array;
  readonly tailLoading: Float64Array;
  /** Incidence of the stall in degrees, by row. */
  readonly stallDeg: Float64Array;
}

/** Which two rows a Reynolds number lies between, and how far. */
export interface RowPlace {
  row: number;
  share: number;
}

/** Straight lines against ln Re between rows; the nearest row outside. */
export function placeRow(reynolds: number, out: RowPlace): RowPlace {
  const logReynolds = Math.log(Math.max(reynolds, 1));
  let row = 0;
  while (row < rowCount - 2 && logReynoldsNodes[row + 1]! <= logReynolds) row += 1;
  const from = logReynoldsNodes[row]!;
  const share = (logReynolds - from) / (logReynoldsNodes[row + 1]! - from);
  out.row = row;
  out.share = Math.min(Math.max(share, 0), 1);
  return out;
}

/** Straight lines against incidence and ln Re. */
export function rowValue(rows: Float64Array, place: RowPlace, degrees: number): number {
  const at = Math.min(Math.max(Math.floor(degrees), 0), rowLength - 2);
  const within = degrees - at;
  const first = place.row * rowLength + at;
  const second = first + rowLength;
  const lower = rows[first]! + within * (rows[first + 1]! - rows[first]!);
  const upper = rows[second]! + within * (rows[second + 1]! - rows[second]!);
  return lower + place.share * (upper - lower);
}

/** Cumulated lift from the nose at a whole degree, for the induced angle. */
export function noseLoadingAt(rows: FairingRows, place: RowPlace, degree: number): number {
  const first = place.row * loadingLength + degree;
  const lower = rows.noseLoading[first]!;
  return lower + place.share * (rows.noseLoading[first + loadingLength]! - lower);
}

export function stallDegAt(rows: FairingRows, place: RowPlace): number {
  const lower = rows.stallDeg[place.row]!;
  return lower + place.share * (rows.stallDeg[place.row + 1]! - lower);
}

/** Value at `x` on straight lines through pairs of (x, value). */
function onPairs(pairs: readonly number[], x: number): number {
  let i = 0;
  while (i < pairs.length - 4 && pairs[i + 2]! <= x) i += 2;
  const from = pairs[i]!;
  return pairs[i + 1]! + ((x - from) / (pairs[i + 2]! - from)) * (pairs[i + 3]! - pairs[i + 1]!);
}

/** Lift of one printed row; what is left after the stall is held at half a separated plate's, where the table falls to nothing or below. */
export function sectionLiftAt(row: FairingRow, degree: number): number {
  const angle = (degree * Math.PI) / 180;
  const least = leastSeparatedLiftShare * separatedNormal * Math.sin(angle) * Math.cos(angle);
  return Math.max(onPairs(row.lift, degree), least);
}

/** Drag of one printed row: its own nodes, then the separated curve of its section. */
export function sectionDragAt(section: FairingSectionTable, row: FairingRow, degree: number): number {
  const joined = row.drag[row.drag.length - 2]!;
  return degree <= joined ? onPairs(row.drag, degree) : onPairs(section.separatedDrag, degree);
}

/** Incidence at which the drag of a row has come half way to the separated curve. */
function sectionStallDeg(section: FairingSectionTable, row: FairingRow): number {
  let before = 0;
  for (let degree = 7; degree <= sharedFromDeg; degree += 1) {
    const separated = onPairs(section.separatedDrag, degree);
    const here = sectionDragAt(section, row, degree) - stalledShare * separated;
    if (here >= 0) return degree - here / (here - before);
    before = here;
  }
  return sharedFromDeg;
}

interface ThicknessTables {
  /** Columns: drag of each row at each degree to 30, then lift likewise, then the stall of each row. */
  readonly byThickness: CubicTable;
  /** Lift beyond 30 deg: columns of 0012 and of the thicker sections, against degrees. */
  readonly liftOf0012: Float64Array;
  readonly liftOfThicker: Float64Array;
  readonly dragFrom30: Float64Array;
}

let tables: ThicknessTables | null = null;

/** Built at first use: the columns against thickness are the same for every fairing. */
function thicknessTables(): ThicknessTables {
  tables ??= {
    byThickness: cubicTable(
      fairingTable.map(({ thicknessRatio }) => thicknessRatio),
      fairingTable.map(columnsOf),
      'sloping',
    ),
    liftOf0012: perDegree(fairingTable[0]!.liftFrom30),
    liftOfThicker: perDegree(fairingTable[1]!.liftFrom30),
    dragFrom30: perDegree(fairingDragFrom30),
  };
  return tables;
}

function columnsOf(section: FairingSectionTable): number[] {
  const degrees = Array.from({ length: sharedFromDeg + 1 }, (_, degree) => degree);
  return [
    ...section.rows.flatMap((row) => degrees.map((degree) => sectionDragAt(section, row, degree))),
    ...section.rows.flatMap((row) => degrees.map((degree) => sectionLiftAt(row, degree))),
    ...section.rows.map((row) => sectionStallDeg(section, row)),
  ];
}

/** Every degree from 30 to 180 of a column printed every 5 deg. */
function perDegree(from30: readonly number[]): Float64Array {
  const curve = cubicTable(
    from30.map((_, i) => sharedFromDeg + 5 * i),
    from30.map((value) => [value]),
    'sloping',
  );
  return Float64Array.from({ length: rowLength - sharedFromDeg }, (_, i) =>
    valueAt(curve, 0, sharedFromDeg + i),
  );
}

const keptRows = new Map<number, FairingRows>();
const mostKept = 32;

/** The table at a thickness ratio, monotone cubic between the five sections, the nearest outside; kept, as doubts come back to it. */
export function fairingRowsAt(thicknessRatio: number): FairingRows {
  const { thicknessFrom, thicknessTo } = fairingRange;
  const nearest = Math.min(Math.max(thicknessRatio, thicknessFrom), thicknessTo);
  const known = keptRows.get(nearest);
  if (known !== undefined) return known;
  if (keptRows.size >= mostKept) keptRows.clear();
  const rows = buildRows(nearest);
  keptRows.set(nearest, rows);
  return rows;
}

function buildRows(thicknessRatio: number): FairingRows {
  const { byThickness, liftOf0012, liftOfThicker, dragFrom30 } = thicknessTables();
  const piece = pieceAt(byThickness, thicknessRatio);
  const column = (index: number): number => valueOnPiece(byThickness, index, piece, thicknessRatio);
  const thickerShare = Math.min((thicknessRatio - 0.12) / 0.03, 1);
  const drag = new Float64Array(rowCount * rowLength);
  const lift = new Float64Array(rowCount * rowLength);
  const ownLength = sharedFromDeg + 1;
  for (let row = 0; row < rowCount; row += 1) {
    const at = row * rowLength;
    for (let degree = 0; degree < ownLength; degree += 1) {
      drag[at + degree] = column(row * ownLength + degree);
      lift[at + degree] = column((rowCount + row) * ownLength + degree);
    }
    for (let degree = ownLength; degree < rowLength; degree += 1) {
      const i = degree - sharedFromDeg;
      drag[at + degree] = dragFrom30[i]!;
      lift[at + degree] = liftOf0012[i]! + thickerShare * (liftOfThicker[i]! - liftOf0012[i]!);
    }
  }
  return {
    drag,
    lift,
    noseLoading: noseLoadingOf(lift),
    tailLoading: tailLoadingOf(lift),
    stallDeg: Float64Array.from({ length: rowCount }, (_, row) => column(2 * rowCount * ownLength + row)),
  };
}

function noseLoadingOf(lift: Float64Array): Float64Array {
  const loading = new Float64Array(rowCount * loadingLength);
  for (let row = 0; row < rowCount; row += 1) {
    for (let degree = 1; degree < loadingLength; degree += 1) {
      const rise = lift[row * rowLength + degree]! - lift[row * rowLength + degree - 1]!;
      loading[row * loadingLength + degree] = loading[row * loadingLength + degree - 1]! + Math.max(rise, 0);
    }
  }
  return loading;
}

function tailLoadingOf(lift: Float64Array): Float64Array {
  const loading = new Float64Array(loadingLength);
  for (let degree = 1; degree < loadingLength; degree += 1) {
    const rise = lift[rowLength - degree]! - lift[rowLength - 1 - degree]!;
    loading[degree] = loading[degree - 1]! + Math.max(rise, 0);
  }
  return loading;
}
