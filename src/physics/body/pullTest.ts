import type { Quantity } from '../quantity';
import { studentQuantile95 } from './pullTestStudent';

/** What was read in a pull test: the item hangs in the wind on a force meter. */
export interface PullTest {
  /** Readings of the force meter, N, with the item in the wind. */
  readonly forcesN: readonly number[];
  /** What the meter shows with the item sheltered, N. */
  readonly tareN: number;
  /** Angle between the pull and the wind, rad: only the part along the wind is drag. */
  readonly pullAngleRad: number;
  /** Wind at the item's own height, m/s, and its 90 % half-width as a fraction. */
  readonly windSpeedMs: number;
  readonly windSpeedDoubt: number;
  readonly densityKgM3: number;
  /** 90 % half-width of the force meter, N. */
  readonly forceMeterDoubtN: number;
}

export type PullTestProblem =
  | 'no-reading'
  | 'not-a-number'
  | 'wind-not-positive'
  | 'density-not-positive'
  | 'pull-across-the-wind'
  | 'doubt-out-of-range'
  | 'force-not-above-tare';

/** `scatter-not-known`: one reading says nothing about scatter. `low-held-at-zero`: the doubt is as large as the force. */
export type PullTestNotice = 'scatter-not-known' | 'low-held-at-zero';

/** The working of a pull test; null where one reading leaves it unknown. Doubts are 90 %, as fractions of the drag area. */
export interface PullTestTrace {
  readonly readingCount: number;
  readonly meanForceN: number;
  readonly tareN: number;
  readonly pullAngleRad: number;
  readonly dragForceN: number;
  readonly windSpeedMs: number;
  readonly densityKgM3: number;
  readonly dynamicPressurePa: number;
  readonly standardDeviationN: number | null;
  readonly studentFactor: number | null;
  readonly scatterDoubt: number | null;
  readonly forceMeterDoubt: number;
  readonly windDoubtUp: number;
  readonly windDoubtDown: number;
  readonly dragAreaBestM2: number;
  readonly dragAreaLowM2: number;
  readonly dragAreaHighM2: number;
}

export type PullTestResult =
  | { readonly kind: 'area'; readonly trace: PullTestTrace; readonly notices: readonly PullTestNotice[] }
  | { readonly kind: 'problem'; readonly problem: PullTestProblem };

/** A pull farther than this from the wind measures something else. */
const largestPullAngleRad = Math.PI / 3;

/**
 * Drag area from a pull test: CdA = (F - F_0) cos b / (rho/2 W^2), with a 90 % range. The readings' mean is doubted by
 * Student's t x s / sqrt(n); the force meter by its half-width over the net force; the wind, squared, by
 * (1 -+ d)^-2, so upwards more than downwards. They are added in squares, up and down apart. Nothing is said of a wind
 * that changed between the readings beyond their scatter, nor of the angle's own doubt.
 *
 * Example: 10.0, 10.4, 9.6 N, tare 0, in line, 10 m/s, 1.25 kg/m3: 0.16 m2; s 0.4 N, t 2.920, scatter 6.7 %.
 * Source: student-t, vector-mechanics.
 */
export function pullTestArea(test: PullTest): PullTestResult {
  const problem = pullTestProblem(test);
  if (problem !== null) return { kind: 'problem', problem };
  const { forcesN, tareN, pullAngleRad, windSpeedMs, densityKgM3 } = test;
  const meanForceN = meanOf(forcesN);
  const netForceN = meanForceN - tareN;
  const dragForceN = netForceN * Math.cos(pullAngleRad);
  const dynamicPressurePa = 0.5 * densityKgM3 * windSpeedMs * windSpeedMs;
  const dragAreaBestM2 = dragForceN / dynamicPressurePa;
  const scatter = scatterOf(forcesN, meanForceN, netForceN);
  const forceMeterDoubt = test.forceMeterDoubtN / netForceN;
  const windDoubtUp = (1 - test.windSpeedDoubt) ** -2 - 1;
  const windDoubtDown = 1 - (1 + test.windSpeedDoubt) ** -2;
  const up = Math.hypot(scatter.scatterDoubt ?? 0, forceMeterDoubt, windDoubtUp);
  const down = Math.hypot(scatter.scatterDoubt ?? 0, forceMeterDoubt, windDoubtDown);
  const trace: PullTestTrace = {
    readingCount: forcesN.length,
    meanForceN,
    tareN,
    pullAngleRad,
    dragForceN,
    windSpeedMs,
    densityKgM3,
    dynamicPressurePa,
    ...scatter,
    forceMeterDoubt,
    windDoubtUp,
    windDoubtDown,
    dragAreaBestM2,
    dragAreaLowM2: dragAreaBestM2 * Math.max(1 - down, 0),
    dragAreaHighM2: dragAreaBestM2 * (1 + up),
  };
  return { kind: 'area', trace, notices: noticesOf(scatter.scatterDoubt, down) };
}

function noticesOf(scatterDoubt: number | null, down: number): PullTestNotice[] {
  const notices: PullTestNotice[] = [];
  if (scatterDoubt === null) notices.push('scatter-not-known');
  if (down >= 1) notices.push('low-held-at-zero');
  return notices;
}

function pullTestProblem(test: PullTest): PullTestProblem | null {
  const { forcesN, tareN, pullAngleRad, windSpeedMs, windSpeedDoubt, densityKgM3, forceMeterDoubtN } = test;
  if (forcesN.length === 0) return 'no-reading';
  const numbers = [
    ...forcesN,
    tareN,
    pullAngleRad,
    windSpeedMs,
    windSpeedDoubt,
    densityKgM3,
    forceMeterDoubtN,
  ];
  if (!numbers.every(Number.isFinite)) return 'not-a-number';
  if (windSpeedMs <= 0) return 'wind-not-positive';
  if (densityKgM3 <= 0) return 'density-not-positive';
  if (Math.abs(pullAngleRad) > largestPullAngleRad) return 'pull-across-the-wind';
  if (windSpeedDoubt < 0 || windSpeedDoubt >= 1 || forceMeterDoubtN < 0) return 'doubt-out-of-range';
  return meanOf(forcesN) > tareN ? null : 'force-not-above-tare';
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

type Scatter = Pick<PullTestTrace, 'standardDeviationN' | 'studentFactor' | 'scatterDoubt'>;

function scatterOf(forcesN: readonly number[], meanForceN: number, netForceN: number): Scatter {
  const count = forcesN.length;
  if (count < 2) return { standardDeviationN: null, studentFactor: null, scatterDoubt: null };
  const squares = forcesN.reduce((sum, force) => sum + (force - meanForceN) ** 2, 0);
  const standardDeviationN = Math.sqrt(squares / (count - 1));
  const studentFactor = studentQuantile95(count - 1);
  const scatterDoubt = (studentFactor * standardDeviationN) / Math.sqrt(count) / netForceN;
  return { standardDeviationN, studentFactor, scatterDoubt };
}

export const pullTestQuantities = {
  readingCount: { symbol: 'n', label: 'number of readings', unit: '1' },
  meanForceN: { symbol: 'F', label: 'mean of the readings', unit: 'N' },
  tareN: { symbol: 'F_0', label: 'tare: reading out of the wind', unit: 'N' },
  pullAngleRad: { symbol: 'b', label: 'angle between pull and wind', unit: 'rad' },
  dragForceN: {
    symbol: 'D',
    label: 'drag',
    unit: 'N',
    equation: '(F - F_0) cos b',
    source: 'vector-mechanics',
  },
  windSpeedMs: { symbol: 'W', label: 'wind speed at the item', unit: 'm/s' },
  densityKgM3: { symbol: 'rho', label: 'density of the air', unit: 'kg/m3' },
  dynamicPressurePa: { symbol: 'q', label: 'dynamic pressure', unit: 'Pa', equation: 'rho/2 W^2' },
  standardDeviationN: {
    symbol: 's',
    label: 'standard deviation of the readings',
    unit: 'N',
    equation: 'sqrt(sum (F_i - F)^2 / (n - 1))',
  },
  studentFactor: {
    symbol: 't',
    label: 'factor of Student for n readings, 90 %',
    unit: '1',
    source: 'student-t',
  },
  scatterDoubt: {
    symbol: 'd_s',
    label: 'doubt from the scatter',
    unit: '1',
    equation: 't s / (sqrt(n) (F - F_0))',
    source: 'student-t',
  },
  forceMeterDoubt: {
    symbol: 'd_F',
    label: 'doubt of the force meter',
    unit: '1',
    equation: 'dF / (F - F_0)',
  },
  windDoubtUp: { symbol: 'd_W+', label: 'doubt of the wind, up', unit: '1', equation: '(1 - dW)^-2 - 1' },
  windDoubtDown: { symbol: 'd_W-', label: 'doubt of the wind, down', unit: '1', equation: '1 - (1 + dW)^-2' },
  dragAreaBestM2: {
    symbol: 'CdA',
    label: 'drag area',
    unit: 'm2',
    equation: 'D / q',
    source: 'vector-mechanics',
  },
  dragAreaLowM2: {
    symbol: 'CdA_low',
    label: 'drag area, low',
    unit: 'm2',
    equation: 'CdA (1 - sqrt(d_s^2 + d_F^2 + d_W-^2)), not below 0',
  },
  dragAreaHighM2: {
    symbol: 'CdA_high',
    label: 'drag area, high',
    unit: 'm2',
    equation: 'CdA (1 + sqrt(d_s^2 + d_F^2 + d_W+^2))',
  },
} as const satisfies Record<keyof PullTestTrace, Quantity>;
