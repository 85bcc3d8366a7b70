import { sphereDrag, sphereRegimes, sphereSurface } from '../physics/body/sphere';
import { netDragAreas } from '../physics/body/net';
import { bodyAxes, bodyCoefficient } from '../physics/body/threeAxisBody';
import type { BluffBodyShape, MemberShape, NetShape, SphereShape } from '../physics/fitting/fittingInput';
import { prepareMember, referenceWidthOf, regimesOf } from '../physics/fitting/memberFamilies';
import type { FairingSurface } from '../physics/section/fairingAligned';
import { emptyStrip } from '../physics/section/memberFamily';
import { toSi } from '../units/convert';

/** What a curve runs over: a Reynolds number, an angle in degrees, or a net's solidity. */
export type CurveAxis = 'reynolds' | 'incidence' | 'windAngle' | 'solidity';

/** One sample of a curve, at a place on its axis. */
export interface CurveSample {
  readonly x: number;
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly regime: number;
}

/** A drag coefficient as a function of what it depends on most, the same functions that the ledger uses. */
export interface CoefficientCurve {
  readonly against: CurveAxis;
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

/** The air that a body or a net stands in, and how the boat heels in it. */
export interface BodyAir {
  readonly heelRad: number;
  readonly speedMs: number;
  readonly kinematicViscosityM2S: number;
}

/** A body by three axes against the angle of the wind from the bow, the boat heeled as she is. */
export function bodyCurve(shape: BluffBodyShape, regime: string, { heelRad }: BodyAir): CoefficientCurve {
  const axes = bodyAxes(shape);
  return {
    against: 'windAngle',
    regimes: [regime],
    at: (x) => {
      const [ahead, abeam] = [Math.cos(toSi(x, 'deg')), Math.sin(toSi(x, 'deg'))];
      const direction = [ahead, abeam * Math.cos(heelRad), abeam * Math.sin(heelRad)] as const;
      const { best, low, high } = bodyCoefficient(axes, direction);
      return { x, best, low, high, regime: 0 };
    },
  };
}

/** A net's coefficient onto its face, on the gross area, against solidity, in the wind that it stands in. */
export function netCurve({ wireDiameter }: NetShape, air: BodyAir): CoefficientCurve {
  return {
    against: 'solidity',
    regimes: ['net'],
    at: (x) => {
      const panel = { areaM2: 1, solidity: x, wireDiameterM: wireDiameter.valueM };
      const trace = netDragAreas(panel, air.speedMs, air.kinematicViscosityM2S);
      return {
        x,
        best: trace?.normalCoefficientBest ?? 0,
        low: trace?.normalCoefficientLow ?? 0,
        high: trace?.normalCoefficientHigh ?? 0,
        regime: 0,
      };
    },
  };
}
