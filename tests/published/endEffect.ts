import {
  dnvEndFactor,
  effectiveSlenderness,
  endFactor,
  enEndFactor,
} from '../../src/physics/section/endEffect';
import { boatVector } from '../../src/physics/vector/vector3';
import {
  inSeries,
  toLastDigit,
  type Band,
  type PublishedCheck,
  type Row,
  type SeriesPoint,
  within,
} from './publishedCheck';
import { curveAt } from './roundBarCurves';
import { bar, conditionOf, evaluate, fluid, memberOf } from './support';

const topic = 'Finite length';

const enPoints = [
  [1, '0.6000'],
  [2, '0.6301'],
  [5, '0.6699'],
  [10, '0.7000'],
  [20, '0.7748'],
  [29.543, '0.8169'],
  [37.5, '0.8426'],
  [50, '0.8737'],
  [60, '0.8934'],
  [70, '0.9100'],
] as const;

const enChecks = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'EN 1991-1-4:2005, clause 7.13', where: 'fig. 7.36, psi for a solid item' },
    confidence: 'second-hand',
    unit: '1',
  },
  enPoints.map(([lambda, printed]): Row => [
    `ends-en-${lambda}`,
    `psi at lambda ${lambda}`,
    printed,
    () => enEndFactor(lambda),
  ]),
);

const enLimit = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'EN 1991-1-4:2005, clause 7.13', where: 'table 7.16: lambda = min(l/b, 70) under 15 m' },
    confidence: 'second-hand',
    unit: '1',
  },
  [
    [
      'ends-en-limit',
      'psi of a cylinder of l/b 200, entered with 70',
      '0.91',
      () => enEndFactor(effectiveSlenderness(200, ['free', 'free'])),
    ],
  ],
);

/** log10 of Re 1e5 and 1e6, on the two sides of the table's 2e5. */
const subcritical = 5;
const supercritical = 6;

/** [l/d, Re below 2e5, Re from 2e5] */
const dnvRows = [
  [2, '0.58', '0.80'],
  [5, '0.62', '0.80'],
  [10, '0.68', '0.82'],
  [20, '0.74', '0.90'],
  [40, '0.82', '0.98'],
  [50, '0.87', '0.99'],
  [100, '0.98', '1.00'],
] as const;

const dnvChecks = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'DNV-RP-C205, edition 2025-04', where: 'reduction factor kappa, circular cylinder' },
    confidence: 'second-hand',
    unit: '1',
  },
  dnvRows.flatMap(([ratio, below, above]): Row[] => [
    [`ends-dnv-${ratio}-sub`, `kappa at l/d ${ratio}, Re 1e5`, below, () => dnvEndFactor(ratio, subcritical)],
    [
      `ends-dnv-${ratio}-super`,
      `kappa at l/d ${ratio}, Re 1e6`,
      above,
      () => dnvEndFactor(ratio, supercritical),
    ],
  ]),
);

const dnvEnds = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'DNV-RP-C205, edition 2025-04',
      where: 'one end on a large wall: length doubled; both ends: kappa 1',
    },
    confidence: 'from memory',
    unit: '1',
  },
  [
    [
      'ends-dnv-one-wall',
      'kappa at l/d 10 with one end on a wall, Re 1e5',
      '0.74',
      () => dnvEndFactor(effectiveSlenderness(10, ['surface', 'free']), subcritical),
    ],
    [
      'ends-dnv-two-walls',
      'kappa at l/d 10 between two walls, Re 1e5',
      '1',
      () => dnvEndFactor(effectiveSlenderness(10, ['surface', 'surface']), subcritical),
    ],
  ],
);

/** Drag coefficient on diameter x length of a smooth bar with two free ends at Re 8.8e4, through the whole fitting. */
function freeBarAt(lengthOverDiameter: number): number {
  const diameterM = 0.1;
  const fitting = bar({
    diameterM,
    end: boatVector(0, 0, 1 + lengthOverDiameter * diameterM),
    ends: ['free', 'free'],
  });
  const air = fluid(1.225, (10 * diameterM) / 8.8e4);
  const { dragAreaM2 } = memberOf(evaluate(fitting, conditionOf(), air));
  return dragAreaM2 / (lengthOverDiameter * diameterM * diameterM);
}

/** Half-width beside the choice of method, as the doubt of a free end has it. */
const tableScatter = 0.04;

/** The band of a free end: the other method's factor and the scatter of such tables, added in squares. */
function endSeries(source: string, lengthOverDiameter: number, coefficient: number): SeriesPoint {
  const range = (): Band => {
    const log = Math.log10(8.8e4);
    const best = endFactor('dnv', lengthOverDiameter, log);
    const other = endFactor('en', lengthOverDiameter, log) / best - 1;
    const down = Math.hypot(Math.min(other, 0), tableScatter);
    const up = Math.hypot(Math.max(other, 0), tableScatter);
    return { low: coefficient * best * (1 - down), high: coefficient * best * (1 + up) };
  };
  return { source, basis: 'measured', regime: 'round bar, two free ends', range };
}

const wieselsbergerRows = [
  [2, '0.68'],
  [3, '0.74'],
  [5, '0.74'],
  [10, '0.82'],
  [20, '0.91'],
  [40, '0.98'],
] as const;
const wieselsberger = {
  topic,
  kind: 'measurement',
  source: {
    title: "Wieselsberger's finite cylinders, in Matthews, Aeronautical Engineer's Data Book",
    where: 'fig. 5.13b, p. 95, Re 8.8e4',
  },
  confidence: 'read',
  unit: '1',
} as const;
const tunnelScatter = [{ relative: 0.05 }, 'read from a chart of tunnel tests, two figures: 5 %'] as const;
const freeRow = ([ratio, printed]: readonly [number, string]): Row => [
  `ends-wieselsberger-${ratio}`,
  `Cd of a cylinder of l/d ${ratio}, both ends free`,
  printed,
  () => freeBarAt(ratio),
];

const wieselsbergerChecks: PublishedCheck[] = inSeries(
  [
    ...within(wieselsberger, ...tunnelScatter, wieselsbergerRows.map(freeRow)),
    ...within(wieselsberger, ...tunnelScatter, [freeRow([1, '0.63'])]).map((check) => ({
      ...check,
      knownDisagreement: {
        reason:
          'the table of finite length starts at l/d 2 and is held below; the fitting gives a notice there, and is 10 % high at l/d 1',
        relative: 0.105,
      },
    })),
  ],
  (index) =>
    endSeries(
      'Wieselsberger',
      [...wieselsbergerRows.map(([ratio]) => ratio), 1][index] ?? NaN,
      curveAt(8.8e4).best,
    ),
);

const jorgensenRows = [
  [2, '0.58'],
  [4, '0.62'],
  [8, '0.66'],
  [12, '0.70'],
  [20, '0.76'],
  [28, '0.78'],
  [40, '0.82'],
] as const;

const jorgensenChecks = inSeries(
  within(
    {
      topic,
      kind: 'measurement',
      source: { title: 'Jorgensen 1973, NASA TN D-6996', where: 'fig. 4, ratio to the infinite cylinder' },
      confidence: 'second-hand',
      unit: '1',
    },
    { absolute: 0.02 },
    'read by eye from the chart: 0.02',
    jorgensenRows.map(([ratio, printed]): Row => [
      `ends-jorgensen-${ratio}`,
      `factor of a cylinder of l/d ${ratio}, both ends free`,
      printed,
      () => dnvEndFactor(ratio, Math.log10(8.8e4)),
    ]),
  ),
  (index) => endSeries('Jorgensen 1973, NASA TN D-6996', jorgensenRows[index]?.[0] ?? NaN, 1),
).map((check) => ({
  ...check,
  leftOut:
    'taken from Goldstein 1938 at Re 88 000, and so Wieselsberger’s cylinders once more: 0.82, 0.91, 0.98 over 1.2 are its 0.68, 0.76, 0.82',
}));

export const endEffectChecks: readonly PublishedCheck[] = [
  ...enChecks,
  ...enLimit,
  ...dnvChecks,
  ...dnvEnds,
  ...wieselsbergerChecks,
  ...jorgensenChecks,
];
