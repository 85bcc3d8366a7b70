import {
  ellipseCoefficients,
  ellipsePerimeterM,
  ellipseShape,
  ellipseWidthShare,
  emptyEllipse,
} from './ellipse';
import { endFactor, type EndMethod } from './endEffect';
import type { PreparedSection, StripCoefficients, StripFlow } from './memberFamily';
import type { TypedCoefficient } from './roundBarSection';

/** An elliptical section ready for integration: its finite length counts in widths across the wind. */
export interface PreparedEllipse extends PreparedSection {
  /** @param incidenceRad at the member's middle; along the chord when it is left out. */
  endFactor(
    method: EndMethod,
    effectiveSlenderness: number,
    logCrisisReynolds: number,
    incidenceRad?: number,
  ): number;
}

/**
 * An elliptical section ready for integration. Reference width and Reynolds number are on the CHORD at every incidence.
 * A typed coefficient, on chord x length, replaces drag and lift at every Reynolds number and incidence; its lift is
 * zero.
 * @param chordM the longer axis, which has the nose; at least the thickness.
 */
export function prepareEllipse(
  chordM: number,
  thicknessM: number,
  typed: TypedCoefficient | null,
): PreparedEllipse {
  const shape = ellipseShape(chordM, thicknessM);
  const section = emptyEllipse();
  return {
    isDirected: shape.ratio < 1,
    referenceWidthM: chordM,
    perimeterM: ellipsePerimeterM(chordM, thicknessM),
    strip(flow: StripFlow, out: StripCoefficients, withBand: boolean): void {
      const { incidenceRad, inclinationCosine } = flow;
      out.reynolds = (flow.crossSpeedMs * chordM) / flow.kinematicViscosityM2S;
      ellipseCoefficients(out.reynolds, shape, incidenceRad, inclinationCosine, section, withBand);
      out.logCrisisReynolds = section.logCrisisReynolds;
      out.regime = typed === null ? section.regime : 0;
      out.drag = typed?.best ?? section.drag;
      out.dragLow = typed?.low ?? section.dragLow;
      out.dragHigh = typed?.high ?? section.dragHigh;
      out.lift = typed === null ? section.lift : 0;
      out.liftLow = typed === null ? section.liftLow : 0;
      out.liftHigh = typed === null ? section.liftHigh : 0;
    },
    endFactor(method, effectiveSlenderness, logCrisisReynolds, incidenceRad = 0): number {
      const widthShare = ellipseWidthShare(shape.ratio, incidenceRad);
      return endFactor(method, effectiveSlenderness / widthShare, logCrisisReynolds);
    },
  };
}
