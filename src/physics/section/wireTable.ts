import { cubicTable, type CubicTable } from '../numerics/cubicTable';

/**
 * Constructions of a wire or rope beside the smooth rod. By the diameter of an outer strand over that of the whole:
 * 1 x 19 about 0.2, 7 x 19 about 0.33; a braid has many small yarns.
 */
export type LaidConstruction = 'spiralStrand' | 'strandedWire' | 'braidedRope';

type WireNode = readonly [reynolds: number, low: number, best: number, high: number];

/** Outer strand over whole diameter of the two wires, the middle of what is laid so. */
export const outerStrandRatio = { spiralStrand: 0.2, strandedWire: 1 / 3 } as const;

/**
 * Stranded cable at Re about 1e4 on diameter x length, [outer strand over cable diameter, drag coefficient]; straight
 * lines between. Source: hoerner-cables.
 */
export const strandedCableNodes: readonly (readonly [strandRatio: number, coefficient: number])[] = [
  [0, 1.19],
  [0.7 / 3.3, 1.14],
  [1.3 / 3.7, 1.04],
];

/**
 * Below Re 1e3 the strands lie inside the boundary layer and every construction is a smooth wire, with edges
 * no nearer than the smooth bar's. Source: round-bar-table.
 */
const asSmoothWire: readonly WireNode[] = [
  [1, 8.95, 11.9, 13.4],
  [3, 4.31, 5.73, 6.5],
  [1e1, 2.32, 2.87, 3.25],
  [3e1, 1.51, 1.8, 2.1],
  [1e2, 1.24, 1.4, 1.53],
  [2e2, 1.1, 1.27, 1.42],
  [5e2, 0.94, 1.1, 1.29],
];

/**
 * Drag coefficient on diameter x length against the Reynolds number on the diameter: [Re, low, best, high].
 *
 * Best: the smooth wire's curve to Re 1e3 with its dip at 2e3; at 1e4 the stranded cable's value for the construction;
 * then slowly to 1.0 at Re 1e6, with no deep crisis (hoerner-cables). The braid: the middle of the usual design values
 * (rope-design-values), nothing measured. Few sources: the edges take in both, the lower values of the wind codes behind
 * a crisis of their own (0.9) included, and stand at least 15 % off; to Re 5e3, where nobody measured strands, they are no
 * nearer than the smooth bar's, nor in parts of the best value. From Re 1e6 the values are held: nobody measured there.
 */
export const wireNodes: Readonly<Record<LaidConstruction, readonly WireNode[]>> = {
  spiralStrand: [
    ...asSmoothWire,
    [1e3, 0.855, 1.0, 1.21],
    [2e3, 0.8, 0.96, 1.19],
    [5e3, 0.845, 1.06, 1.22],
    [1e4, 0.95, 1.143, 1.28],
    [3e4, 0.9, 1.11, 1.25],
    [1e5, 0.85, 1.06, 1.22],
    [3e5, 0.84, 1.02, 1.18],
    [1e6, 0.84, 1.0, 1.16],
    [1e7, 0.84, 1.0, 1.16],
  ],
  strandedWire: [
    ...asSmoothWire,
    [1e3, 0.84, 0.99, 1.2],
    [2e3, 0.8, 0.95, 1.18],
    [5e3, 0.845, 1.0, 1.2],
    [1e4, 0.89, 1.053, 1.28],
    [3e4, 0.87, 1.04, 1.28],
    [1e5, 0.86, 1.02, 1.25],
    [3e5, 0.85, 1.01, 1.2],
    [1e6, 0.85, 1.0, 1.16],
    [1e7, 0.85, 1.0, 1.16],
  ],
  braidedRope: [
    ...asSmoothWire,
    [1e3, 0.82, 1.0, 1.2],
    [2e3, 0.79, 0.97, 1.17],
    [5e3, 0.845, 1.07, 1.28],
    [1e4, 0.93, 1.16, 1.38],
    [3e4, 0.94, 1.18, 1.4],
    [1e5, 0.9, 1.12, 1.34],
    [3e5, 0.85, 1.05, 1.26],
    [1e6, 0.8, 1.0, 1.2],
    [1e7, 0.8, 1.0, 1.2],
  ],
};

function tableOf(nodes: readonly WireNode[]): CubicTable {
  return cubicTable(
    nodes.map(([reynolds]) => Math.log10(reynolds)),
    nodes.map(([, low, best, high]) => [low, best, high]),
  );
}

export const wireTables: Readonly<Record<LaidConstruction, CubicTable>> = {
  spiralStrand: tableOf(wireNodes.spiralStrand),
  strandedWire: tableOf(wireNodes.strandedWire),
  braidedRope: tableOf(wireNodes.braidedRope),
};

/** Column numbers of `wireTables`. */
export const wireColumn = { low: 0, best: 1, high: 2 } as const;

/** Reynolds numbers at which wires and ropes were measured or are designed for; outside, the curve is held or borrowed. */
export const wireReynoldsRange = { from: 1e3, to: 1e6 } as const;
