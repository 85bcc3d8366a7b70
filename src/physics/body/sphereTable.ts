import { cubicTable } from '../numerics/cubicTable';

/**
 * Drag coefficient of a smooth sphere on its frontal area pi d^2 / 4, against the Reynolds number on the diameter:
 * [Re, low, best, high].
 *
 * Best: the middle of the published curves (Almedeij 2008; Clift, Grace and Weber 1978; Morrison 2013; Cheng 2009; Clift
 * and Gauvin 1971; those without a crisis to Re 2e5 only). Low and high: their edges, with Achenbach 1972 (0.07 at the
 * bottom of the crisis) and the handbooks.
 *
 * Air over a deck is turbulent: from Re 5e4 to 4e5 the low edge is the published one at twice the Reynolds number. A
 * stated assumption, no source. Source: sphere-curves, achenbach-1972.
 */
export const sphereNodes: readonly (readonly [reynolds: number, low: number, best: number, high: number])[] =
  [
    [1, 24, 26.7, 28.7],
    [3, 9.2, 10.4, 11.2],
    [1e1, 3.95, 4.25, 4.5],
    [3e1, 1.98, 2.1, 2.2],
    [1e2, 0.98, 1.07, 1.12],
    [2e2, 0.71, 0.77, 0.82],
    [5e2, 0.515, 0.555, 0.585],
    [1e3, 0.435, 0.465, 0.49],
    [2e3, 0.4, 0.42, 0.44],
    [5e3, 0.38, 0.402, 0.425],
    [1e4, 0.385, 0.412, 0.44],
    [2e4, 0.39, 0.437, 0.465],
    [5e4, 0.4, 0.464, 0.5],
    [1e5, 0.36, 0.475, 0.51],
    [1.5e5, 0.17, 0.475, 0.51],
    [2e5, 0.085, 0.44, 0.5],
    [2.5e5, 0.07, 0.36, 0.495],
    [3e5, 0.07, 0.26, 0.485],
    [3.5e5, 0.07, 0.17, 0.42],
    [4e5, 0.07, 0.11, 0.26],
    [5e5, 0.07, 0.088, 0.14],
    [7e5, 0.08, 0.112, 0.16],
    [1e6, 0.095, 0.14, 0.22],
    [2e6, 0.13, 0.18, 0.25],
    [5e6, 0.16, 0.19, 0.25],
    [1e7, 0.16, 0.19, 0.25],
  ];

export const sphereTable = cubicTable(
  sphereNodes.map(([reynolds]) => Math.log10(reynolds)),
  sphereNodes.map(([, low, best, high]) => [low, best, high]),
);

/** Column numbers of `sphereTable`. */
export const sphereColumn = { low: 0, best: 1, high: 2 } as const;

/** Reynolds numbers the table covers. */
export const sphereReynoldsRange = { from: 1, to: 1e7 } as const;
