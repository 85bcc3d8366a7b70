import { firstModeFactor, wireFrequencyHz } from '../../src/physics/vibration/naturalFrequency';
import { sheddingAt } from '../../src/physics/vibration/shedding';
import { vibrationOf, type VibrationTrace } from '../../src/physics/vibration/vibration';
import { toLastDigit, type PublishedCheck, type Row } from './publishedCheck';

const topic = 'Vibration';

const handShedding = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'f = St U / d worked by hand', where: 'St 0.2, 10 m/s' },
    confidence: 'derived',
    unit: 'Hz',
  },
  (
    [
      [0.008, '250'],
      [0.025, '80'],
      [0.1, '20'],
    ] as const
  ).map(([diameterM, printed]): Row => [
    `vibration-shedding-${diameterM}`,
    `shedding frequency of ${1000 * diameterM} mm`,
    printed,
    () => sheddingAt(10, diameterM, 1.46e-5).sheddingHz,
  ]),
);

/** Strouhal number 0.198 (1 - 19.7/Re), against the flat 0.2 with its tenth to either side. */
const strouhalCurve = (
  [
    ['300', '0.1850'],
    ['1e3', '0.1941'],
    ['1e4', '0.1976'],
    ['1e5', '0.1980'],
  ] as const
).map(([reynolds, printed]): PublishedCheck => {
  const at = () => sheddingAt(Number(reynolds), 1, 1);
  const speed = Number(reynolds);
  return {
    id: `vibration-strouhal-${reynolds}`,
    topic,
    kind: 'external',
    source: { title: 'St = 0.198 (1 - 19.7/Re), in public codes', where: `Re ${reynolds}` },
    confidence: 'second-hand',
    what: `Strouhal number of a round bar at Re ${reynolds}`,
    unit: '1',
    printed: Number(printed),
    printedText: printed,
    tolerance: { absolute: 5e-5 },
    toleranceReason: 'inside low to high, give or take the last printed digit',
    compute: () => at().sheddingHz / speed,
    band: () => ({ low: at().sheddingLowHz / speed, high: at().sheddingHighHz / speed }),
  };
});

const thomson = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'Thomson, Theory of Vibration with Applications',
      where: 'table 9.5-1 and appendix D: first mode',
    },
    confidence: 'read',
    unit: '1',
  },
  [
    ['vibration-thomson-pinned', '(beta L)^2, simply supported', '9.87', () => firstModeFactor.pinned],
    ['vibration-thomson-clamped', '(beta L)^2, clamped-clamped', '22.3733', () => firstModeFactor.clamped],
    [
      'vibration-thomson-hinged',
      '(beta L)^2, clamped-hinged',
      '15.4',
      () => firstModeFactor['clamped-pinned'],
    ],
    ['vibration-thomson-free', '(beta L)^2, clamped-free', '3.5160', () => firstModeFactor['clamped-free']],
  ],
);

const strings = toLastDigit(
  {
    topic,
    kind: 'external',
    source: {
      title: 'Physics exercise on a stretched wire, with its solution',
      where: '0.04 kg, 0.53 m; tension 2393.3952 N as solved for',
    },
    confidence: 'read',
    unit: 'Hz',
  },
  [['vibration-wire', 'fundamental frequency', '168', () => wireFrequencyHz(2393.3952, 0.04 / 0.53, 0.53)]],
);

function traceOf(): VibrationTrace {
  // E I of 100 x 3 mm aluminium by hand: I = pi/64 (0.1^4 - 0.094^4) = 1.0763e-6 m4.
  const result = vibrationOf({
    member: { kind: 'tube', bendingStiffnessNm2: 70e9 * 1.0763e-6, ends: 'pinned' },
    lengthM: 3,
    massPerLengthKgM: 2.468,
    widthM: 0.1,
    speedFromMs: 0,
    speedToMs: 30,
    kinematicViscosityM2S: 1.46e-5,
  });
  if (result.kind === 'problem') throw new Error(`the check has an impossible member: ${result.problem}`);
  return result.trace;
}

const byHand = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'Worked by hand',
      where: 'aluminium tube 100 x 3 mm, 3 m, pinned: pi/2 sqrt(75341 / 2.468) / 9',
    },
    confidence: 'derived',
    unit: 'Hz',
  },
  [['vibration-hand-tube', 'first frequency', '30.5', () => traceOf().firstFrequencyHz]],
).concat(
  toLastDigit(
    {
      topic,
      kind: 'transcription',
      source: { title: 'Worked by hand', where: '30.5 Hz x 0.1 m over 0.22, 0.20, 0.18' },
      confidence: 'derived',
      unit: 'm/s',
    },
    [
      ['vibration-hand-low', 'wind where they meet, low', '13.9', () => traceOf().meetingSpeedLowMs],
      ['vibration-hand-best', 'wind where they meet', '15.2', () => traceOf().meetingSpeedMs],
      ['vibration-hand-high', 'wind where they meet, high', '16.9', () => traceOf().meetingSpeedHighMs],
    ],
  ),
);

export const vibrationChecks: readonly PublishedCheck[] = [
  ...handShedding,
  ...strouhalCurve,
  ...thomson,
  ...strings,
  ...byHand,
];
