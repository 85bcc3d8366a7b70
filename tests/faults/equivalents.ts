import type { Mutant } from './mutationSurvey';
import type { Finding } from './survey';

/** Constants that make no difference when they are a tenth larger, by file and the beginning of their line. */
const equivalents: readonly (readonly [file: string, text: string, line: string, reason: string])[] = [
  [
    'src/physics/section/roundBar.ts',
    '1',
    'const inclined = cosine < 1 ?',
    'no cosine is above one, and the logarithm of one is zero',
  ],
  [
    'src/physics/section/ellipse.ts',
    '1',
    'const smooth = roundBarSurface(0, 1);',
    'no roughness over any diameter is zero',
  ],
  [
    'src/physics/section/wire.ts',
    '1',
    'const smooth = roundBarSurface(0, 1);',
    'no roughness over any diameter is zero',
  ],
  [
    'src/physics/section/fairingBand.ts',
    '1',
    'Math.log(reynoldsFrom / Math.max(',
    'keeps a logarithm finite, where the band has long reached its full widening',
  ],
  [
    'src/physics/fitting/evaluateFitting.ts',
    '1',
    'deployed: dutyFraction === 1 ? mean :',
    'saves time: at a duty of one the mean is the deployed force',
  ],
  [
    'src/physics/fitting/memberReach.ts',
    '2',
    'const middleM = heightAlong(geometry, (geometry.dryFrom +',
    'of these shapes it is asked only whether the air stands still, as it does at all heights or, by chance, at one',
  ],
  [
    'src/physics/member/pointRules.ts',
    '1',
    'return even === 1 ? 1 :',
    'fineness of a quadrature: a level stretch, which meets the same air all along, takes seven points for one',
  ],
  [
    'src/physics/section/fairingBand.ts',
    '182',
    'return Float64Array.from({ length: 182 * columnCount',
    'adds rows beyond 181 deg, which nothing reads',
  ],
  [
    'src/physics/member/integrateMember.ts',
    '1',
    'kinematicViscosityM2S: 1,',
    'fills a scratch object, and is overwritten before it is read',
  ],
  [
    'src/physics/member/integrateMember.ts',
    '1',
    'inclinationCosine: 1,',
    'fills a scratch object, and is overwritten before it is read',
  ],
  [
    'src/physics/member/sectionNose.ts',
    '1',
    'const scale = size > 0 ? 1 / size : 0;',
    'of the nose only the direction counts, which no length changes',
  ],
  [
    'src/physics/numerics/cubicTable.ts',
    '1',
    'const middle = (low + high + 1) >> 1;',
    'the shift drops what is no whole number',
  ],
  [
    'src/physics/section/fairing.ts',
    '90',
    'if (degrees < leastSquareForceDeg || degrees >= 90)',
    'the larger of two lifts counts, and beyond 90 deg that is the table’s',
  ],
  [
    'src/physics/member/quadraturePoints.ts',
    '1.0001',
    'if (ratio < 1.0001) return 1;',
    'fineness of a quadrature: some stretches take fewer points and stay within the 1e-3 that is promised',
  ],
  [
    'src/physics/member/quadraturePoints.ts',
    '2',
    'if (ratio < 2) return 3;',
    'fineness of a quadrature: some stretches take fewer points and stay within the 1e-3 that is promised',
  ],
  [
    'src/physics/member/quadraturePoints.ts',
    '4',
    'if (ratio < 4) return 4;',
    'fineness of a quadrature: some stretches take fewer points and stay within the 1e-3 that is promised',
  ],
  [
    'src/physics/member/quadraturePoints.ts',
    '10',
    'return ratio < 10 ? 6 : 9;',
    'fineness of a quadrature: some stretches take fewer points and stay within the 1e-3 that is promised',
  ],
  [
    'src/physics/numerics/flatNeighbourhood.ts',
    '64',
    'const samples = 64;',
    'fineness of a search, whose ends stay within its tests’ tolerance',
  ],
  [
    'src/physics/numerics/flatNeighbourhood.ts',
    '1e-6',
    'const tolerance = 1e-6;',
    'fineness of a search, whose ends stay within its tests’ tolerance',
  ],
  [
    'src/physics/strut/boundary.ts',
    '200',
    'const searchSteps = 200;',
    'fineness of a search, which its tests hold to a tolerance',
  ],
  [
    'src/physics/strut/boundary.ts',
    '60',
    'const halvings = 60;',
    'fineness of a search, which its tests hold to a tolerance',
  ],
  [
    'src/physics/strut/replaceTube.ts',
    '60',
    'const halvings = 60;',
    'fineness of a search, which its tests hold to a tolerance',
  ],
  [
    'src/physics/strut/replaceTube.ts',
    '1e-9',
    'const smallestStep = 1e-9;',
    'fineness of a search, which its tests hold to a tolerance',
  ],
  [
    'src/physics/strut/sectionOutline.ts',
    '200',
    'const radiusSteps = 200;',
    'fineness of a search, which its tests hold to a tolerance',
  ],
  [
    'src/physics/strut/roomAboutPivot.ts',
    '400',
    'const steps = 400;',
    'fineness of a search, which its tests hold to a tolerance',
  ],
  [
    'src/physics/strut/boundary.ts',
    '1',
    'return yM > 0 && xM < lastXM && wallM * curvaturePerM < 1;',
    'lets in a fold behind the nose, whose sliver is under 1e-5 of the area',
  ],
  [
    'src/physics/wind/windProfile.ts',
    '2',
    'while (speedAt(low) > speedMs) low /= 2;',
    'step of a bracket that is closed in afterwards',
  ],
  [
    'src/physics/wind/windProfile.ts',
    '2',
    'let low = speedMs / 2;',
    'start of a bracket that is closed in afterwards',
  ],
  [
    'src/physics/wind/windProfile.ts',
    '1.2',
    'while (speedAt(high) < speedMs && high < strongestWindMs) high =',
    'step of a bracket that is closed in afterwards',
  ],
  [
    'src/physics/wind/windProfile.ts',
    '200',
    'const strongestWindMs = 200;',
    'no wind over the sea comes near it',
  ],
  [
    'src/physics/wind/windProfile.ts',
    '1e-14',
    'if (Math.abs(next - friction) <= 1e-14 * next) return next;',
    'when a fixed point counts as reached',
  ],
  [
    'src/physics/wind/windProfile.ts',
    '0.035',
    'let friction = 0.035 * speedAt10Ms;',
    'start of a fixed point that ends at the same place',
  ],
  [
    'src/physics/envelope/uniformWind.ts',
    '1',
    'const asWritten: Ranged = {',
    'low and high end of an exposure, whose doubt is left out with all own ones',
  ],
  [
    'src/physics/doubt/combinedEnds.ts',
    '3',
    'const change = value / (3 * variance - 3 * lopsidedThird',
    'slope in Newton’s method, which ends at the same root a step or two later',
  ],
];

/** Why a survivor cannot be noticed; null for a gap in the tests. */
export function whyEquivalent({ file, text, context }: Finding): string | null {
  const known = equivalents.find(
    ([path, constant, line]) => path === file && constant === text && context.startsWith(line),
  );
  return known?.[3] ?? null;
}

/** Mutants that make no difference, by file, replaced text and what it became. */
const equivalentMutants: readonly (readonly [
  file: string,
  original: string,
  replacement: string,
  reason: string,
])[] = [
  [
    'src/physics/section/roundBarSection.ts',
    'false',
    'true',
    'whether an incidence is worked out, which a round bar does not read',
  ],
  [
    'src/physics/section/ellipse.ts',
    '!withBand',
    'false',
    'only saves the time of edges that nobody asked for',
  ],
  ['src/physics/section/ellipse.ts', 'true', 'false', 'a default that every caller overrides'],
  [
    'src/physics/doubt/combinedEnds.ts',
    'up === 0 && down === 0',
    'false',
    'a source that changes nothing adds nothing to any moment',
  ],
  [
    'src/physics/member/sectionNose.ts',
    'x * x + y * y + z * z',
    'x * x + y * y - z * z',
    'of the nose only the direction counts, which no length changes',
  ],
  [
    'src/physics/member/sectionNose.ts',
    'x * x + y * y',
    'x * x - y * y',
    'of the nose only the direction counts, which no length changes',
  ],
  [
    'src/physics/member/sectionNose.ts',
    'x * x',
    'x / x',
    'of the nose only the direction counts, which no length changes',
  ],
  [
    'src/physics/member/sectionNose.ts',
    'y * y',
    'y / y',
    'of the nose only the direction counts, which no length changes',
  ],
  [
    'src/physics/member/sectionNose.ts',
    'z * z',
    'z / z',
    'of the nose only the direction counts, which no length changes',
  ],
  [
    'src/physics/member/sectionNose.ts',
    '1 / size',
    '1 * size',
    'of the nose only the direction counts, which no length changes',
  ],
  [
    'src/physics/section/rectangleSection.ts',
    'Math.abs(wing) > Math.abs(plain)',
    'Math.abs(wing) >= Math.abs(plain)',
    'of two equal lifts either is the larger',
  ],
  [
    'src/physics/section/crossFlowDoubt.ts',
    'inclinationCosine >= Math.SQRT1_2',
    'false',
    'only saves time: from there on the steps below give nothing',
  ],
  [
    'src/physics/section/crossFlowDoubt.ts',
    'inclinationCosine >= Math.SQRT1_2',
    'inclinationCosine > Math.SQRT1_2',
    'only saves time: from there on the steps below give nothing',
  ],
  [
    'src/physics/section/wire.ts',
    'logReynolds < logRegimeEnds.creeping',
    'logReynolds <= logRegimeEnds.creeping',
    'one Reynolds number, at which rounding decides',
  ],
  [
    'src/physics/section/wire.ts',
    'logReynolds < logRegimeEnds.dip',
    'logReynolds <= logRegimeEnds.dip',
    'one Reynolds number, at which rounding decides',
  ],
];

/** Why a mutant cannot be noticed; null for a gap in the tests. */
export function whyEquivalentMutant({ file, original, replacement }: Mutant): string | null {
  const known = equivalentMutants.find(
    ([path, before, after]) => path === file && before === original && after === replacement,
  );
  return known?.[3] ?? null;
}
