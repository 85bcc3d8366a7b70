import { cubicTable } from '../numerics/cubicTable';

/**
 * Drag coefficient of a smooth round bar across the flow, on diameter x length, against log10 of the Reynolds number:
 * [Re, low, best, high].
 *
 * Best: the middle of the published curves at that Reynolds number; below 1e2 Cheng's formula. Low and high: half of the
 * range of the sources at about the same Reynolds number beyond it, at least 15 % to each side where fewer than three
 * speak (NACA TN 84 and 121 after Wieselsberger 1921, 1922; Roshko 1961; Achenbach 1968; Schewe 1983; Achenbach and
 * Heinecke 1981; Jorgensen, NASA TN D-6996; Delany and Sorensen, NACA TN 3038; Cheng 2013; Sucker and Brauer 1975; White's
 * short fit from memory; handbooks), all read second-hand. In and behind the crisis the low edge goes no lower than 0.20,
 * under the lowest of them (0.22), and near Re 1e6, where tunnels differ by a factor of three, the high edge stops at what
 * EN asks of a bar of roughness 1e-4 (0.66). Both by choice: half of that range further would be 0.015, little more than
 * friction, and 0.835, EN's bar of roughness 1e-3.
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
  [1, 8.95, 11.9, 13.4],
  [3, 4.31, 5.73, 6.5],
  [1e1, 2.32, 2.87, 3.25],
  [3e1, 1.51, 1.8, 2.1],
  [1e2, 1.26, 1.4, 1.53],
  [2e2, 1.13, 1.27, 1.39],
  [5e2, 0.95, 1.1, 1.29],
  [1e3, 0.855, 0.99, 1.2],
  [2e3, 0.8, 0.93, 1.15],
  [5e3, 0.845, 0.98, 1.18],
  [1e4, 0.907, 1.1, 1.285],
  [2e4, 0.92, 1.17, 1.31],
  [5e4, 0.905, 1.2, 1.32],
  [7.5e4, 0.9, 1.2, 1.32],
  [1e5, 0.86, 1.2, 1.31],
  [1.25e5, 0.58, 1.195, 1.3],
  [1.5e5, 0.44, 1.18, 1.28],
  [2e5, 0.22, 1.11, 1.25],
  [2.5e5, 0.2, 0.98, 1.22],
  [3e5, 0.2, 0.76, 1.12],
  [3.5e5, 0.2, 0.58, 0.94],
  [4e5, 0.2, 0.46, 0.76],
  [5e5, 0.2, 0.33, 0.52],
  [7e5, 0.2, 0.33, 0.58],
  [1e6, 0.2, 0.38, 0.66],
  [2e6, 0.32, 0.5, 0.72],
  [3.5e6, 0.4, 0.62, 0.8],
  [5e6, 0.42, 0.66, 0.85],
  [1e7, 0.43, 0.67, 0.86],
];

export const roundBarTable = cubicTable(
  roundBarNodes.map(([reynolds]) => Math.log10(reynolds)),
  roundBarNodes.map(([, low, best, high]) => [low, best, high]),
);

/** Column numbers of `roundBarTable`. */
export const roundBarColumn = { low: 0, best: 1, high: 2 } as const;

/** Reynolds numbers the table covers. */
export const roundBarReynoldsRange = { from: 1, to: 1e7 } as const;
