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
    'src/physics/fitting/sumFitting.ts',
    '1',
    'const stowedCounts = duty < 1 &&',
    'a duty of one has been answered before; no duty is larger',
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
];

/** Why a survivor cannot be noticed; null for a gap in the tests. */
export function whyEquivalent({ file, text, context }: Finding): string | null {
  const known = equivalents.find(
    ([path, constant, line]) => path === file && constant === text && context.startsWith(line),
  );
  return known?.[3] ?? null;
}
