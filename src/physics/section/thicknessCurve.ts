import { flatNeighbourhood, type FlatNeighbourhood } from '../numerics/flatNeighbourhood';
import type { Quantity } from '../quantity';
import { skinOf } from '../strut/skin';
import { strutOf } from '../strut/strut';
import type { StrutMaterial } from '../strut/strutMaterial';
import { emptyFairing, fairingCoefficients, type FairingCoefficients } from './fairing';
import type { FairingSurface } from './fairingAligned';
import { isOutsideFairingTable } from './fairingBand';
import { perimeterOverChord } from './fairingOutline';
import { fairingRange } from './fairingTable';

/** What the fairing is: a skin over something that carries, or a section that carries itself. */
export type FairingBuild =
  | { readonly kind: 'skin'; readonly arealDensityKgM2: number }
  | { readonly kind: 'section'; readonly wallM: number; readonly material: StrutMaterial };

/** The thickness stays, because something stands inside or the frontal area is given; the chord follows from the ratio. */
export interface ThicknessCurveInput {
  readonly thicknessM: number;
  readonly lengthM: number;
  /** Of the air square to the member, along the chord. */
  readonly speedMs: number;
  readonly densityKgM3: number;
  readonly kinematicViscosityM2S: number;
  readonly surface: FairingSurface;
  readonly build: FairingBuild;
  /** How much more than the least drag still counts as flat, as a fraction. */
  readonly flatShare: number;
}

export type ThicknessCurveProblem = 'not-a-number' | 'not-positive' | 'wall-over-half-thickness';

/** The fairing at one thickness ratio. */
export interface ThicknessRow {
  readonly thicknessRatio: number;
  readonly chordM: number;
  readonly chordReynolds: number;
  readonly frontalCoefficient: number;
  readonly dragN: number;
  readonly dragLowN: number;
  readonly dragHighN: number;
  readonly wettedAreaM2: number;
  readonly massKg: number;
  /** 1 outside the section table: nearest values and half as much doubt again. */
  readonly isOutsideTable: 0 | 1;
}

export type ThicknessCurveResult =
  | {
      readonly kind: 'curve';
      readonly rows: readonly ThicknessRow[];
      /** Of the best value of the drag, over thickness ratio; cut where the range of the models ends. */
      readonly flat: FlatNeighbourhood;
    }
  | { readonly kind: 'problem'; readonly problem: ThicknessCurveProblem };

/**
 * Ratios for which the best value has a source: the turbulent formula goes on beyond the section table, the laminar state
 * rests on the table, and holding its last section would let the drag fall for ever. Source: hoerner-sections, sheldahl-klimas-1981.
 */
export function thicknessRange(surface: FairingSurface): { readonly from: number; readonly to: number } {
  return surface === 'turbulent'
    ? { from: 0.1, to: 0.4 }
    : { from: fairingRange.thicknessFrom, to: fairingRange.thicknessTo };
}

const rowStep = 0.01;

/**
 * Drag, wetted area and mass of a fairing of given thickness against its thickness ratio, the nose into the wind, in two
 * dimensions: D = q c L C_d, c = t / ratio; with the stretch on which the drag is within `flatShare` of its least, because the
 * best ratio is a flat bottom and no point. Mass of a skin from areal density x perimeter, of a section from its wall.
 *
 * Says nothing of drag off the wind, where a shorter chord forgives more. Doubt as of every aligned fairing: much
 * wider than the bottom is deep. Example: turbulent, with a friction that did not change with the chord, the least
 * lies at 0.273 and 0.22 to 0.33 is within 5 %. Errors: tagged. Source: hoerner-sections, sheldahl-klimas-1981, naca-four-digit.
 */
export function thicknessCurveOf(input: ThicknessCurveInput): ThicknessCurveResult {
  const problem = curveProblem(input);
  if (problem !== null) return { kind: 'problem', problem };
  const { from, to } = thicknessRange(input.surface);
  const steps = Math.round((to - from) / rowStep);
  const rows = Array.from({ length: steps + 1 }, (_, i) =>
    rowAt(input, i === steps ? to : from + i * rowStep),
  );
  const flat = flatNeighbourhood((ratio) => dragAt(input, ratio).bestN, from, to, input.flatShare);
  return { kind: 'curve', rows, flat };
}

function curveProblem(input: ThicknessCurveInput): ThicknessCurveProblem | null {
  const { thicknessM, lengthM, speedMs, densityKgM3, kinematicViscosityM2S, build, flatShare } = input;
  const ownSize = build.kind === 'skin' ? build.arealDensityKgM2 : build.wallM;
  const density = build.kind === 'skin' ? 1 : build.material.densityKgM3;
  const numbers = [thicknessM, lengthM, speedMs, densityKgM3, kinematicViscosityM2S, ownSize, density];
  if (![...numbers, flatShare].every(Number.isFinite)) return 'not-a-number';
  if (![...numbers, flatShare].every((value) => value > 0)) return 'not-positive';
  return build.kind === 'section' && build.wallM > thicknessM / 2 ? 'wall-over-half-thickness' : null;
}

const coefficients: FairingCoefficients = emptyFairing();

interface DragAt {
  readonly bestN: number;
  readonly lowN: number;
  readonly highN: number;
}

function dragAt(input: ThicknessCurveInput, thicknessRatio: number): DragAt {
  const { thicknessM, lengthM, speedMs, densityKgM3, kinematicViscosityM2S, surface } = input;
  const chordM = thicknessM / thicknessRatio;
  const reynolds = (speedMs * chordM) / kinematicViscosityM2S;
  const { drag, dragLow, dragHigh } = fairingCoefficients(thicknessRatio, reynolds, 0, surface, coefficients);
  const perCoefficientN = 0.5 * densityKgM3 * speedMs ** 2 * chordM * lengthM;
  return {
    bestN: drag * perCoefficientN,
    lowN: dragLow * perCoefficientN,
    highN: dragHigh * perCoefficientN,
  };
}

function rowAt(input: ThicknessCurveInput, thicknessRatio: number): ThicknessRow {
  const { thicknessM, lengthM, speedMs, densityKgM3, kinematicViscosityM2S } = input;
  const chordM = thicknessM / thicknessRatio;
  const chordReynolds = (speedMs * chordM) / kinematicViscosityM2S;
  const { bestN, lowN, highN } = dragAt(input, thicknessRatio);
  const frontalN = 0.5 * densityKgM3 * speedMs ** 2 * thicknessM * lengthM;
  return {
    thicknessRatio,
    chordM,
    chordReynolds,
    frontalCoefficient: bestN / frontalN,
    dragN: bestN,
    dragLowN: lowN,
    dragHighN: highN,
    wettedAreaM2: perimeterOverChord(thicknessRatio) * chordM * lengthM,
    massKg: massAt(input, chordM),
    isOutsideTable: isOutsideFairingTable(thicknessRatio, chordReynolds) ? 1 : 0,
  };
}

function massAt({ build, thicknessM, lengthM }: ThicknessCurveInput, chordM: number): number {
  const outline = { kind: 'fairing', chordM, thicknessM } as const;
  if (build.kind === 'skin') return skinOf(outline, build.arealDensityKgM2).massPerLengthKgM * lengthM;
  const result = strutOf({ outline, wallM: build.wallM, lengthM, material: build.material });
  return result.kind === 'strut' ? result.trace.massKg : NaN;
}

export const thicknessRowQuantities = {
  thicknessRatio: { symbol: 't/c', label: 'thickness over chord', unit: '1' },
  chordM: { symbol: 'c', label: 'chord', unit: 'm', equation: 't / (t/c)' },
  chordReynolds: { symbol: 'Re_c', label: 'Reynolds number on the chord', unit: '1', equation: 'u_n c / nu' },
  frontalCoefficient: {
    symbol: 'C_f',
    label: 'drag coefficient on thickness x length',
    unit: '1',
    equation: 'D / (q t L)',
  },
  dragN: { symbol: 'D', label: 'drag', unit: 'N', equation: 'q c L C_d', source: 'hoerner-sections' },
  dragLowN: { symbol: 'D_low', label: 'drag, low', unit: 'N', source: 'hoerner-sections' },
  dragHighN: { symbol: 'D_high', label: 'drag, high', unit: 'N', source: 'hoerner-sections' },
  wettedAreaM2: {
    symbol: 'A_w',
    label: 'wetted area',
    unit: 'm2',
    equation: 'perimeter x L',
    source: 'naca-four-digit',
  },
  massKg: { symbol: 'm', label: 'mass', unit: 'kg', source: 'green-theorem' },
  isOutsideTable: { symbol: 'g', label: 'one outside the section table', unit: '1' },
} as const satisfies Record<keyof ThicknessRow, Quantity>;
