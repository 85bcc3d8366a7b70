import { enRoundBarCoefficient, inclinedCrisisExponent } from '../../src/physics/section/roundBar';
import { roughnessByFinish, type Finish } from '../../src/physics/section/roughness';
import { fromSi } from '../../src/units/convert';
import { curveAt, roundBarSeries, roundBarTopic as topic } from './roundBarCurves';
import { toLastDigit, within, type PublishedCheck, type Row } from './publishedCheck';

/** [Re, k/b, cf,0] */
const enTable = [
  [1e5, 1e-3, '1.2000'],
  [2e5, 1e-5, '1.0470'],
  [3e5, 1e-5, '0.5935'],
  [3e5, 1e-3, '0.7448'],
  [4e5, 1e-5, '0.4000'],
  [5e5, 5e-4, '0.7291'],
  [1e6, 1e-5, '0.4800'],
  [1e6, 1e-4, '0.6600'],
  [1e6, 1e-3, '0.8400'],
  [1e6, 1e-2, '1.0200'],
  [1.164e6, 5e-4, '0.7965'],
  [1e7, 1e-3, '0.9429'],
] as const;

const enChecks = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'EN 1991-1-4:2005, clause 7.9.2', where: 'fig. 7.28, cf,0 of circular cylinders' },
    confidence: 'second-hand',
    unit: '1',
  },
  enTable.map(([Re, ratio, printed]): Row => [
    `bar-en-${Re}-${ratio}`,
    `cf,0 at Re ${Re}, k/b ${ratio}`,
    printed,
    () => enRoundBarCoefficient(Re, ratio),
  ]),
);

const finishesMm: readonly (readonly [Finish, string])[] = [
  ['glass', '0.0015'],
  ['polishedMetal', '0.002'],
  ['finePaint', '0.006'],
  ['sprayPaint', '0.02'],
  ['brightSteel', '0.05'],
  ['castIron', '0.2'],
  ['galvanisedSteel', '0.2'],
  ['smoothConcrete', '0.2'],
  ['planedWood', '0.5'],
  ['roughConcrete', '1.0'],
  ['roughSawnWood', '2.0'],
  ['rust', '2.0'],
  ['brickwork', '3.0'],
];

const roughnessChecks = within(
  {
    topic,
    kind: 'transcription',
    source: { title: 'EN 1991-1-4:2005', where: 'table 7.13, equivalent roughness k' },
    confidence: 'second-hand',
    unit: 'mm',
  },
  { relative: 1e-12 },
  'a table copied, not computed: the number itself',
  finishesMm.map(([finish, printed]): Row => [
    `bar-roughness-${finish}`,
    `roughness height, ${finish}`,
    printed,
    () => fromSi(roughnessByFinish[finish], 'mm'),
  ]),
);

/** Handbook values for a round rod, on frontal area. */
const handbook: readonly PublishedCheck[] = (
  [
    ['laminar', '1.2', 1e5],
    ['turbulent', '0.3', 5e5],
  ] as const
).map(([name, printedText, Re]): PublishedCheck => ({
  id: `bar-handbook-${name}`,
  topic,
  kind: 'external',
  source: { title: 'Cengel and Cimbala, Fluid Mechanics', where: 'table 11-1, round rod' },
  confidence: 'second-hand',
  what: `round rod, ${name} (taken at Re ${Re})`,
  unit: '1',
  printed: Number(printedText),
  printedText,
  tolerance: { absolute: 0.05 },
  toleranceReason: 'half a unit of the last printed digit; the handbook names no Reynolds number',
  compute: () => curveAt(Re).best,
  series: roundBarSeries('Cengel and Cimbala, Fluid Mechanics', 'handbook', Re),
}));

const smoothCable: PublishedCheck = {
  id: 'bar-hoerner-smooth-cable',
  topic,
  kind: 'measurement',
  source: { title: 'Hoerner, Fluid-Dynamic Drag (1965)', where: 'p. 4-5, cable of strand ratio 0 (smooth)' },
  confidence: 'second-hand',
  what: 'smooth round cable at Re about 1e4',
  unit: '1',
  printed: 1.19,
  printedText: '1.19',
  tolerance: { relative: 0.05 },
  toleranceReason: 'inside low to high, give or take 5 % of a digitised chart; "about" Re 1e4',
  compute: () => curveAt(1e4).best,
  band: () => curveAt(1e4),
  series: roundBarSeries('Hoerner, Fluid-Dynamic Drag (1965)', 'measured', 1e4),
};

/** Where inclination moves the crisis: the exponent against the two numbers it was taken from. */
const inclinedCrisis = within(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'Bursnall and Loftin 1951, NACA TN 2463',
      where: 'critical Re 3.65e5 at 0, 1.0e5 at 60 deg',
    },
    confidence: 'from memory',
    unit: '1',
  },
  { absolute: 0.05e5 },
  'half a unit of the last printed digit',
  [
    [
      'bar-inclined-crisis',
      'critical Reynolds number at 60 deg of yaw',
      '1.0e5',
      () => {
        const drag = curveAt(1e5, 0, 0.5);
        return 3.65e5 / (10 ** drag.logCrisisReynolds / 1e5);
      },
    ],
    [
      'bar-inclined-exponent',
      'the same from the exponent alone',
      '1.0e5',
      () => 3.65e5 * 0.5 ** inclinedCrisisExponent,
    ],
  ],
);

export const roundBarChecks: readonly PublishedCheck[] = [
  ...enChecks,
  ...roughnessChecks,
  ...handbook,
  smoothCable,
  ...inclinedCrisis,
];
