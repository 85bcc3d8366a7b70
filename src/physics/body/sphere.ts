import { pieceAt, valueAt, valueOnPiece } from '../numerics/cubicTable';
import { smoothStep } from '../numerics/smoothStep';
import { sphereColumn, sphereTable } from './sphereTable';

/** Names of the stretches of the sphere's curve, in rising Reynolds number. */
export const sphereRegimes = ['creeping', 'plateau', 'crisis', 'recovery'] as const;

/** Where the stretches end, as log10 of the Reynolds number that counts towards the crisis. */
const logRegimeEnds = { creeping: 3, plateau: Math.log10(1.5e5), crisis: Math.log10(5e5) } as const;

/** Middle of the smooth sphere's crisis, Re. Source: sphere-curves. */
const smoothCrisisReynolds = 3e5;
/** Critical Reynolds number of a rough sphere, 6000 / sqrt(k/d), as for the round bar. Source: achenbach-1974 (constant from memory). */
const roughCrisisConstant = 6000;
/** Roughness brings the crisis at most a factor of ten forward (assumed), on a ramp from Re 1e4, below which there is none. */
const largestOnsetShift = 1;
const crisisRampFrom = 4;
const crisisRampTo = 4.8;
/** A rough sphere far behind its crisis: 0.40 at most. Source: achenbach-1974, data-book. The edges are assumed. */
const roughBehindCrisis = { low: 0.3, best: 0.4, high: 0.44 } as const;
/** log10 k/d from which, and where fully, the rough value counts (assumed). */
const roughFrom = -5;
const roughTo = -2.5;
const logBehindFrom = Math.log10(3e5);
const logBehindTo = Math.log10(2e6);

/** What a sphere's surface does to its curve, computed once per sphere. */
export interface SphereSurface {
  /** log10 of how much earlier the crisis comes; never negative. */
  readonly onsetShift: number;
  /** Share of the rough value behind the crisis, 0 for a smooth sphere. */
  readonly roughShare: number;
}

export interface SphereDrag {
  best: number;
  low: number;
  high: number;
  /** Index into `sphereRegimes`. */
  regime: number;
  /** log10 of the Reynolds number that counts towards the crisis: moved by roughness. */
  logCrisisReynolds: number;
}

/** The surface of a sphere with sand-grain height `roughnessM` (0 for smooth) and diameter `diameterM`. */
export function sphereSurface(roughnessM: number, diameterM: number): SphereSurface {
  const relative = roughnessM / diameterM;
  if (!(relative > 0)) return { onsetShift: 0, roughShare: 0 };
  const critical = roughCrisisConstant / Math.sqrt(relative);
  return {
    onsetShift: Math.min(Math.max(Math.log10(smoothCrisisReynolds / critical), 0), largestOnsetShift),
    roughShare: smoothStep(roughFrom, roughTo, Math.log10(relative)),
  };
}

/**
 * Drag coefficient of a sphere on its frontal area, from the Reynolds number on its diameter: the table, entered at a
 * Reynolds number that roughness moves towards the crisis; behind it a rough sphere rises towards 0.4. The high edge
 * keeps the later onset, the low edge the earlier.
 * @param out written and returned, so that a sweep allocates nothing.
 * @param withBand false leaves `low` and `high` alone.
 * Range: Re 1 to 1e7; held outside. Example: Re 1e5, smooth: 0.475 (0.36 to 0.545).
 * Source: sphere-curves, achenbach-1972, achenbach-1974.
 */
export function sphereDrag(
  reynolds: number,
  surface: SphereSurface,
  out: SphereDrag,
  withBand = true,
): SphereDrag {
  const logReynolds = Math.LOG10E * Math.log(Math.max(reynolds, 1e-3));
  const shifted = logReynolds + surface.onsetShift * smoothStep(crisisRampFrom, crisisRampTo, logReynolds);
  const rough = surface.roughShare * smoothStep(logBehindFrom, logBehindTo, shifted);
  const piece = pieceAt(sphereTable, shifted);
  out.best = roughened(
    valueOnPiece(sphereTable, sphereColumn.best, piece, shifted),
    roughBehindCrisis.best,
    rough,
  );
  out.logCrisisReynolds = shifted;
  out.regime = regimeAt(shifted);
  if (!withBand) return out;
  out.low = roughened(
    valueOnPiece(sphereTable, sphereColumn.low, piece, shifted),
    roughBehindCrisis.low,
    rough,
  );
  const early = roughened(
    valueOnPiece(sphereTable, sphereColumn.high, piece, shifted),
    roughBehindCrisis.high,
    rough,
  );
  out.high = Math.max(early, valueAt(sphereTable, sphereColumn.high, logReynolds));
  return out;
}

/** From the smooth to the rough value, in the logarithm. */
function roughened(smooth: number, rough: number, share: number): number {
  return smooth * (rough / smooth) ** share;
}

function regimeAt(logCrisisReynolds: number): number {
  if (logCrisisReynolds < logRegimeEnds.creeping) return 0;
  if (logCrisisReynolds < logRegimeEnds.plateau) return 1;
  return logCrisisReynolds < logRegimeEnds.crisis ? 2 : 3;
}
