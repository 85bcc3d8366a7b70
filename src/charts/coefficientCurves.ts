import { sphereDrag, sphereRegimes, sphereSurface } from '../physics/body/sphere';
import type { MemberShape, SphereShape } from '../physics/fitting/fittingInput';
import { prepareMember, referenceWidthOf, regimesOf } from '../physics/fitting/memberFamilies';
import type { FairingSurface } from '../physics/section/fairingAligned';
import { emptyStrip } from '../physics/section/memberFamily';
import { toSi } from '../units/convert';

/** One sample of a curve; `x` is a Reynolds number, or an incidence in degrees. */
export interface CurveSample {
  readonly x: number;
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly regime: number;
}

/** A drag coefficient as a function of what it depends on most, the same functions that the ledger uses. */
export interface CoefficientCurve {
  readonly against: 'reynolds' | 'incidence';
  readonly regimes: readonly string[];
  readonly at: (x: number) => CurveSample;
}

/** What else the coefficient of a member depends on, at the place that the chart is about. */
export interface CurvePlace {
  /** |u_n| / |u|: 1 when the wind is square to the axis. */
  readonly inclinationCosine: number;
  readonly reynolds: number;
  /** Infinite with both ends closed. */
  readonly effectiveSlenderness: number;
}

/** Only the Reynolds number counts, so any viscosity will do. */
const anyViscosityM2S = 1.5e-5;

/** A member's curve: of a section with a direction against incidence at its own Reynolds number, of others against that. */
export function memberCurve(
  shape: MemberShape,
  place: CurvePlace,
  surface: FairingSurface,
): CoefficientCurve {
  const { section } = prepareMember(shape, surface);
  const { inclinationCosine, effectiveSlenderness } = place;
  const speedPerReynolds = anyViscosityM2S / referenceWidthOf(shape);
  const sample = (x: number, reynolds: number, incidenceRad: number): CurveSample => {
    const flow = {
      crossSpeedMs: reynolds * speedPerReynolds,
      inclinationCosine,
      kinematicViscosityM2S: anyViscosityM2S,
      effectiveSlenderness,
      incidenceRad,
    };
    const strip = emptyStrip();
    section.strip(flow, strip, true);
    return { x, low: strip.dragLow, best: strip.drag, high: strip.dragHigh, regime: strip.regime };
  };
  const regimes = regimesOf(shape);
  return section.isDirected
    ? { against: 'incidence', regimes, at: (x) => sample(x, place.reynolds, toSi(x, 'deg')) }
    : { against: 'reynolds', regimes, at: (x) => sample(x, x, 0) };
}

export function sphereCurve({ diameter, roughnessM, coefficient }: SphereShape): CoefficientCurve {
  const surface = sphereSurface(roughnessM, diameter.valueM);
  const at = (x: number): CurveSample => {
    if (coefficient !== null) return { x, ...coefficient, regime: 0 };
    const drag = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };
    const { low, best, high, regime } = sphereDrag(x, surface, drag);
    return { x, low, best, high, regime };
  };
  return { against: 'reynolds', regimes: coefficient === null ? sphereRegimes : ['typed'], at };
}
