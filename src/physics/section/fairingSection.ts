import { finiteFairing } from './fairing';
import type { FairingSurface } from './fairingAligned';
import { perimeterOverChord } from './fairingOutline';
import { fairingRowsAt } from './fairingRows';
import type { PreparedSection, StripCoefficients, StripFlow } from './memberFamily';
import type { TypedCoefficient } from './roundBarSection';

/**
 * A section that lifts, ready for integration: drag and lift on chord x length, finite length inside the coefficients, so
 * that no end factor is left. A typed coefficient is drag on chord x length at every incidence, with no lift.
 */
export function prepareFairing(
  chordM: number,
  thicknessM: number,
  surface: FairingSurface,
  typed: TypedCoefficient | null,
): PreparedSection {
  const thicknessRatio = thicknessM / chordM;
  const rows = fairingRowsAt(thicknessRatio);
  return {
    isDirected: true,
    referenceWidthM: chordM,
    perimeterM: chordM * perimeterOverChord(thicknessRatio),
    strip(flow: StripFlow, out: StripCoefficients, withBand: boolean): void {
      out.reynolds = (flow.crossSpeedMs * chordM) / flow.kinematicViscosityM2S;
      out.logCrisisReynolds = Math.log10(Math.max(out.reynolds, 1e-3));
      if (typed !== null) {
        fillTyped(typed, out);
        return;
      }
      const { incidenceRad, effectiveSlenderness } = flow;
      finiteFairing(
        rows,
        thicknessRatio,
        out.reynolds,
        incidenceRad,
        effectiveSlenderness,
        surface,
        out,
        withBand,
      );
    },
    endFactor: () => 1,
  };
}

function fillTyped({ best, low, high }: TypedCoefficient, out: StripCoefficients): void {
  out.regime = 0;
  out.drag = best;
  out.dragLow = low;
  out.dragHigh = high;
  out.lift = 0;
  out.liftLow = 0;
  out.liftHigh = 0;
}
