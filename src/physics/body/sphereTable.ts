import { cubicTable } from '../numerics/cubicTable';

/**
 * Drag coefficient of a smooth sphere on its frontal area pi d^2 / 4, against the Reynolds number on the diameter:
 * [Re, low, best, high].
 *
 * Best: the middle of the published curves (Almedeij 2008; Clift, Grace and Weber 1978; Morrison 2013; Cheng 2009; Clift
 * and Gauvin 1971; those without a crisis to Re 2e5 only). Low and high: half of the range of the sources at about the
 * same Reynolds number beyond it (with Roos and Willmarth 1971, Morsi and Alexander 1972, Achenbach 1972 and the
 * handbooks). Those who measured lie over the fits: Roos and Willmarth's 27 runs between Re 5e3 and 3e4 from 5 % under to
 * 20 % over, 11 % over in the mean, Achenbach's 4 to 9 % over from 4.4e4 to 1e5. At Re 1 the low edge is Stokes' 24 / Re,
 * under which no drag can lie (least dissipation); behind the crisis it goes no lower than 0.07, the lowest of them.
 *
 * Air over a deck is turbulent: from Re 5e4 to 4e5 the low edge is the published one at twice the Reynolds number. A
 * stated assumption, no source. Source: sphere-curves, roos-willmarth-1971, achenbach-1972.
 */
export const sphereNodes: readonly (readonly [reynolds: number, low: number, best: number, high: number])[] =
  [
    [1, 24, 26.7, 30.5],
    [2, 12.6, 14.7, 16.9],
    [3, 8.95, 10.4, 11.95],
    [1e1, 3.66, 4.25, 4.88],
    [3e1, 1.81, 2.1, 2.41],
    [1e2, 0.925, 1.07, 1.17],
    [2e2, 0.665, 0.77, 0.84],
    [5e2, 0.48, 0.555, 0.605],
    [1e3, 0.425, 0.465, 0.5],
    [2e3, 0.39, 0.42, 0.455],
    [5e3, 0.338, 0.402, 0.525],
    [1e4, 0.345, 0.412, 0.54],
    [2e4, 0.366, 0.437, 0.57],
    [5e4, 0.4, 0.464, 0.53],
    [1e5, 0.36, 0.475, 0.545],
    [1.5e5, 0.17, 0.475, 0.545],
    [2e5, 0.085, 0.44, 0.508],
    [2.5e5, 0.07, 0.36, 0.495],
    [3e5, 0.07, 0.26, 0.485],
    [3.5e5, 0.07, 0.17, 0.42],
    [4e5, 0.07, 0.11, 0.26],
    [5e5, 0.07, 0.088, 0.15],
    [7e5, 0.07, 0.112, 0.2],
    [1e6, 0.075, 0.14, 0.26],
    [2e6, 0.12, 0.18, 0.27],
    [5e6, 0.15, 0.19, 0.27],
    [1e7, 0.15, 0.19, 0.27],
  ];

export const sphereTable = cubicTable(
  sphereNodes.map(([reynolds]) => Math.log10(reynolds)),
  sphereNodes.map(([, low, best, high]) => [low, best, high]),
);

/** Column numbers of `sphereTable`. */
export const sphereColumn = { low: 0, best: 1, high: 2 } as const;

/** Reynolds numbers the table covers. */
export const sphereReynoldsRange = { from: 1, to: 1e7 } as const;
