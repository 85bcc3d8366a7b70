import { meshSolidity, netDragAreas, screenLoss, type NetTrace } from '../../src/physics/body/net';
import {
  toLastDigit,
  within,
  type Band,
  type PublishedCheck,
  type Row,
  type SeriesPoint,
} from './publishedCheck';

const topic = 'Nets and screens';

/** The drag areas of a net that is possible. */
export function netTraceOf(...input: Parameters<typeof netDragAreas>): NetTrace {
  const trace = netDragAreas(...input);
  if (trace === null) throw new Error('the check has an impossible net');
  return trace;
}

/** A square metre of net with wires fast enough for Reynolds number not to matter. */
export function netAt(solidity: number, wireReynolds = 1e3): NetTrace {
  return netTraceOf({ areaM2: 1, solidity, wireDiameterM: 1 }, wireReynolds, 1);
}

function faceBand(solidity: number): Band {
  const { normalCoefficientLow, normalCoefficientHigh } = netAt(solidity);
  return { low: normalCoefficientLow, high: normalCoefficientHigh };
}

/** Least and largest half-width of the band onto the face over the best value, solidity 0.1 to 0.5. */
export function netHalfWidths(): Band {
  const halves = Array.from({ length: 41 }, (_, index) => {
    const { normalCoefficientLow, normalCoefficientBest, normalCoefficientHigh } = netAt(0.1 + index / 100);
    return (normalCoefficientHigh - normalCoefficientLow) / 2 / normalCoefficientBest;
  });
  return { low: Math.min(...halves), high: Math.max(...halves) };
}

/** Stretches of solidity in which sources are compared; a design guide speaks for no measurement. */
function netSeries(name: string, title: string, solidity: number): Pick<PublishedCheck, 'series'> {
  if (title.startsWith('TG20')) return {};
  const stretch = solidity <= 0.15 ? 'open' : solidity <= 0.3 ? 'middle' : 'dense';
  const basis = name === 'taylor' ? 'computed' : 'fit';
  const series: SeriesPoint = {
    source: title,
    basis,
    regime: `net, ${stretch}`,
    range: () => faceBand(solidity),
  };
  return { series };
}

/** [short name, title, place, confidence, [solidity, coefficient on the gross area]...] */
const netCurves = [
  [
    'richards',
    'Richards and Robinson 1999, J. Wind Eng. Ind. Aerodyn. 83, 455',
    'abstract: force of the solid (1.2, assumed) times the solidity',
    'read',
    [
      [0.2, '0.240'],
      [0.3, '0.360'],
      [0.5, '0.600'],
      [0.7, '0.840'],
    ],
  ],
  [
    'taylor',
    'G. I. Taylor 1944, ARC R&M 2236',
    'K / (1 + K/4)^2 with K of woven wire above Re 400',
    'from memory',
    [
      [0.1, '0.115'],
      [0.15, '0.181'],
      [0.2, '0.254'],
      [0.3, '0.420'],
      [0.5, '0.807'],
    ],
  ],
  [
    'blevins-bars',
    'Blevins, Applied Fluid Dynamics Handbook (1984)',
    'loss of an open screen of bars',
    'second-hand',
    [
      [0.1, '0.097'],
      [0.15, '0.147'],
    ],
  ],
  [
    'blevins-knotless',
    'Blevins, Applied Fluid Dynamics Handbook (1984)',
    'loss of an open knotless net',
    'second-hand',
    [
      [0.1, '0.093'],
      [0.15, '0.155'],
    ],
  ],
  [
    'blevins-diamond',
    'Blevins, Applied Fluid Dynamics Handbook (1984)',
    'loss of an open net of diamonds',
    'second-hand',
    [
      [0.1, '0.080'],
      [0.15, '0.130'],
    ],
  ],
  [
    'loland',
    'Loland 1991, net panels in water',
    'drag coefficient square onto the net',
    'second-hand',
    [
      [0.15, '0.180'],
      [0.2, '0.289'],
      [0.3, '0.556'],
    ],
  ],
  [
    'aarsnes',
    'Aarsnes et al. 1990, net panels in water',
    'drag coefficient square onto the net',
    'second-hand',
    [
      [0.15, '0.168'],
      [0.2, '0.260'],
      [0.3, '0.558'],
    ],
  ],
  ['sheeting', 'TG20:13 design guide', 'table 4.5, sheeting: the solid net', 'read', [[1, '1.30']]],
] as const;

const curveChecks: readonly PublishedCheck[] = netCurves.flatMap(([name, title, where, confidence, points]) =>
  points.map(([solidity, printedText]): PublishedCheck => ({
    id: `net-${name}-${solidity}`,
    topic,
    kind: 'transcription',
    source: { title, where },
    confidence,
    what: `net of solidity ${solidity} square onto the wind, gross area: inside the band drawn around it`,
    unit: '1',
    printed: Number(printedText),
    printedText,
    tolerance: { relative: 0.05 },
    toleranceReason: 'inside low to high, give or take 5 % of a fit',
    compute: () => netAt(solidity).normalCoefficientBest,
    band: () => faceBand(solidity),
    ...netSeries(name, title, solidity),
  })),
);

const knots: PublishedCheck = {
  id: 'net-blevins-knotted',
  topic,
  kind: 'transcription',
  source: { title: 'Blevins, Applied Fluid Dynamics Handbook (1984)', where: 'loss of an open knotted net' },
  confidence: 'second-hand',
  what: 'knotted net of solidity 0.15 square onto the wind, gross area',
  unit: '1',
  printed: 0.215,
  printedText: '0.215',
  tolerance: { relative: 0.1 },
  toleranceReason: 'as the other open nets',
  compute: () => netAt(0.15).normalCoefficientBest,
  ...netSeries('blevins-knotted', 'Blevins, Applied Fluid Dynamics Handbook (1984)', 0.15),
  leftOut: 'knots make wakes of their own; the model says that it is of meshes without',
  knownDisagreement: {
    reason:
      'knots stand out of the net and make their own wakes; the model is for meshes without, and a knotted net takes a larger solidity or a typed drag area',
    relative: -0.237,
  },
};

const alongChecks: readonly PublishedCheck[] = (
  [
    [
      'loland',
      'Loland 1991, net panels in water',
      'drag with the water along the net',
      'second-hand',
      '0.04',
    ],
    ['guard-plastic', 'TG20:13 design guide', 'table 4.6, plastic brick guard, along', 'read', '0.073'],
    ['guard-wire', 'TG20:13 design guide', 'table 4.6, wire brick guard, along', 'read', '0.059'],
  ] as const
).map(([name, title, where, confidence, printedText]) => ({
  id: `net-along-${name}`,
  topic,
  kind: 'transcription',
  source: { title, where },
  confidence,
  what: 'wind along a net, gross area: inside the band drawn around it',
  unit: '1',
  printed: Number(printedText),
  printedText,
  tolerance: { relative: 0.05 },
  toleranceReason: 'inside low to high, give or take 5 %',
  compute: () => netAt(0.25).alongAreaBestM2,
  band: () => ({ low: netAt(0.25).alongAreaLowM2, high: netAt(0.25).alongAreaHighM2 }),
  ...(name === 'loland'
    ? { series: { source: title, basis: 'fit' as const, regime: 'net, along the wind' } }
    : {}),
}));

const lossChecks = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'Blevins 1984, as a public process-engineering library computes it',
      where: 'documented example: open share 0.5, Re 100',
    },
    confidence: 'second-hand',
    unit: '1',
  },
  [['net-loss-100', 'loss of a round-wire screen, half open, Re 100', '2.1', () => screenLoss(0.5, 100)]],
);

const lossFactors = within(
  {
    topic,
    kind: 'transcription',
    source: { title: 'Blevins, Applied Fluid Dynamics Handbook (1984)', where: 'factor of the screen loss' },
    confidence: 'second-hand',
    unit: '1',
  },
  { relative: 1e-12 },
  'a table copied, not computed: the number itself',
  (
    [
      [20, '1.3'],
      [30, '1.1'],
      [40, '0.95'],
      [60, '0.83'],
      [80, '0.75'],
      [100, '0.7'],
      [200, '0.6'],
      [400, '0.52'],
    ] as const
  ).map(([Re, printed]): Row => [
    `net-loss-factor-${Re}`,
    `loss factor of round wires at Re ${Re}`,
    printed,
    () => screenLoss(0.5, Re) / 3,
  ]),
);

const meshChecks = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'Geometry of a square mesh', where: '1 - (1 - d/m)^2' },
    confidence: 'derived',
    unit: '1',
  },
  [
    ['net-mesh-10', 'solidity of 1 mm twine at 10 mm', '0.19', () => meshSolidity(1, 10)],
    ['net-mesh-40', 'solidity of 2 mm twine at 40 mm', '0.0975', () => meshSolidity(2, 40)],
  ],
);

export const netChecks: readonly PublishedCheck[] = [
  ...curveChecks,
  knots,
  ...alongChecks,
  ...lossChecks,
  ...lossFactors,
  ...meshChecks,
];
