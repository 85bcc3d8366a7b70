import { sphereDrag, sphereRegimes, sphereSurface, type SphereDrag } from '../../src/physics/body/sphere';
import { inSeries, within, type PublishedCheck, type SeriesBasis, type SeriesPoint } from './publishedCheck';

export const sphereTopic = 'Spheres';
const topic = sphereTopic;

/** The model's curve for a sphere; smooth unless a roughness ratio is given. */
export function sphereAt(Re: number, relativeRoughness = 0): SphereDrag {
  const out = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };
  return sphereDrag(Re, sphereSurface(relativeRoughness, 1), out);
}

/** A point of a source about a sphere, in the model's own regime. */
export function sphereSeries(source: string, basis: SeriesBasis, Re: number, roughness = 0): SeriesPoint {
  const regime = sphereRegimes[sphereAt(Re, roughness).regime] ?? '';
  const surface = roughness > 0 ? 'rough sphere' : 'sphere';
  return { source, basis, regime: `${surface}, ${regime}`, range: () => sphereAt(Re, roughness) };
}

/** [short name, title, [Re, value]...]: formulas that the table was drawn through. */
export const sphereCurves = [
  [
    'almedeij',
    'Almedeij 2008, Powder Technology 186, 218',
    [
      [200, '0.7115'],
      [1e4, '0.4302'],
      [1e5, '0.4843'],
      [4e5, '0.1238'],
      [1e6, '0.1999'],
    ],
  ],
  [
    'clift',
    'Clift, Grace and Weber 1978, Bubbles, Drops and Particles',
    [
      [500, '0.5549'],
      [2500, '0.4082'],
      [4e4, '0.4639'],
      [7.5e4, '0.4940'],
      [5e5, '0.0799'],
      [2e6, '0.1500'],
    ],
  ],
  [
    'morrison',
    'Morrison 2013, An Introduction to Fluid Mechanics',
    [
      [200, '0.7677'],
      [1e4, '0.3936'],
      [2e5, '0.4120'],
      [4e5, '0.0874'],
      [1e6, '0.1415'],
    ],
  ],
  [
    'cheng',
    'Cheng 2009, Powder Technology 189, 395',
    [
      [100, '1.1024'],
      [1e3, '0.4663'],
      [1e4, '0.4168'],
      [1e5, '0.4697'],
    ],
  ],
] as const;

function inBand(
  check: Omit<
    PublishedCheck,
    'topic' | 'unit' | 'printed' | 'tolerance' | 'toleranceReason' | 'compute' | 'band' | 'series'
  >,
  basis: SeriesBasis,
  Re: number,
  relativeRoughness = 0,
): PublishedCheck {
  return {
    ...check,
    topic,
    unit: '1',
    printed: Number(check.printedText),
    tolerance: { relative: 0.05 },
    toleranceReason: 'inside low to high, give or take 5 % of a chart or fit',
    compute: () => sphereAt(Re, relativeRoughness).best,
    band: () => sphereAt(Re, relativeRoughness),
    series: sphereSeries(check.source.title, basis, Re, relativeRoughness),
  };
}

const curveChecks = sphereCurves.flatMap(([name, title, points]) =>
  points.map(([Re, printedText]) => {
    const check: PublishedCheck = inBand(
      {
        id: `sphere-${name}-${Re}`,
        kind: 'transcription',
        source: { title, where: 'drag of a smooth sphere, the formula at a point' },
        confidence: 'second-hand',
        what: `smooth sphere at Re ${Re}: inside the band that was drawn around it`,
        printedText,
      },
      'fit',
      Re,
    );
    return check;
  }),
);

const achenbachTitle = 'Achenbach 1972, J. Fluid Mech. 54, 565';
const replotted = 'smooth sphere, points as replotted in a public flow computation';

const measured: readonly PublishedCheck[] = [
  ...(
    [
      [2e5, '0.45'],
      [1e6, '0.12'],
    ] as const
  ).map(([Re, printedText]) =>
    inBand(
      {
        id: `sphere-achenbach-${Re}`,
        kind: 'measurement',
        source: { title: achenbachTitle, where: replotted },
        confidence: 'second-hand',
        what: `smooth sphere at Re ${Re}`,
        printedText,
      },
      'measured',
      Re,
    ),
  ),
  inBand(
    {
      id: 'sphere-achenbach-786000',
      kind: 'measurement',
      source: { title: achenbachTitle, where: 'read from the curve by another author, to 0.01' },
      confidence: 'second-hand',
      what: 'smooth sphere at Re 7.86e5',
      printedText: '0.13',
    },
    'measured',
    7.86e5,
  ),
];

const disagreement: PublishedCheck = {
  id: 'sphere-achenbach-10000',
  topic,
  kind: 'measurement',
  source: { title: achenbachTitle, where: replotted },
  confidence: 'second-hand',
  what: 'smooth sphere at Re 1e4',
  unit: '1',
  printed: 0.47,
  printedText: '0.47',
  tolerance: { relative: 0.05 },
  toleranceReason: '5 % of a chart',
  compute: () => sphereAt(1e4).best,
  series: sphereSeries(achenbachTitle, 'measured', 1e4),
  leftOut: 'a line drawn on to Re 1e4; Achenbach measured from 4.4e4 up',
  knownDisagreement: {
    reason:
      'the replotted line is a rounded plateau of 0.47 from 1e4 up, below where Achenbach measured (5e4); the fitted curves have 0.39 to 0.43 at 1e4 and reach 0.47 at 5e4',
    relative: -0.123,
  },
};

const programTitle = 'Barati et al. 2014, as a public process-engineering library computes it';

const external: readonly PublishedCheck[] = [
  inBand(
    {
      id: 'sphere-barati-1e6',
      kind: 'external',
      source: { title: programTitle, where: 'value in its tests, Re 1e6' },
      confidence: 'second-hand',
      what: 'smooth sphere at Re 1e6',
      printedText: '0.2125',
    },
    'fit',
    1e6,
  ),
  ...inSeries(
    within(
      {
        topic,
        kind: 'external',
        source: { title: programTitle, where: 'value in its tests, Re 200' },
        confidence: 'second-hand',
        unit: '1',
      },
      { relative: 0.05 },
      'published fits differ by 5 % here',
      [['sphere-barati-200', 'smooth sphere at Re 200', '0.7682', () => sphereAt(200).best]],
    ),
    () => sphereSeries(programTitle, 'fit', 200),
  ),
  ...inSeries(
    within(
      {
        topic,
        kind: 'external',
        source: { title: 'Cengel and Cimbala, Fluid Mechanics', where: 'table 11-2, sphere' },
        confidence: 'second-hand',
        unit: '1',
      },
      { absolute: 0.05 },
      'half a unit of the last printed digit; the handbook names no Reynolds number here',
      [
        ['sphere-handbook-laminar', 'sphere, laminar (taken at Re 1e5)', '0.5', () => sphereAt(1e5).best],
        ['sphere-handbook-turbulent', 'sphere, turbulent (taken at Re 2e6)', '0.2', () => sphereAt(2e6).best],
      ],
    ),
    (index) => sphereSeries('Cengel and Cimbala, Fluid Mechanics', 'handbook', index === 0 ? 1e5 : 2e6),
  ),
  inBand(
    {
      id: 'sphere-data-book-smooth',
      kind: 'external',
      source: {
        title: "Matthews, Aeronautical Engineer's Data Book",
        where: 'p. 95, sphere at Re 1e6, smooth',
      },
      confidence: 'read',
      what: 'smooth sphere at Re 1e6',
      printedText: '0.10',
    },
    'handbook',
    1e6,
  ),
];

const rough: readonly PublishedCheck[] = [
  inBand(
    {
      id: 'sphere-data-book-rough',
      kind: 'transcription',
      source: {
        title: "Matthews, Aeronautical Engineer's Data Book",
        where: 'p. 95, sphere at Re 1e6, rough',
      },
      confidence: 'read',
      what: 'rough sphere at Re 1e6 (taken at k/d 0.0025)',
      printedText: '0.40',
    },
    'handbook',
    1e6,
    2.5e-3,
  ),
  ...inSeries(
    within(
      {
        topic,
        kind: 'transcription',
        source: {
          title: 'Achenbach 1974, J. Fluid Mech. 65, 113, abstract',
          where: 'transcritical drag coefficient of rough spheres, maximum',
        },
        confidence: 'read',
        unit: '1',
      },
      { absolute: 0.005 },
      'the roughest sphere far behind its crisis is this number',
      [
        [
          'sphere-achenbach-rough',
          'rough sphere at Re 5e6, k/d 0.0125',
          '0.4',
          () => sphereAt(5e6, 1.25e-2).best,
        ],
      ],
    ),
    () => sphereSeries('Achenbach 1974, J. Fluid Mech. 65, 113', 'measured', 5e6, 1.25e-2),
  ),
  ...within(
    {
      topic,
      kind: 'transcription',
      source: { title: 'Achenbach 1974, J. Fluid Mech. 65, 113', where: 'critical Re at k/d 0.0125' },
      confidence: 'from memory',
      unit: '1',
    },
    { relative: 0.1 },
    'from memory: 10 %',
    [
      [
        'sphere-rough-critical',
        'Reynolds number that meets the crisis of Re 3e5 of a smooth sphere, k/d 0.0125',
        '5.5e4',
        () => (6e4 * 3e5) / 10 ** sphereAt(6e4, 1.25e-2).logCrisisReynolds,
      ],
    ],
  ),
];

export const sphereChecks: readonly PublishedCheck[] = [
  ...curveChecks,
  ...rough,
  ...measured,
  disagreement,
  ...external,
];
