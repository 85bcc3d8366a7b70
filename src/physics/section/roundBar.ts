import { pieceAt, valueAt, valueOnPiece } from '../numerics/cubicTable';
import { smoothStep } from '../numerics/smoothStep';
import { roundBarColumn, roundBarTable } from './roundBarTable';

/** Names of the stretches of the round bar's curve, in rising Reynolds number. */
export const roundBarRegimes = ['creeping', 'dip', 'plateau', 'crisis', 'recovery'] as const;

/** Where the stretches end, as log10 of the Reynolds number that counts towards the crisis. */
const logRegimeEnds = {
  creeping: Math.log10(2e2),
  dip: Math.log10(1e4),
  plateau: Math.log10(1.8e5),
  crisis: Math.log10(5e5),
} as const;

/** Middle of the smooth bar's crisis, Re. Source: round-bar-table. */
const smoothCrisisReynolds = 3e5;
/** Critical Reynolds number of a rough bar is about 6000 / sqrt(k/d). Source: achenbach-1971 (from memory). */
const roughCrisisConstant = 6000;
/** Critical Reynolds number falls as cos(yaw)^1.87: 3.65e5 at 0, 1.0e5 at 60 deg. Source: bursnall-loftin-1951 (from memory). */
export const inclinedCrisisExponent = 1.87;
/** cos(60 deg): beyond 60 deg of yaw the onset is held. */
const leastInclinationCosine = 0.5;
/** log10 Re from which, and where fully, there is a crisis to meet: roughness and inclination act on this ramp. */
const crisisRampFrom = 4;
const crisisRampTo = 4.8;
/** The crisis comes at most a factor of ten earlier, roughness and inclination together (assumed). */
const largestOnsetShift = 1;
/** EN's roughness line counts from k/d 1e-5, its smoothest, and fully from 1e-4. */
const smoothestRoughness = 1e-5;
/** Best value behind the crisis of a rough bar: halfway, in the logarithm, from the smooth curve to EN's line (assumed). */
const enShareBehindCrisis = 0.5;

/** What a bar's surface does to its curve, computed once per bar. */
export interface RoundBarSurface {
  readonly relativeRoughness: number;
  /** log10 of how much earlier the crisis comes because of roughness; never negative. */
  readonly onsetShift: number;
  /** Share of EN's line in the best value behind the crisis. */
  readonly enShare: number;
  /** 0.18 log10(10 k/d) of EN's line. */
  readonly enNumerator: number;
}

export interface RoundBarDrag {
  best: number;
  low: number;
  high: number;
  /** Index into `roundBarRegimes`. */
  regime: number;
  /** log10 of the Reynolds number that counts towards the crisis: moved by roughness and by inclination. */
  logCrisisReynolds: number;
}

/** The surface of a bar with sand-grain height `roughnessM` and diameter `diameterM`. */
export function roundBarSurface(roughnessM: number, diameterM: number): RoundBarSurface {
  const relativeRoughness = Math.max(roughnessM / diameterM, 0);
  const critical = relativeRoughness > 0 ? roughCrisisConstant / Math.sqrt(relativeRoughness) : Infinity;
  return {
    relativeRoughness,
    onsetShift: Math.max(Math.log10(smoothCrisisReynolds / critical), 0),
    enShare:
      enShareBehindCrisis * smoothStep(-5, -4, Math.log10(Math.max(relativeRoughness, smoothestRoughness))),
    enNumerator: enNumerator(relativeRoughness),
  };
}

/**
 * Roughness line of EN 1991-1-4:2005 fig. 7.28: 1.2 + 0.18 log10(10 k/b) / (1 + 0.4 log10(Re / 1e6)).
 * Meaningless below Re 1.8e5 (its denominator vanishes at 3162), so it is held there. Source: en-1991-1-4.
 */
function enRoughnessLine(reynolds: number, relativeRoughness: number): number {
  return enLineFromLogs(Math.log10(Math.max(reynolds, 1e-3)), enNumerator(relativeRoughness));
}

const logEnFrom = Math.log10(1.8e5);

function enNumerator(relativeRoughness: number): number {
  return 0.18 * (1 + Math.log10(Math.max(relativeRoughness, smoothestRoughness)));
}

function enLineFromLogs(logReynolds: number, numerator: number): number {
  return 1.2 + numerator / (1 + 0.4 * (Math.max(logReynolds, logEnFrom) - 6));
}

/**
 * Force coefficient without end effect of EN 1991-1-4:2005 clause 7.9.2: max(c1, c2) with
 * c1 = min(max(0.11 / (Re / 1e6)^1.4, 0.4), 1.2). A design value, used as an upper estimate. Source: en-1991-1-4.
 */
export function enRoundBarCoefficient(reynolds: number, relativeRoughness: number): number {
  const c1 = Math.min(Math.max(0.11 / (reynolds / 1e6) ** 1.4, 0.4), 1.2);
  return reynolds > 1.8e5 ? Math.max(c1, enRoughnessLine(reynolds, relativeRoughness)) : c1;
}

/**
 * Drag coefficient of a round bar on diameter x length, from the Reynolds number of the flow across its axis.
 *
 * - `best`: the table, entered at a Reynolds number that roughness and inclination move towards the crisis
 *   (fully from Re 6e4 up, not at all below 1e4, where there is no crisis to meet); behind it a rough bar lies between
 *   the smooth curve and EN's line.
 * - `high`: the later onset of the two, and EN's line behind the crisis, which does not move the onset.
 * - `low`: the earlier onset.
 *
 * @param inclinationCosine |u_n| / |u|: 1 when the wind is square to the axis.
 * @param out written and returned, so that a sweep allocates nothing.
 * @param withBand false leaves `low` and `high` alone: the doubts' own runs need only the best value.
 * Range: Re 1 to 1e7; held outside. Source: round-bar-table, en-1991-1-4, achenbach-1971, bursnall-loftin-1951.
 */
export function roundBarDrag(
  reynolds: number,
  surface: RoundBarSurface,
  inclinationCosine: number,
  out: RoundBarDrag,
  withBand = true,
): RoundBarDrag {
  const logReynolds = Math.LOG10E * Math.log(Math.max(reynolds, 1e-3));
  const shifted = logReynolds + onsetShiftAt(logReynolds, surface, inclinationCosine);
  const piece = pieceAt(roundBarTable, shifted);
  const smoothBest = valueOnPiece(roundBarTable, roundBarColumn.best, piece, shifted);
  const line = enLineFromLogs(logReynolds, surface.enNumerator);
  const crisisShare = smoothStep(crisisRampFrom, crisisRampTo, logReynolds);
  out.best =
    crisisShare * surface.enShare > 0 && line > smoothBest
      ? smoothBest * (line / smoothBest) ** (crisisShare * surface.enShare)
      : smoothBest;
  out.logCrisisReynolds = shifted;
  out.regime = regimeAt(shifted);
  if (!withBand) return out;
  out.low = valueOnPiece(roundBarTable, roundBarColumn.low, piece, shifted);
  const earlyHigh = valueOnPiece(roundBarTable, roundBarColumn.high, piece, shifted);
  const lateHigh = valueAt(roundBarTable, roundBarColumn.high, logReynolds);
  const smoothHigh = Math.max(earlyHigh, lateHigh);
  out.high = smoothHigh + crisisShare * Math.max(line - smoothHigh, 0);
  return out;
}

/** How far the entry moves towards the crisis, in log10 of the Reynolds number. */
function onsetShiftAt(logReynolds: number, surface: RoundBarSurface, inclinationCosine: number): number {
  if (logReynolds <= crisisRampFrom) return 0;
  const cosine = Math.max(inclinationCosine, leastInclinationCosine);
  const inclined = cosine < 1 ? -inclinedCrisisExponent * Math.LOG10E * Math.log(cosine) : 0;
  return (
    Math.min(surface.onsetShift + inclined, largestOnsetShift) *
    smoothStep(crisisRampFrom, crisisRampTo, logReynolds)
  );
}

function regimeAt(logCrisisReynolds: number): number {
  if (logCrisisReynolds < logRegimeEnds.creeping) return 0;
  if (logCrisisReynolds < logRegimeEnds.dip) return 1;
  if (logCrisisReynolds < logRegimeEnds.plateau) return 2;
  return logCrisisReynolds < logRegimeEnds.crisis ? 3 : 4;
}
