import { endFactor } from './endEffect';
import type { PreparedSection, StripCoefficients, StripFlow } from './memberFamily';
import { roundBarDrag, roundBarSurface, type RoundBarDrag } from './roundBar';

/** A coefficient the user typed: best, low and high on the family's own area base, and where it came from. */
export interface TypedCoefficient {
  readonly best: number;
  readonly low: number;
  readonly high: number;
  /** The area the coefficient is based on, in words. */
  readonly areaBase: string;
  readonly source: string;
}

/** A round bar ready for integration; a typed coefficient replaces the curve at every Reynolds number. */
export function prepareRoundBar(
  diameterM: number,
  roughnessM: number,
  typed: TypedCoefficient | null,
): PreparedSection {
  const surface = roundBarSurface(roughnessM, diameterM);
  const drag: RoundBarDrag = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };
  return {
    isDirected: false,
    referenceWidthM: diameterM,
    perimeterM: Math.PI * diameterM,
    strip(flow: StripFlow, out: StripCoefficients, withBand: boolean): void {
      out.reynolds = (flow.crossSpeedMs * diameterM) / flow.kinematicViscosityM2S;
      roundBarDrag(out.reynolds, surface, flow.inclinationCosine, drag, withBand);
      out.logCrisisReynolds = drag.logCrisisReynolds;
      out.regime = typed === null ? drag.regime : 0;
      const source = typed ?? drag;
      out.drag = source.best;
      out.dragLow = source.low;
      out.dragHigh = source.high;
    },
    endFactor,
  };
}
