import { cornerFactor, plateEndFactor, sharpRectangleCoefficient } from '../../src/physics/section/rectangle';
import { prepareRectangle } from '../../src/physics/section/rectangleSection';
import { emptyStrip, type StripCoefficients } from '../../src/physics/section/memberFamily';
import {
  halfLastDigit,
  toLastDigit,
  within,
  type PublishedCheck,
  type Row,
  type SeriesPoint,
} from './publishedCheck';

const topic = 'Rectangular sections and plates';

const degree = Math.PI / 180;

/** A section 1 m along the chord, two-dimensional, at an incidence and a Reynolds number on the chord. */
function rectangleAt(
  thicknessM: number,
  incidenceDeg: number,
  { Re = 5e4, radiusM = 0 } = {},
): StripCoefficients {
  const out = emptyStrip();
  prepareRectangle(1, thicknessM, radiusM, null).strip(
    {
      crossSpeedMs: Re,
      inclinationCosine: 1,
      kinematicViscosityM2S: 1,
      effectiveSlenderness: Infinity,
      incidenceRad: incidenceDeg * degree,
    },
    out,
    true,
  );
  return out;
}

function band({ dragLow, dragHigh }: StripCoefficients, perChord = 1) {
  return { low: dragLow * perChord, high: dragHigh * perChord };
}

const enPlace = { title: 'EN 1991-1-4:2005, clause 7.6', where: 'fig. 7.23, sharp corners' };

const cornerPoints = toLastDigit(
  { topic, kind: 'transcription', source: enPlace, confidence: 'second-hand', unit: '1' },
  (
    [
      [0.1, '2.0'],
      [0.2, '2.0'],
      [0.6, '2.35'],
      [0.7, '2.4'],
      [1, '2.1'],
      [2, '1.65'],
      [5, '1.0'],
      [10, '0.9'],
      [50, '0.9'],
    ] as const
  ).map(([ratio, printed]): Row => [
    `rectangle-en-${ratio}`,
    `cf,0 at d/b ${ratio}`,
    printed,
    () => sharpRectangleCoefficient(ratio),
  ]),
);

const betweenPoints = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { ...enPlace, where: 'fig. 7.23, straight lines on its logarithmic axis, worked out apart' },
    confidence: 'derived',
    unit: '1',
  },
  (
    [
      [0.4, '2.2208'],
      [0.85, '2.2367'],
      [1.5, '1.8368'],
      [3, '1.3624'],
      [7, '0.9515'],
    ] as const
  ).map(([ratio, printed]): Row => [
    `rectangle-between-${ratio}`,
    `cf,0 at d/b ${ratio}`,
    printed,
    () => sharpRectangleCoefficient(ratio),
  ]),
);

const corners = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'EN 1991-1-4:2005, clause 7.6', where: 'fig. 7.24, psi_r' },
    confidence: 'second-hand',
    unit: '1',
  },
  [
    ['rectangle-corner-0', 'psi_r at r/b 0', '1.0', () => cornerFactor(0)],
    ['rectangle-corner-0.1', 'psi_r at r/b 0.1', '0.75', () => cornerFactor(0.1)],
    ['rectangle-corner-0.2', 'psi_r at r/b 0.2', '0.5', () => cornerFactor(0.2)],
    ['rectangle-corner-0.4', 'psi_r at r/b 0.4', '0.5', () => cornerFactor(0.4)],
  ],
);

const plateRow = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'DNV-RP-C205', where: 'reduction factor kappa, flat plate normal to the flow' },
    confidence: 'from memory',
    unit: '1',
  },
  (
    [
      [2, '0.62'],
      [5, '0.66'],
      [10, '0.69'],
      [20, '0.81'],
      [40, '0.87'],
      [50, '0.90'],
      [100, '0.95'],
    ] as const
  ).map(([ratio, printed]): Row => [
    `plate-end-${ratio}`,
    `kappa at L/b ${ratio}`,
    printed,
    () => plateEndFactor(ratio),
  ]),
);

const calculator = within(
  {
    topic,
    kind: 'external',
    source: {
      title: 'A Eurocode wind calculator, printed result',
      where: 'rectangle d/b 2, l 15 m, lambda 60',
    },
    confidence: 'second-hand',
    unit: '1',
  },
  { absolute: 0.0005 },
  'half a unit of the last printed digit',
  [
    [
      'rectangle-calculator',
      'cf of a rectangle with d/b 2, lambda 60',
      '1.474',
      () => sharpRectangleCoefficient(2) * prepareRectangle(1, 0.5, 0, null).endFactor('en', 15, 0, 0),
    ],
  ],
);

/** Handbook values that this model was not made from, on frontal width; the model's band holds each. */
const handbook: readonly PublishedCheck[] = [
  ...banded(
    'rectangle-white-square',
    'White, Fluid Mechanics (2016)',
    'square section, flat to the flow',
    '2.1',
    1,
    0,
  ),
  ...banded(
    'rectangle-cengel-square',
    'Cengel and Cimbala, Fluid Mechanics, table 11-1',
    'square section, flat to the flow',
    '2.2',
    1,
    0,
  ),
  ...banded(
    'rectangle-white-corner',
    'White, Fluid Mechanics (2016)',
    'square section, corner to the flow, on its diagonal',
    '1.6',
    1,
    45,
    Math.SQRT1_2,
  ),
  ...banded(
    'rectangle-white-plate',
    'White, Fluid Mechanics (2016)',
    'long flat plate across the flow',
    '2.0',
    0.02,
    90,
  ),
  ...banded(
    'rectangle-hoerner-plate',
    'Matthews, Aeronautical Engineer’s Data Book, p. 95',
    'long flat plate across the flow',
    '1.98',
    0.02,
    90,
  ),
  ...banded(
    'rectangle-tian-plate',
    'Tian, Ong, Yang, Myrhaug 2014, large-eddy simulation',
    'long flat plate across the flow',
    '2.202',
    0.02,
    90,
  ),
  ...banded(
    'rectangle-cengel-rounded',
    'Cengel and Cimbala, Fluid Mechanics, table 11-1',
    'square section with corner radius 0.2 D',
    '1.2',
    1,
    0,
    1,
    0.2,
  ),
];

function banded(
  id: string,
  title: string,
  what: string,
  printedText: string,
  thicknessM: number,
  incidenceDeg: number,
  perChord = 1,
  radiusM = 0,
): PublishedCheck[] {
  const at = () => rectangleAt(thicknessM, incidenceDeg, { radiusM });
  return within(
    {
      topic,
      kind: 'external',
      source: { title, where: what },
      confidence: 'second-hand',
      unit: '1',
    },
    { absolute: halfLastDigit(printedText) },
    'half a unit of the last printed digit beside the band: EN gives design values, and handbooks differ from them',
    [[id, what, printedText, () => at().drag * perChord]],
  ).map((check) => ({
    ...check,
    band: () => band(at(), perChord),
    series: rectangleSeries(title, what),
  }));
}

/** Every case of the handbooks is a regime of its own. */
function rectangleSeries(title: string, what: string): SeriesPoint {
  const source = title.startsWith('Matthews') ? 'Hoerner, in a data book' : (title.split(' (')[0] ?? title);
  const basis = title.includes('simulation') ? 'computed' : 'handbook';
  return { source, basis, regime: `rectangle, ${what}` };
}

export const rectangleChecks: readonly PublishedCheck[] = [
  ...cornerPoints,
  ...betweenPoints,
  ...corners,
  ...plateRow,
  ...calculator,
  ...handbook,
];
