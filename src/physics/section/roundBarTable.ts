import { cubicTable } from '../numerics/cubicTable';

/**
 * Drag coefficient of a smooth round bar across the flow, on diameter x length, against log10 of the Reynolds number:
 * [Re, low, best, high].
 *
 * Best: the middle of the published curves at that Reynolds number; below 1e2 Cheng's formula. Low and high: the edges
 * of the published curves (NACA TN 84 after Wieselsberger 1921; Roshko 1961; DNV-RP-C205 2025-04; Achenbach 1968;
 * Schewe 1983; Achenbach and Heinecke 1981; Jorgensen, NASA TN D-6996; Delany and Sorensen, NACA TN 3038; Cheng 2013;
 * Sucker and Brauer 1975), all read second-hand.
 *
 * Air over a deck is turbulent. From Re 5e4 to 4e5 the low edge therefore takes the published low edge at twice the
 * Reynolds number: the crisis may come a factor of two earlier. A stated assumption, no source.
 */
export const roundBarNodes: readonly (readonly [
  reynolds: number,
  low: number,
  best: number,
  high: number,
])[] = [
  [1, 10.4, 11.9, 13.4],
  [3, 5.0, 5.73, 6.5],
  [1e1, 2.55, 2.87, 3.25],
  [3e1, 1.68, 1.8, 2.1],
  [1e2, 1.26, 1.4, 1.5],
  [2e2, 1.13, 1.27, 1.38],
  [5e2, 0.99, 1.1, 1.22],
  [1e3, 0.9, 0.99, 1.13],
  [2e3, 0.86, 0.93, 1.11],
  [5e3, 0.9, 0.98, 1.12],
  [1e4, 1.01, 1.1, 1.21],
  [2e4, 1.05, 1.17, 1.24],
  [5e4, 1.05, 1.2, 1.25],
  [7.5e4, 1.02, 1.2, 1.25],
  [1e5, 0.86, 1.2, 1.25],
  [1.25e5, 0.58, 1.195, 1.25],
  [1.5e5, 0.44, 1.18, 1.24],
  [2e5, 0.22, 1.11, 1.22],
  [2.5e5, 0.2, 0.98, 1.19],
  [3e5, 0.2, 0.76, 1.1],
  [3.5e5, 0.2, 0.58, 0.94],
  [4e5, 0.2, 0.46, 0.76],
  [5e5, 0.2, 0.33, 0.52],
  [7e5, 0.2, 0.33, 0.58],
  [1e6, 0.22, 0.38, 0.64],
  [2e6, 0.35, 0.5, 0.7],
  [3.5e6, 0.47, 0.62, 0.71],
  [5e6, 0.51, 0.66, 0.72],
  [1e7, 0.51, 0.67, 0.72],
];

export const roundBarTable = cubicTable(
  roundBarNodes.map(([reynolds]) => Math.log10(reynolds)),
  roundBarNodes.map(([, low, best, high]) => [low, best, high]),
);

/** Column numbers of `roundBarTable`. */
export const roundBarColumn = { low: 0, best: 1, high: 2 } as const;

/** Reynolds numbers the table covers. */
export const roundBarReynoldsRange = { from: 1, to: 1e7 } as const;
