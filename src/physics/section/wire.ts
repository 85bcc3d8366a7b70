import { pieceAt, valueOnPiece } from '../numerics/cubicTable';
import type { PreparedSection, StripCoefficients, StripFlow } from './memberFamily';
import { roundBarDrag, roundBarRegimes, roundBarSurface, type RoundBarDrag } from './roundBar';
import type { TypedCoefficient } from './roundBarSection';
import { strandedCableNodes, wireColumn, wireTables, type LaidConstruction } from './wireTable';

/** A smooth rod (as a round bar), a 1 x 19 wire, a 7 x 19 wire, a rope with a braided cover. */
export const wireConstructions = ['rod', 'spiralStrand', 'strandedWire', 'braidedRope'] as const;
export type WireConstruction = (typeof wireConstructions)[number];

/** Names of the stretches of a laid wire's curve, in rising Reynolds number. */
export const laidWireRegimes = ['creeping', 'dip', 'plateau', 'drift'] as const;

/** Names that a construction's `regime` counts through. */
export function wireRegimes(construction: WireConstruction): readonly string[] {
  return construction === 'rod' ? roundBarRegimes : laidWireRegimes;
}

const logRegimeEnds = { creeping: Math.log10(2e2), dip: 4, plateau: Math.log10(3e4) } as const;
const smooth = roundBarSurface(0, 1);

/**
 * Drag coefficient of a stranded cable at Re about 1e4, on diameter x length, from the diameter of an outer strand over
 * that of the cable: straight lines through 1.19 (0), 1.14 (0.212), 1.04 (0.351), held beyond. Source: hoerner-cables.
 */
export function strandedCableCoefficient(strandRatio: number): number {
  let i = 0;
  while (i < strandedCableNodes.length - 2 && strandedCableNodes[i + 1]![0] <= strandRatio) i += 1;
  const [left, from] = strandedCableNodes[i]!;
  const [right, to] = strandedCableNodes[i + 1]!;
  const share = Math.min(Math.max((strandRatio - left) / (right - left), 0), 1);
  return from + share * (to - from);
}

/**
 * Drag coefficient of a wire or rope on diameter x length from the Reynolds number across its axis. A rod is a smooth
 * round bar with everything that belongs to it; the others follow their table: a dip at Re 2e3 as every thin wire has,
 * a plateau, a slow drift to 1.0, and no deep crisis, so inclination does not bring one.
 * @param withBand false leaves `low` and `high` alone.
 * Range: Re 1e3 to 1e6; below it the smooth wire's curve, above it held. Source: hoerner-cables, rope-design-values,
 * round-bar-table.
 */
export function wireDrag(
  construction: WireConstruction,
  reynolds: number,
  inclinationCosine: number,
  out: RoundBarDrag,
  withBand = true,
): RoundBarDrag {
  return construction === 'rod'
    ? roundBarDrag(reynolds, smooth, inclinationCosine, out, withBand)
    : laidWireDrag(construction, reynolds, out, withBand);
}

function laidWireDrag(
  construction: LaidConstruction,
  reynolds: number,
  out: RoundBarDrag,
  withBand: boolean,
): RoundBarDrag {
  const logReynolds = Math.LOG10E * Math.log(Math.max(reynolds, 1e-3));
  const table = wireTables[construction];
  const piece = pieceAt(table, logReynolds);
  out.best = valueOnPiece(table, wireColumn.best, piece, logReynolds);
  out.logCrisisReynolds = logReynolds;
  out.regime = regimeAt(logReynolds);
  if (!withBand) return out;
  out.low = valueOnPiece(table, wireColumn.low, piece, logReynolds);
  out.high = valueOnPiece(table, wireColumn.high, piece, logReynolds);
  return out;
}

function regimeAt(logReynolds: number): number {
  if (logReynolds < logRegimeEnds.creeping) return 0;
  if (logReynolds < logRegimeEnds.dip) return 1;
  return logReynolds < logRegimeEnds.plateau ? 2 : 3;
}

/** Wires are hundreds of diameters long: no factor of finite length. */
function noEndEffect(): number {
  return 1;
}

/** A wire or rope ready for integration; a typed coefficient replaces the curve at every Reynolds number. */
export function prepareWire(
  construction: WireConstruction,
  diameterM: number,
  typed: TypedCoefficient | null,
): PreparedSection {
  const drag: RoundBarDrag = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };
  return {
    isDirected: false,
    referenceWidthM: diameterM,
    perimeterM: Math.PI * diameterM,
    strip(flow: StripFlow, out: StripCoefficients, withBand: boolean): void {
      out.reynolds = (flow.crossSpeedMs * diameterM) / flow.kinematicViscosityM2S;
      wireDrag(construction, out.reynolds, flow.inclinationCosine, drag, withBand);
      out.logCrisisReynolds = drag.logCrisisReynolds;
      out.regime = typed === null ? drag.regime : 0;
      const source = typed ?? drag;
      out.drag = source.best;
      out.dragLow = source.low;
      out.dragHigh = source.high;
      out.lift = 0;
      out.liftLow = 0;
      out.liftHigh = 0;
    },
    endFactor: noEndEffect,
  };
}
