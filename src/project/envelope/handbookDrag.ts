import type { Air } from '../../physics/air/air';
import { namedBodies } from '../../physics/body/namedBodies';
import { dynamicPressurePa, reynoldsNumber } from '../../physics/envelope/envelopeArithmetic';
import { dragInUniformWind, withoutEnds, type StandingShape } from '../../physics/envelope/uniformWind';
import { isMemberShape, type Ranged } from '../../physics/fitting/fittingInput';
import type { Notice } from '../../physics/fitting/notice';
import { shapeFacts } from './envelopeShapes';
import type { EnvelopeShapeId } from './envelopeTexts';
import { standingShape } from './handbookShape';
import type { EnvelopeNumbers } from './readEnvelope';
import { areaOfOneM2 } from './workOutArea';

/** A handbook's coefficients of one shape at one speed. */
export interface HandbookDrag {
  readonly reynolds: number | null;
  readonly regime: string | null;
  readonly sectionCoefficient: Ranged;
  readonly coefficient: Ranged;
  readonly endFactorDnv: number | null;
  readonly endFactorEn: number | null;
  readonly notices: readonly Notice[];
}

function scaled({ best, low, high }: Ranged, factor: number): Ranged {
  return { best: best * factor, low: low * factor, high: high * factor };
}

/** Null when a size is missing. @param speedMs above 0. */
export function handbookDrag(
  numbers: EnvelopeNumbers,
  shape: EnvelopeShapeId,
  speedMs: number,
  air: Air,
): HandbookDrag | null {
  const { family } = shapeFacts[shape];
  if (family.kind === 'named') return namedDrag(numbers, namedBodies[family.id].coefficient, speedMs, air);
  const standing = standingShape(numbers, shape);
  const areaM2 = areaOfOneM2(numbers);
  return standing === null || areaM2 === null ? null : standingDrag(standing, areaM2, speedMs, air);
}

function namedDrag({ width }: EnvelopeNumbers, coefficient: Ranged, speedMs: number, air: Air): HandbookDrag {
  return {
    reynolds: width === null ? null : reynoldsNumber(speedMs, width.valueSi, air.kinematicViscosityM2S),
    regime: null,
    sectionCoefficient: coefficient,
    coefficient,
    endFactorDnv: null,
    endFactorEn: null,
    notices: [],
  };
}

function standingDrag(standing: StandingShape, areaM2: number, speedMs: number, air: Air): HandbookDrag {
  const perNewton = 1 / (dynamicPressurePa(air.densityKgM3, speedMs) * areaM2);
  const drag = dragInUniformWind(standing, speedMs, air);
  const endless = dragInUniformWind(withoutEnds(standing), speedMs, air);
  const { shape } = standing;
  const hasEnds = isMemberShape(shape) && shape.ends.includes('free');
  const byEn = hasEnds ? dragInUniformWind(standing, speedMs, air, 'en').forceN.best : NaN;
  return {
    reynolds: drag.reynolds,
    regime: drag.regime,
    sectionCoefficient: scaled(endless.forceN, perNewton),
    coefficient: scaled(drag.forceN, perNewton),
    endFactorDnv: hasEnds ? drag.forceN.best / endless.forceN.best : null,
    endFactorEn: hasEnds ? byEn / endless.forceN.best : null,
    notices: drag.notices,
  };
}
