import { cubicTable, valueAt } from '../numerics/cubicTable';
import { smoothStep } from '../numerics/smoothStep';
import type { Ranged } from '../fitting/fittingInput';
import type { Quantity } from '../quantity';

/**
 * Square onto the wind, coefficient on the SOLID area (gross area x solidity) against solidity, wires above Re 400:
 * [solidity, low, best, high]. At solidity 0 single wires, at 1 a plate of moderate aspect ratio.
 *
 * Best: the middle of the published curves. Richards and Robinson 1999: the plate's force times the solidity. G. I.
 * Taylor 1944: K / (1 + K/4)^2 on the gross area with the loss K of woven wire, 0.52 (1 - b^2) / b^2, b = 1 - s. Blevins
 * 1984: K of open nets, 0.95 s + 0.2 s^2 (bars), 0.67 s + 1.3 s^2 (diamonds), 0.72 s + 2.1 s^2 (knotless), 0.70 s +
 * 4.9 s^2 (knotted), s to 0.15. Loland 1991 and Aarsnes 1990, net panels in water, s 0.13 to 0.32. Low and high: half
 * of the range of the curves at about the same solidity beyond it (at 0.3 from 1.2 to 1.86); from s 0.5, where two speak
 * that differ by 30 %, and for the plate, 15 to 30 % to each side. Below s 0.3 the low edge is drawn by choice: at 0.1 the
 * rule's 0.62 would lie 22 % under a single wire, for the one formula of diamonds (0.80 there), and at 0.2 its 1.08 would
 * leap over both neighbours. Knots lie above the high edge.
 * Source: porous-structures, taylor-screens, blevins-screens, loland-nets.
 */
export const netNodes: readonly (readonly [solidity: number, low: number, best: number, high: number])[] = [
  [0, 0.8, 1.0, 1.2],
  [0.1, 0.78, 1.03, 1.29],
  [0.2, 0.87, 1.18, 1.66],
  [0.3, 0.87, 1.37, 2.19],
  [0.5, 0.99, 1.42, 1.83],
  [0.7, 0.93, 1.33, 1.71],
  [1, 1, 1.18, 1.36],
];

const netTable = cubicTable(
  netNodes.map(([solidity]) => solidity),
  netNodes.map(([, low, best, high]) => [low, best, high]),
);
const netColumn = { low: 0, best: 1, high: 2 } as const;

/** Loss of a screen of round wires, K = f (1 - b^2) / b^2: [wire Re, f], held outside. Source: blevins-screens. */
const screenLossNodes: readonly (readonly [wireReynolds: number, factor: number])[] = [
  [20, 1.3],
  [30, 1.1],
  [40, 0.95],
  [60, 0.83],
  [80, 0.75],
  [100, 0.7],
  [200, 0.6],
  [400, 0.52],
];
const fastLossFactor = 0.52;
const lossTable = cubicTable(
  screenLossNodes.map(([reynolds]) => Math.log10(reynolds)),
  screenLossNodes.map(([, factor]) => [factor]),
);

/**
 * Wind along the net, coefficient on the GROSS area: 0.04 in both published net formulas, 0.06 to 0.07 for guards of
 * wire or plastic (calculated). From half to twice the formulas (assumed). Fading to nothing from solidity 0.13 down, where
 * the formulas begin. Source: loland-nets, tg20-netting.
 */
const alongNet: Ranged = { best: 0.04, low: 0.02, high: 0.08 };
const alongFullSolidity = 0.13;

/** Solidities over which nets were measured; outside it the same curve, between single wires and a plate. */
export const netSolidityRange = { from: 0.1, to: 0.5 } as const;

/** Loss coefficient of a screen of round wires on the speed before it. Infinite at solidity 1. Source: blevins-screens. */
export function screenLoss(solidity: number, wireReynolds: number): number {
  const open = (1 - solidity) * (1 - solidity);
  const logReynolds = Math.log10(Math.max(wireReynolds, 1e-3));
  return (valueAt(lossTable, 0, logReynolds) * (1 - open)) / open;
}

/**
 * How much more a net of thin, slow wires catches than the same net above Re 400: the ratio of the effective solidities
 * 1 - 1 / sqrt(1 + K / 0.52), which for fast wires is the solidity itself. Source: porous-structures.
 */
export function slowWireFactor(solidity: number, wireReynolds: number): number {
  if (solidity < 1e-6) return screenLoss(1e-6, wireReynolds) / screenLoss(1e-6, Infinity);
  return (1 - 1 / Math.sqrt(1 + screenLoss(solidity, wireReynolds) / fastLossFactor)) / solidity;
}

/** Solidity of a square mesh without knots: 2 d/m - (d/m)^2, d the twine, m from middle to middle. */
export function meshSolidity(wireDiameterM: number, meshM: number): number {
  const share = Math.min(wireDiameterM / meshM, 1);
  return share * (2 - share);
}

/** A flat net: gross area, solidity (0 to 1), diameter of its wires or twine. */
export interface NetPanel {
  readonly areaM2: number;
  readonly solidity: number;
  readonly wireDiameterM: number;
}

/** Coefficients on the gross area and drag areas of a net: onto its face and along it (both directions in its plane). */
export interface NetTrace {
  readonly grossAreaM2: number;
  readonly solidity: number;
  readonly wireReynolds: number;
  readonly slowWireFactor: number;
  readonly normalCoefficientBest: number;
  readonly normalCoefficientLow: number;
  readonly normalCoefficientHigh: number;
  readonly normalAreaBestM2: number;
  readonly normalAreaLowM2: number;
  readonly normalAreaHighM2: number;
  readonly alongAreaBestM2: number;
  readonly alongAreaLowM2: number;
  readonly alongAreaHighM2: number;
}

/**
 * Drag areas of a net by solidity, for a body by three axes: F_i = q (CdA)_i |u| u_i with i the net's normal and the two
 * directions in its plane. A net that fills, drips or ices over has another solidity.
 * Example: 1 m2, solidity 0.2, wires of 1 mm in 10 m/s (Re 685): 0.236 m2 onto the face, 0.04 m2 along it.
 * Range: solidity 0.1 to 0.5. Source: porous-structures, taylor-screens, blevins-screens, loland-nets.
 * @returns null where the solidity is not between 0 and 1, or another input is not a positive number.
 */
export function netDragAreas(
  panel: NetPanel,
  windSpeedMs: number,
  kinematicViscosityM2S: number,
): NetTrace | null {
  const { areaM2, solidity, wireDiameterM } = panel;
  const isValid =
    solidity >= 0 &&
    solidity <= 1 &&
    areaM2 > 0 &&
    wireDiameterM > 0 &&
    windSpeedMs >= 0 &&
    kinematicViscosityM2S > 0;
  if (!isValid) return null;
  const wireReynolds = (windSpeedMs * wireDiameterM) / kinematicViscosityM2S;
  const slow = slowWireFactor(solidity, wireReynolds);
  const normal = (column: number): number => slow * solidity * valueAt(netTable, column, solidity);
  const along = smoothStep(0, alongFullSolidity, solidity);
  const [low, best, high] = [normal(netColumn.low), normal(netColumn.best), normal(netColumn.high)];
  return {
    grossAreaM2: areaM2,
    solidity,
    wireReynolds,
    slowWireFactor: slow,
    normalCoefficientBest: best,
    normalCoefficientLow: low,
    normalCoefficientHigh: high,
    normalAreaBestM2: areaM2 * best,
    normalAreaLowM2: areaM2 * low,
    normalAreaHighM2: areaM2 * high,
    alongAreaBestM2: areaM2 * along * alongNet.best,
    alongAreaLowM2: areaM2 * along * alongNet.low,
    alongAreaHighM2: areaM2 * along * alongNet.high,
  };
}

export const netQuantities = {
  grossAreaM2: { symbol: 'A', label: 'gross area of the net', unit: 'm2' },
  solidity: { symbol: 's', label: 'solidity: solid over gross area', unit: '1' },
  wireReynolds: { symbol: 'Re_d', label: 'Reynolds number of the wires', unit: '1', equation: 'W d / nu' },
  slowWireFactor: {
    symbol: 'k_Re',
    label: 'factor of slow wires',
    unit: '1',
    equation: '(1 - 1 / sqrt(1 + K / 0.52)) / s, K = f(Re_d) (1 - (1 - s)^2) / (1 - s)^2',
    source: 'blevins-screens',
  },
  normalCoefficientBest: {
    symbol: 'C_n',
    label: 'coefficient onto the face, on the gross area',
    unit: '1',
    equation: 'k_Re s C_s(s)',
    source: 'porous-structures',
  },
  normalCoefficientLow: { symbol: 'C_n,low', label: 'coefficient onto the face, low', unit: '1' },
  normalCoefficientHigh: { symbol: 'C_n,high', label: 'coefficient onto the face, high', unit: '1' },
  normalAreaBestM2: { symbol: 'CdA_n', label: 'drag area onto the face', unit: 'm2', equation: 'C_n A' },
  normalAreaLowM2: { symbol: 'CdA_n,low', label: 'drag area onto the face, low', unit: 'm2' },
  normalAreaHighM2: { symbol: 'CdA_n,high', label: 'drag area onto the face, high', unit: 'm2' },
  alongAreaBestM2: {
    symbol: 'CdA_t',
    label: 'drag area along the net',
    unit: 'm2',
    equation: '0.04 A, less below s 0.13',
    source: 'loland-nets',
  },
  alongAreaLowM2: { symbol: 'CdA_t,low', label: 'drag area along the net, low', unit: 'm2' },
  alongAreaHighM2: { symbol: 'CdA_t,high', label: 'drag area along the net, high', unit: 'm2' },
} as const satisfies Record<keyof NetTrace, Quantity>;
