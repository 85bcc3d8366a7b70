import { innerBoundary, outerBoundary } from './boundary';
import { aboutCentroid, boundaryLengthM, regionMoments, without } from './regionMoments';
import {
  chordOf,
  flattestRadiusM,
  outlineProblem,
  thicknessOf,
  type OutlineProblem,
  type SectionOutline,
} from './sectionOutline';
import type { StrutMaterial } from './strutMaterial';

export interface StrutInput {
  readonly outline: SectionOutline;
  /** Inwards from the outer outline, the same all round; half the thickness makes a solid bar. */
  readonly wallM: number;
  /** Between the pins. */
  readonly lengthM: number;
  readonly material: StrutMaterial;
}

export type StrutProblem = OutlineProblem | 'wall-over-half-thickness' | 'material-out-of-range';

/**
 * `load-is-upper-bound` always: an eccentric load, a crooked tube or a side wind fails it earlier. `thin-wall`: under a
 * fiftieth of the diameter the wall may dent first; `flat-sides`: the same rule on the flattest part of a section that is no
 * circle. `yields-first`: too stocky for Euler, the wall yields before. `yield-not-known`: only Euler's load is known.
 */
export interface StrutNotice {
  readonly code: 'load-is-upper-bound' | 'thin-wall' | 'flat-sides' | 'yields-first' | 'yield-not-known';
  readonly values: Readonly<Record<string, number>>;
}

/** The working of a strut. Low and high come from the modulus alone. */
export interface StrutTrace {
  readonly chordM: number;
  readonly thicknessM: number;
  readonly wallM: number;
  readonly lengthM: number;
  readonly modulusPa: number;
  readonly densityKgM3: number;
  readonly yieldStressPa: number | null;
  readonly perimeterM: number;
  readonly enclosedAreaM2: number;
  readonly areaM2: number;
  readonly centroidM: number;
  readonly aboutChordM4: number;
  readonly acrossChordM4: number;
  readonly productM4: number;
  readonly weakM4: number;
  readonly gyrationRadiusM: number;
  readonly slenderness: number;
  readonly bendingStiffnessNm2: number;
  readonly eulerLoadN: number;
  readonly eulerLoadLowN: number;
  readonly eulerLoadHighN: number;
  readonly eulerStressPa: number;
  readonly yieldLoadN: number | null;
  readonly upperBoundN: number;
  readonly meanDiameterM: number;
  readonly flattestRadiusM: number;
  readonly massPerLengthKgM: number;
  readonly massKg: number;
}

export type StrutResult =
  | { readonly kind: 'strut'; readonly trace: StrutTrace; readonly notices: readonly StrutNotice[] }
  | { readonly kind: 'problem'; readonly problem: StrutProblem };

/** Least wall over diameter. Source: strut-practice. */
const leastWallShare = 1 / 50;
/** A section counts as flat-sided from this diameter of its flattest part over its mean one (assumed). */
const flatFrom = 1.2;

/**
 * A tube of any outline as a strut with pinned ends: P = pi^2 E I / L^2 with I the smallest second moment of area, or the
 * yield load s A if that is less. The wall is everything within its thickness of the outer outline, measured square to
 * it (no midline is assumed: a round tube is the exact ring), solid where a tail is thinner than two walls.
 *
 * Valid for a straight, uniform tube loaded along its centroid. An upper bound: it knows nothing of eccentric loads, bends,
 * wind on the side, dents, holes, fittings, welds, or of local buckling beyond its two warnings; a licensed engineer and the
 * class decide. A laminate's modulus is that along the tube.
 *
 * Example: steel ring 40 mm outside, wall 2 mm, E 210 GPa, 1.2 m: I 4.322 cm4, P 62.2 kN.
 * Errors: what the outline, the wall or the material make impossible, tagged. Source: euler-1744, green-theorem, strut-practice.
 */
export function strutOf(input: StrutInput): StrutResult {
  const problem = strutProblem(input);
  if (problem !== null) return { kind: 'problem', problem };
  const trace = traceOf(input);
  return { kind: 'strut', trace, notices: noticesOf(trace) };
}

function strutProblem({ outline, wallM, lengthM, material }: StrutInput): StrutProblem | null {
  const { modulusPa, modulusLowPa, modulusHighPa, densityKgM3, yieldStressPa } = material;
  const numbers = [wallM, lengthM, modulusPa, modulusLowPa, modulusHighPa, densityKgM3, yieldStressPa ?? 1];
  const wrong = outlineProblem(outline);
  if (wrong !== null) return wrong;
  if (!numbers.every(Number.isFinite)) return 'not-a-number';
  if (wallM <= 0 || lengthM <= 0) return 'not-positive';
  if (wallM > thicknessOf(outline) / 2) return 'wall-over-half-thickness';
  const isOrdered = 0 < modulusLowPa && modulusLowPa <= modulusPa && modulusPa <= modulusHighPa;
  return isOrdered && densityKgM3 > 0 && (yieldStressPa ?? 1) > 0 ? null : 'material-out-of-range';
}

function traceOf({ outline, wallM, lengthM, material }: StrutInput): StrutTrace {
  const outer = outerBoundary(outline);
  const perimeterM = boundaryLengthM(outer);
  const whole = regionMoments(outer);
  const wall = without(whole, regionMoments(innerBoundary(outline, wallM)));
  const { areaM2 } = wall;
  const { centroidXM, aboutChordM4, acrossChordM4, productM4, weakM4 } = aboutCentroid(wall);
  const { modulusPa, densityKgM3, yieldStressPa } = material;
  const eulerPerModulusM2 = (Math.PI ** 2 * weakM4) / lengthM ** 2;
  const gyrationRadiusM = Math.sqrt(weakM4 / areaM2);
  const eulerLoadN = eulerPerModulusM2 * modulusPa;
  const yieldLoadN = yieldStressPa === null ? null : yieldStressPa * areaM2;
  const massPerLengthKgM = densityKgM3 * areaM2;
  return {
    chordM: chordOf(outline),
    thicknessM: thicknessOf(outline),
    wallM,
    lengthM,
    modulusPa,
    densityKgM3,
    yieldStressPa,
    perimeterM,
    enclosedAreaM2: whole.areaM2,
    areaM2,
    centroidM: centroidXM,
    aboutChordM4,
    acrossChordM4,
    productM4,
    weakM4,
    gyrationRadiusM,
    slenderness: lengthM / gyrationRadiusM,
    bendingStiffnessNm2: modulusPa * weakM4,
    eulerLoadN,
    eulerLoadLowN: eulerPerModulusM2 * material.modulusLowPa,
    eulerLoadHighN: eulerPerModulusM2 * material.modulusHighPa,
    eulerStressPa: eulerLoadN / areaM2,
    yieldLoadN,
    upperBoundN: Math.min(eulerLoadN, yieldLoadN ?? Infinity),
    meanDiameterM: perimeterM / Math.PI,
    flattestRadiusM: flattestRadiusM(outline),
    massPerLengthKgM,
    massKg: massPerLengthKgM * lengthM,
  };
}

function noticesOf(trace: StrutTrace): StrutNotice[] {
  const { wallM, meanDiameterM, eulerLoadN, yieldLoadN, upperBoundN } = trace;
  const flatDiameterM = 2 * trace.flattestRadiusM;
  const notices: StrutNotice[] = [{ code: 'load-is-upper-bound', values: { upperBoundN } }];
  const leastWallM = leastWallShare * meanDiameterM;
  if (wallM < leastWallM) notices.push({ code: 'thin-wall', values: { wallM, leastWallM } });
  const leastFlatWallM = leastWallShare * flatDiameterM;
  const isFlat = flatDiameterM > flatFrom * meanDiameterM && wallM < leastFlatWallM;
  if (isFlat) notices.push({ code: 'flat-sides', values: { wallM, leastWallM: leastFlatWallM } });
  if (yieldLoadN === null) notices.push({ code: 'yield-not-known', values: {} });
  else if (yieldLoadN < eulerLoadN)
    notices.push({ code: 'yields-first', values: { yieldLoadN, eulerLoadN } });
  return notices;
}
