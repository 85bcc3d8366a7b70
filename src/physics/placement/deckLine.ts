import { cubicTable, valueAt, type CubicTable } from '../numerics/cubicTable';

/** One station of the deck line: how high the deck edge is above the waterplane and how far out. */
export interface DeckStation {
  readonly aftOfStemM: number;
  readonly freeboardM: number;
  readonly halfBeamM: number;
}

/** The deck edge as a smooth line through three or more stations, upright. */
export interface DeckLine {
  /** Where the stem is in the boat's frame: half the length forward of amidships. */
  readonly stemXM: number;
  readonly stations: readonly DeckStation[];
  readonly table: CubicTable;
}

const column = { freeboard: 0, halfBeam: 1 } as const;

/** @param stations three or more, in rising distance from the stem. */
export function deckLine(lengthM: number, stations: readonly DeckStation[]): DeckLine {
  return {
    stemXM: lengthM / 2,
    stations,
    table: cubicTable(
      stations.map(({ aftOfStemM }) => aftOfStemM),
      stations.map(({ freeboardM, halfBeamM }) => [freeboardM, halfBeamM]),
      'sloping',
    ),
  };
}

/** Height of the deck edge above the waterplane, m; held beyond the first and last station. */
export function freeboardAt(line: DeckLine, aftOfStemM: number): number {
  return valueAt(line.table, column.freeboard, aftOfStemM);
}

/** Half the beam at the deck edge, m; held beyond the first and last station. */
export function halfBeamAt(line: DeckLine, aftOfStemM: number): number {
  return valueAt(line.table, column.halfBeam, aftOfStemM);
}
