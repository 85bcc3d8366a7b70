import { innerBoundary, outerBoundary } from '../../src/physics/strut/boundary';
import { aboutCentroid, regionMoments, without } from '../../src/physics/strut/regionMoments';
import { emptyPlace, upperPlace, type SectionOutline } from '../../src/physics/strut/sectionOutline';
import { strutOf, type StrutInput, type StrutTrace } from '../../src/physics/strut/strut';
import { strutMaterials } from '../../src/physics/strut/strutMaterial';
import { toLastDigit, within, type PublishedCheck, type Row } from './publishedCheck';

const topic = 'Struts';

/** A strut of a material known by its modulus alone. */
function strutWith(modulusPa: number, input: Omit<StrutInput, 'material'>): StrutTrace {
  const result = strutOf({
    ...input,
    material: {
      ...strutMaterials.stainless316,
      modulusPa,
      modulusLowPa: modulusPa,
      modulusHighPa: modulusPa,
      yieldStressPa: null,
    },
  });
  if (result.kind === 'problem') throw new Error(`the check has an impossible strut: ${result.problem}`);
  return result.trace;
}

const pipe = (): StrutTrace =>
  strutWith(210e9, { outline: { kind: 'round', diameterM: 0.04 }, wallM: 0.002, lengthM: 1.2 });

const gere = toLastDigit(
  {
    topic,
    kind: 'external',
    source: {
      title: 'Gere, Mechanics of Materials, 7th ed., solutions',
      where: 'problem 11.4-2: steel pipe 40 and 36 mm, 1.2 m, 210 GPa, pinned',
    },
    confidence: 'read',
    unit: 'kN',
  },
  [['strut-gere-load', 'critical load', '62.2', () => pipe().eulerLoadN / 1000]],
).concat(
  toLastDigit(
    {
      topic,
      kind: 'external',
      source: { title: 'Gere, Mechanics of Materials, 7th ed., solutions', where: 'problem 11.4-2' },
      confidence: 'read',
      unit: '1000 mm4',
    },
    [['strut-gere-second-moment', 'second moment of area of the pipe', '43.22', () => pipe().weakM4 * 1e9]],
  ),
);

const [inchM, poundForceN] = [0.0254, 4.4482216152605];
const psiPa = poundForceN / inchM ** 2;

const hibbeler = toLastDigit(
  {
    topic,
    kind: 'external',
    source: {
      title: 'Hibbeler, Mechanics of Materials',
      where: 'example 13.1: steel tube, radii 3 and 2.75 in, 24 ft, 29000 ksi, pinned',
    },
    confidence: 'from memory',
    unit: 'kip',
  },
  [
    [
      'strut-hibbeler-load',
      'critical load',
      '64.5',
      () =>
        strutWith(29e6 * psiPa, {
          outline: { kind: 'round', diameterM: 6 * inchM },
          wallM: 0.25 * inchM,
          lengthM: 288 * inchM,
        }).eulerLoadN /
        (1000 * poundForceN),
    ],
  ],
);

/** Second moments of the wall inside an ellipse of outer axes 100 x 50 mm, wall 2 mm: cm4. */
const ellipse: SectionOutline = { kind: 'ellipse', chordM: 0.1, thicknessM: 0.05 };
const ellipseWall = () =>
  without(regionMoments(outerBoundary(ellipse)), regionMoments(innerBoundary(ellipse, 0.002)));

/**
 * Roark's hollow ellipse of uniform wall, by its half axes to the middle of the wall (a the one that bends).
 * A = pi t (a+b) (1 + K1 r), I = pi/4 t a^2 (a+3b) (1 + K2 r) + pi/16 t^3 (3a+b) (1 + K3 r), r = ((a-b)/(a+b))^2.
 */
export function roarkEllipse(a: number, b: number, t: number): { areaM2: number; secondM4: number } {
  const r = ((a - b) / (a + b)) ** 2;
  const k1 = 0.2464 + 0.002222 * (a / b + b / a);
  const k2 = 0.1349 + 0.1279 * (a / b) - 0.01284 * (a / b) ** 2;
  const k3 = 0.1349 + 0.1279 * (b / a) - 0.01284 * (b / a) ** 2;
  return {
    areaM2: Math.PI * t * (a + b) * (1 + k1 * r),
    secondM4:
      (Math.PI / 4) * t * a * a * (a + 3 * b) * (1 + k2 * r) +
      (Math.PI / 16) * t ** 3 * (3 * a + b) * (1 + k3 * r),
  };
}

const roarkSource = {
  topic,
  kind: 'external',
  source: {
    title: 'Young and Budynas, Roark’s Formulas for Stress and Strain',
    where: 'table A.1, hollow ellipse of uniform wall: the formula for 100 x 50 x 2 mm',
  },
  confidence: 'from memory',
} as const;
const roarkReason =
  'the handbook fits elliptic integrals, and takes the middle of the wall for an ellipse: 0.5 %';
const roark = [
  ...within({ ...roarkSource, unit: 'cm2' }, { relative: 0.005 }, roarkReason, [
    ['strut-roark-area', 'area of an elliptical tube', '4.7223', () => ellipseWall().areaM2 * 1e4],
  ]),
  ...within({ ...roarkSource, unit: 'cm4' }, { relative: 0.005 }, roarkReason, [
    [
      'strut-roark-strong',
      'second moment, strong axis',
      '47.496',
      () => aboutCentroid(ellipseWall()).acrossChordM4 * 1e8,
    ],
    [
      'strut-roark-weak',
      'second moment, weak axis',
      '15.844',
      () => aboutCentroid(ellipseWall()).aboutChordM4 * 1e8,
    ],
  ]),
];

const fairingArea = (ratio: number): number =>
  regionMoments(outerBoundary({ kind: 'fairing', chordM: 1, thicknessM: ratio })).areaM2;

const fourDigit = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'NACA four-digit sections',
      where: 'area over t c: 10 (2/3 0.2969 - 0.1260/2 - 0.3516/3 + 0.2843/4 - 0.1015/5)',
    },
    confidence: 'derived',
    unit: '1',
  },
  [
    ['strut-fairing-area-0.12', 'area over t c, t/c 0.12', '0.685083', () => fairingArea(0.12) / 0.12],
    ['strut-fairing-area-0.25', 'area over t c, t/c 0.25', '0.685083', () => fairingArea(0.25) / 0.25],
  ],
);

/** Ordinate of the outline that the wall is laid on, per cent of the chord, by its own parameter. */
function ordinate(ratio: number, percent: number): number {
  const u = Math.acos(1 - (2 * percent) / 100);
  return 100 * upperPlace({ kind: 'fairing', chordM: 1, thicknessM: ratio }, u, emptyPlace()).yM;
}

const ordinates = within(
  {
    topic,
    kind: 'transcription',
    source: { title: 'NACA four-digit sections', where: 'ordinates in per cent of chord, 0012 and 0018' },
    confidence: 'from memory',
    unit: '%',
  },
  { absolute: 0.002 },
  'printed to 0.001 % of chord; the ordinates were rounded when they were made',
  (
    [
      [0.12, 2.5, '2.615'],
      [0.12, 10, '4.683'],
      [0.12, 40, '5.803'],
      [0.12, 70, '3.664'],
      [0.18, 30, '9.003'],
      [0.18, 60, '6.845'],
    ] as const
  ).map(([ratio, x, printed]): Row => [
    `strut-ordinate-${ratio}-${x}`,
    `ordinate of the outline, t/c ${ratio}, at ${x} % chord`,
    printed,
    () => ordinate(ratio, x),
  ]),
);

const presetRows = [
  ['aluminium6082', 'EN 1999-1-1, EN AW-6082 T6', '70', '2700', '250'],
  ['stainless316', 'EN 1993-1-4 and EN 10088-1, 1.4401', '200', '8000', '220'],
  ['titanium6al4v', 'data sheets, Ti-6Al-4V annealed', '114', '4430', '830'],
] as const;

const presets = presetRows.flatMap(([name, title, modulus, density, strength]) => {
  const common = {
    topic,
    kind: 'transcription',
    source: { title, where: 'modulus, density and strength' },
    confidence: 'from memory',
  } as const;
  const material = strutMaterials[name];
  return [
    ...toLastDigit({ ...common, unit: 'GPa' }, [
      [`strut-modulus-${name}`, `modulus of ${name}`, modulus, () => material.modulusPa / 1e9],
    ]),
    ...toLastDigit({ ...common, unit: 'kg/m3' }, [
      [`strut-density-${name}`, `density of ${name}`, density, () => material.densityKgM3],
    ]),
    ...toLastDigit({ ...common, unit: 'MPa' }, [
      [
        `strut-strength-${name}`,
        `yield stress of ${name}`,
        strength,
        () => (material.yieldStressPa ?? NaN) / 1e6,
      ],
    ]),
  ];
});

export const strutChecks: readonly PublishedCheck[] = [
  ...gere,
  ...hibbeler,
  ...roark,
  ...fourDigit,
  ...ordinates,
  ...presets,
];
