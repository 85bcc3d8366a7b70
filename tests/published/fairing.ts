import { flatNeighbourhood } from '../../src/physics/numerics/flatNeighbourhood';
import {
  aftFormFactor,
  fairingFormFactor,
  laminarAlignedDrag,
  turbulentAlignedDrag,
} from '../../src/physics/section/fairingAligned';
import { halfThickness } from '../../src/physics/section/fairingOutline';
import { laminarFriction, turbulentFriction } from '../../src/physics/section/skinFriction';
import { fairingAt, fairingTopic as topic, incidenceWhere, tableDrag, tableLift } from './fairingSupport';
import { toLastDigit, within, type PublishedCheck, type Row } from './publishedCheck';

const sandia = {
  title: 'Sheldahl and Klimas, SAND80-2114 (1981)',
  where: 'tables of lift and drag of NACA 0012 to 0025',
};

/** Rows as read, apart from the selection that the model carries: [t/c, Re, incidence, cl, cd]. */
const tableRows = [
  [0.12, 3.6e5, 10, '0.9811', '0.0184'],
  [0.12, 5e6, 0, '0', '0.0064'],
  [0.15, 1.6e5, 5, '0.5500', '0.0142'],
  [0.18, 1.6e5, 16, '0.4896', '0.1960'],
  [0.25, 1.6e5, 20, '0.7069', '0.0610'],
] as const;

const tableChecks = toLastDigit(
  { topic, kind: 'transcription', source: sandia, confidence: 'second-hand', unit: '1' },
  tableRows.flatMap(([ratio, Re, degree, cl, cd]): Row[] => [
    [
      `fairing-table-cl-${ratio}-${Re}-${degree}`,
      `cl, t/c ${ratio}, Re ${Re}, ${degree} deg`,
      cl,
      () => tableLift(ratio, Re, degree),
    ],
    [
      `fairing-table-cd-${ratio}-${Re}-${degree}`,
      `cd, t/c ${ratio}, Re ${Re}, ${degree} deg`,
      cd,
      () => tableDrag(ratio, Re, degree),
    ],
  ]),
);

/** Beyond 30 deg nothing is added to the table but the aligned drag's fading share. */
const steepChecks = within(
  { topic, kind: 'transcription', source: sandia, confidence: 'second-hand', unit: '1' },
  { relative: 0.02 },
  'the aligned drag is not the table’s and fades only at 90 deg: 2 %',
  [
    [
      'fairing-steep-cl-45',
      'cl, t/c 0.15, Re 1.6e5, 45 deg',
      '1.0500',
      () => fairingAt(0.15, 1.6e5, 45).lift,
    ],
    [
      'fairing-steep-cd-45',
      'cd, t/c 0.15, Re 1.6e5, 45 deg',
      '1.0750',
      () => fairingAt(0.15, 1.6e5, 45).drag,
    ],
    ['fairing-steep-cl-90', 'cl, t/c 0.18, 90 deg', '0.0900', () => fairingAt(0.18, 3e5, 90).lift],
    ['fairing-steep-cd-90', 'cd, t/c 0.18, 90 deg', '1.8000', () => fairingAt(0.18, 3e5, 90).drag],
    ['fairing-steep-cl-135', 'cl, t/c 0.12, 135 deg', '-0.9450', () => fairingAt(0.12, 1e6, 135).lift],
    ['fairing-steep-cl-170', 'cl, t/c 0.21, 170 deg', '-0.85', () => fairingAt(0.21, 1e6, 170).lift],
    ['fairing-steep-cd-180', 'cd, any section, 180 deg', '0.0250', () => fairingAt(0.21, 1e6, 180).drag],
  ],
);

/** Drag on frontal thickness: [t/c, Re, incidence, cd c/t]. */
const frontalRows = [
  [0.18, 8e4, 0, '0.090'],
  [0.18, 8e4, 10, '0.160'],
  [0.18, 8e4, 12, '0.444'],
  [0.18, 8e4, 16, '1.089'],
  [0.18, 1.6e5, 0, '0.071'],
  [0.18, 1.6e5, 10, '0.132'],
  [0.18, 1.6e5, 12, '0.160'],
  [0.18, 1.6e5, 20, '1.567'],
  [0.18, 1.6e5, 30, '3.167'],
  [0.25, 8e4, 0, '0.079'],
  [0.25, 8e4, 10, '0.124'],
  [0.25, 8e4, 12, '0.147'],
  [0.25, 8e4, 16, '0.784'],
  [0.25, 8e4, 20, '1.128'],
  [0.25, 1.6e5, 0, '0.062'],
  [0.25, 1.6e5, 10, '0.100'],
  [0.25, 1.6e5, 12, '0.118'],
  [0.25, 1.6e5, 16, '0.170'],
  [0.25, 1.6e5, 20, '0.244'],
  [0.25, 1.6e5, 30, '2.280'],
] as const;

const frontalChecks = toLastDigit(
  { topic, kind: 'transcription', source: sandia, confidence: 'second-hand', unit: '1' },
  frontalRows.map(([ratio, Re, degree, printed]): Row => [
    `fairing-frontal-${ratio}-${Re}-${degree}`,
    `drag on frontal thickness, t/c ${ratio}, Re ${Re}, ${degree} deg`,
    printed,
    () => tableDrag(ratio, Re, degree) / ratio,
  ]),
);

const hoerner = {
  title: 'Hoerner, Fluid-Dynamic Drag (1965), ch. 6',
  where: 'profile drag of symmetric sections',
};

/** [t/c, form factor, on frontal area] */
const formRows = [
  [0.1, '1.2060', '12.0600'],
  [0.15, '1.3304', '8.8692'],
  [0.2, '1.4960', '7.4800'],
  [0.25, '1.7344', '6.9375'],
  [0.3, '2.0860', '6.9533'],
  [0.4, '3.3360', '8.3400'],
] as const;

const onFront = (factor: (ratio: number) => number, ratio: number): number => factor(ratio) / ratio;

/** The thickness ratio of least drag on frontal area, by golden section. */
function bestThickness(factor: (ratio: number) => number): number {
  let from = 0.1;
  let to = 0.5;
  for (let i = 0; i < 60; i += 1) {
    const left = to - 0.618034 * (to - from);
    const right = from + 0.618034 * (to - from);
    if (onFront(factor, left) < onFront(factor, right)) to = right;
    else from = left;
  }
  return (from + to) / 2;
}

const formChecks = toLastDigit(
  { topic, kind: 'transcription', source: hoerner, confidence: 'second-hand', unit: '1' },
  [
    ...formRows.flatMap(([ratio, factor, front]): Row[] => [
      [`fairing-form-${ratio}`, `form factor, t/c ${ratio}`, factor, () => fairingFormFactor(ratio)],
      [
        `fairing-form-front-${ratio}`,
        `the same over t/c, t/c ${ratio}`,
        front,
        () => onFront(fairingFormFactor, ratio),
      ],
    ]),
    [
      'fairing-optimum',
      't/c of least drag on frontal area',
      '0.2730',
      () => bestThickness(fairingFormFactor),
    ],
    [
      'fairing-optimum-bracket',
      'form factor over t/c there',
      '6.88379',
      () => onFront(fairingFormFactor, bestThickness(fairingFormFactor)),
    ],
    [
      'fairing-turbulent',
      'cd on chord, t/c 0.25, Re 1e6: 2 x 0.004471 x 1.7344',
      '0.01551',
      () => turbulentAlignedDrag(0.25, 1e6),
    ],
    ['fairing-turbulent-friction', 'Prandtl-Schlichting at Re 1e5', '0.007156', () => turbulentFriction(1e5)],
  ],
);

/** The minimum is flat: from t/c 0.22 to 0.33 within 5 % of the least. */
const flatness = within(
  { topic, kind: 'transcription', source: hoerner, confidence: 'derived', unit: '1' },
  { relative: 0.05 },
  'within 5 % from t/c 0.22 to 0.33, as the source’s formula says',
  [0.22, 0.33].map((ratio): Row => [
    `fairing-flat-${ratio}`,
    `form factor over t/c at ${ratio} against the least`,
    '6.88379',
    () => onFront(fairingFormFactor, ratio),
  ]),
);

const bottomOf = (factor: (ratio: number) => number) =>
  flatNeighbourhood((ratio) => onFront(factor, ratio), 0.1, 0.5, 0.05);

/** The same stretch as the thickness curve finds it. */
const flatStretch = toLastDigit(
  { topic, kind: 'transcription', source: hoerner, confidence: 'derived', unit: '1' },
  [
    [
      'fairing-flat-least',
      'thickness curve at fixed friction: t/c of least drag',
      '0.2730',
      () => bottomOf(fairingFormFactor).leastAt,
    ],
    [
      'fairing-flat-from',
      'thickness curve at fixed friction: within 5 % from',
      '0.22',
      () => bottomOf(fairingFormFactor).from,
    ],
    [
      'fairing-flat-to',
      'thickness curve at fixed friction: within 5 % to',
      '0.33',
      () => bottomOf(fairingFormFactor).to,
    ],
  ],
);

const fromMemory = toLastDigit(
  { topic, kind: 'transcription', source: hoerner, confidence: 'from memory', unit: '1' },
  [
    [
      'fairing-aft-optimum',
      't/c of least drag, thickest point aft',
      '0.2627',
      () => bestThickness(aftFormFactor),
    ],
    [
      'fairing-aft-bracket',
      'form factor over t/c there',
      '6.2757',
      () => onFront(aftFormFactor, bestThickness(aftFormFactor)),
    ],
    [
      'fairing-laminar-1e5',
      'laminar, on frontal area, t/c 0.25, Re 1e5',
      '0.292',
      () => laminarAlignedDrag(0.25, 1e5) / 0.25,
    ],
    [
      'fairing-laminar-3e5',
      'laminar, on frontal area, t/c 0.25, Re 3e5',
      '0.274',
      () => laminarAlignedDrag(0.25, 3e5) / 0.25,
    ],
    ['fairing-laminar-friction', 'Blasius at Re 5e5', '0.001878', () => laminarFriction(5e5)],
  ],
);

const outline = within(
  {
    topic,
    kind: 'transcription',
    source: { title: 'NACA four-digit sections, NACA 0012', where: 'ordinates in per cent of chord' },
    confidence: 'from memory',
    unit: '%',
  },
  { absolute: 0.002 },
  'printed to 0.001 % of chord; the ordinates were rounded when they were made',
  (
    [
      [1.25, '1.894'],
      [30, '6.002'],
      [50, '5.294'],
      [90, '1.448'],
      [100, '0.126'],
    ] as const
  ).map(([x, printed]): Row => [
    `fairing-outline-${x}`,
    `ordinate at ${x} % chord`,
    printed,
    () => 100 * halfThickness(0.12, x / 100),
  ]),
);

/** Read off the same table: where a fixed fairing’s drag along the wind overtakes a bare tube of its thickness (Cd 1.2). */
const crossings = [
  [0.12, '13'],
  [0.18, '17'],
  [0.25, '28'],
] as const;

const crossingChecks = crossings.flatMap(([ratio, printed]) => [
  ...toLastDigit({ topic, kind: 'transcription', source: sandia, confidence: 'derived', unit: 'deg' }, [
    [
      `fairing-crossing-table-${ratio}`,
      `incidence where the table reaches 1.2 t/c, t/c ${ratio}, Re 1.6e5`,
      printed,
      () => incidenceWhere((degrees) => tableDragBetween(ratio, degrees), 1.2 * ratio),
    ],
  ]),
  ...within(
    { topic, kind: 'transcription', source: sandia, confidence: 'derived', unit: 'deg' },
    { absolute: 0.8 },
    'whole degrees are printed, of the bare table; the model adds the laminar state’s own aligned drag',
    [
      [
        `fairing-crossing-${ratio}`,
        `the same of the model, t/c ${ratio}`,
        printed,
        () => incidenceWhere((degrees) => fairingAt(ratio, 1.6e5, degrees).drag, 1.2 * ratio),
      ],
    ],
  ),
]);

function tableDragBetween(ratio: number, degrees: number): number {
  const at = Math.floor(degrees);
  const first = tableDrag(ratio, 1.6e5, at);
  return first + (degrees - at) * (tableDrag(ratio, 1.6e5, at + 1) - first);
}

const beamOn = toLastDigit(
  { topic, kind: 'transcription', source: sandia, confidence: 'derived', unit: '1' },
  [
    [
      'fairing-beam-0.18',
      'drag beam-on over the bare tube’s, t/c 0.18',
      '8',
      () => fairingAt(0.18, 1.6e5, 90).drag / 0.216,
    ],
    [
      'fairing-beam-0.25',
      'drag beam-on over the bare tube’s, t/c 0.25',
      '6',
      () => fairingAt(0.25, 1.6e5, 90).drag / 0.3,
    ],
  ],
);

export const fairingChecks: readonly PublishedCheck[] = [
  ...tableChecks,
  ...steepChecks,
  ...frontalChecks,
  ...formChecks,
  ...flatness,
  ...flatStretch,
  ...fromMemory,
  ...outline,
  ...crossingChecks,
  ...beamOn,
];
