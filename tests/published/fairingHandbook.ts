import { fairingFormFactor } from '../../src/physics/section/fairingAligned';
import { inducedAngleRad } from '../../src/physics/section/fairingSpan';
import { fairingAt, fairingTopic as topic, finiteFairingAt, one } from './fairingSupport';
import { fairingSeries } from './fairingMeasured';
import { inSeries, within, type KnownDisagreement, type PublishedCheck, type Row } from './publishedCheck';

const dataBook = inSeries(
  within(
    {
      topic,
      kind: 'external',
      source: {
        title: "Aeronautical Engineer's Data Book",
        where: 'p. 95, fig. 5.13: drag of standard shapes',
      },
      confidence: 'read',
      unit: '1',
    },
    { absolute: 0.0005 },
    'half a unit of the last printed digit',
    [
      [
        'fairing-data-book-least',
        'airfoil section, least (0012, smooth, Re 5e6)',
        '0.006',
        () => fairingAt(0.12, 5e6, 0).drag,
      ],
      [
        'fairing-data-book-stall',
        'airfoil section, at stall (0012, Re 1e6, 15 deg)',
        '0.025',
        () => fairingAt(0.12, 1e6, 15).drag,
      ],
    ],
  ),
  (index) =>
    fairingSeries("Aeronautical Engineer's Data Book", 'handbook', 'drag', () =>
      index === 0 ? fairingAt(0.12, 5e6, 0) : fairingAt(0.12, 1e6, 15),
    ),
);

const strut = within(
  {
    topic,
    kind: 'external',
    source: {
      title: 'Cengel and Cimbala, Fluid Mechanics',
      where: 'streamlined strut: least drag at D/L about 0.25',
    },
    confidence: 'second-hand',
    unit: '1',
  },
  { relative: 0.02 },
  '"about": drag on frontal area at 0.25 is within 2 % of the least',
  [
    [
      'fairing-strut-optimum',
      'form factor over t/c at 0.25, against the least (6.88)',
      '6.88',
      () => fairingFormFactor(0.25) / 0.25,
    ],
  ],
);

/** Anderson’s wing: aspect ratio 8, taper 0.8, tau = delta = 0.055, at 5 deg of incidence CL 0.4335. */
const anderson = within(
  {
    topic,
    kind: 'external',
    source: {
      title: 'Anderson, Fundamentals of Aerodynamics',
      where: 'example 5.1: aspect ratio 8, delta 0.055',
    },
    confidence: 'from memory',
    unit: '1',
  },
  { absolute: 0.00001 },
  'the last printed digit of the lift it starts from',
  [
    [
      'fairing-anderson-induced',
      'induced drag at CL 0.4335',
      '0.00789',
      () => 0.4335 * inducedAngleRad(0.4335, 8, 1 / 1.055),
    ],
  ],
);

/**
 * Viterna and Corrigan after the stall, aspect ratio 10, from the model’s own stall point at 15 deg (CL 1.10, CD 0.063):
 * CDmax 1.29, CD = CDmax sin^2 a + B2 cos a. [incidence, CD, how far the model is off]
 */
const viternaRows: readonly (readonly [
  degrees: number,
  printed: string,
  disagreement: KnownDisagreement | null,
])[] = [
  [30, '0.3015', { reason: afterStall(), relative: 0.7 }],
  [45, '0.6279', { reason: afterStall(), relative: 0.521 }],
  [60, '0.9554', { reason: afterStall(), relative: 0.241 }],
  [90, '1.2900', null],
];

function afterStall(): string {
  return 'the section table drags more after the stall than these equations; the band reaches down to them';
}

const viterna: readonly PublishedCheck[] = viternaRows.map(([degrees, printed, disagreement]) => {
  const check = one(
    {
      topic,
      kind: 'external',
      source: {
        title: 'Viterna and Corrigan, NASA CP-2230 (1981); Viterna and Janetzke, NASA TM-82944 (1982)',
        where: 'CD after the stall',
      },
      confidence: 'second-hand',
      unit: '1',
    },
    { relative: 0.05 },
    'two rules of thumb for the same thing: 5 %',
    viternaRow(degrees, printed),
  );
  return disagreement === null ? check : { ...check, knownDisagreement: disagreement };
});

function viternaRow(degrees: number, printed: string): Row {
  return [
    `fairing-viterna-${degrees}`,
    `drag of t/c 0.15, Re 1e6, aspect ratio 10, ${degrees} deg`,
    printed,
    () => finiteFairingAt(0.15, 1e6, degrees, 10).drag,
  ];
}

export const fairingHandbookChecks: readonly PublishedCheck[] = [
  ...dataBook,
  ...strut,
  ...anderson,
  ...viterna,
];
