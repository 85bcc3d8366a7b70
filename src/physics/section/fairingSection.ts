import { finiteFairing } from './fairing';
import type { FairingSurface } from './fairingAligned';
import { perimeterOverChord } from './fairingOutline';
import { fairingRowsAt } from './fairingRows';
import type { PreparedSection, StripCoefficients, StripFlow } from './memberFamily';
import type { TypedCoefficient } from './roundBarSection';
import { fillTyped } from './typedStrip';

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
