import { pullTestArea, type PullTest, type PullTestTrace } from '../../src/physics/body/pullTest';
import { studentQuantile95 } from '../../src/physics/body/pullTestStudent';
import { toLastDigit, within, type PublishedCheck, type Row } from './publishedCheck';

const topic = 'Pull tests';

/** A pull test in line with 10 m/s of air of 1.25 kg/m3, nothing doubted; a check changes what it needs. */
export function pullTestOf(changes: Partial<PullTest>): PullTest {
  return {
    forcesN: [10],
    tareN: 0,
    pullAngleRad: 0,
    windSpeedMs: 10,
    windSpeedDoubt: 0,
    densityKgM3: 1.25,
    forceMeterDoubtN: 0,
    ...changes,
  };
}

export function pullTraceOf(changes: Partial<PullTest>): PullTestTrace {
  const result = pullTestArea(pullTestOf(changes));
  if (result.kind === 'problem') throw new Error(`the check has an impossible test: ${result.problem}`);
  return result.trace;
}

const poundForceN = 4.4482216152605;
const footM = 0.3048;
const poundPerCubicFootKgM3 = 0.45359237 / footM ** 3;

const tunnel = toLastDigit(
  {
    topic,
    kind: 'external',
    source: {
      title: 'Cengel and Cimbala, Fluid Mechanics',
      where: 'example 11-1: a car in a tunnel, 68 lbf at 88 ft/s',
    },
    confidence: 'second-hand',
    unit: '1',
  },
  [
    [
      'pull-cengel-11-1',
      'drag area over the frontal area of 22.26 ft2',
      '0.34',
      () =>
        pullTraceOf({
          forcesN: [68 * poundForceN],
          windSpeedMs: 88 * footM,
          densityKgM3: 0.07489 * poundPerCubicFootKgM3,
        }).dragAreaBestM2 /
        (22.26 * footM ** 2),
    ],
  ],
);

const studentChecks = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: "Student's t distribution", where: 'tables, 95 % one-sided' },
    confidence: 'from memory',
    unit: '1',
  },
  (
    [
      [1, '6.314'],
      [2, '2.920'],
      [4, '2.132'],
      [9, '1.833'],
      [29, '1.699'],
      [40, '1.684'],
      [60, '1.671'],
      [120, '1.658'],
    ] as const
  ).map(([degrees, printed]): Row => [
    `pull-student-${degrees}`,
    `t for ${degrees} degrees of freedom`,
    printed,
    () => studentQuantile95(degrees),
  ]),
);

const worked = within(
  {
    topic,
    kind: 'transcription',
    source: { title: 'Worked by hand', where: 'readings 10.0, 10.4, 9.6 N; q 62.5 Pa; s 0.4 N; t 2.920' },
    confidence: 'derived',
    unit: 'm2',
  },
  { relative: 5e-4 },
  'four figures of a hand calculation',
  [
    ['pull-hand-best', 'drag area', '0.1600', () => pullTraceOf({ forcesN: [10, 10.4, 9.6] }).dragAreaBestM2],
    [
      'pull-hand-high',
      'drag area, high: 1 + 2.920 x 0.4 / (sqrt 3 x 10)',
      '0.17079',
      () => pullTraceOf({ forcesN: [10, 10.4, 9.6] }).dragAreaHighM2,
    ],
    [
      'pull-hand-low',
      'drag area, low, the wind doubted by 5 %: squares of 0.067434 and 0.092971',
      '0.14162',
      () => pullTraceOf({ forcesN: [10, 10.4, 9.6], windSpeedDoubt: 0.05 }).dragAreaLowM2,
    ],
  ],
);

export const pullTestChecks: readonly PublishedCheck[] = [...tunnel, ...studentChecks, ...worked];
