import { checkOfScribble, computed, stepOf } from '../project/envelope/support';
import { toLastDigit, within, type PublishedCheck } from './publishedCheck';

const topic = 'Numbers on an envelope';

/** The same examples stand among the worked ones; here they go through the reader of scribbles and the envelope's sums. */
const typed = { topic, kind: 'transcription', confidence: 'second-hand' } as const;
const cengel = 'Cengel and Cimbala, Fluid Mechanics';

/** Typed with their answers, as a student would: no answer may be found wrong. */
export const typedExamples = {
  cylinder: '90 mm cylinder, 1 m long, 25 °C, 10 m/s, Cd 1.3: 6.94 N',
  pipe: 'pipe 22 mm, 30 m, rho 999.1, 4 m/s, Cd 1.0, F = 5275 N',
  mirror: 'disc dia 0.13 m, 95 km/h, air 1.20 kg/m3, Cd 1.1',
  drum: 'cylinder 0.5 m by 2 m, rho 1.028, Cd 0.8, 95 km/h, 7.55 kW',
  drumEndOn: 'disc 0.5 m, rho 1.028, Cd 0.9, 95 km/h, 1.67 kW',
  wing: 'Cd 0.03, 150 m2, 0.312 kg/m3, 155 m/s: 16.9 kN, 2620 kW',
} as const;

const force = (text: string) => (): number => computed(checkOfScribble(text), 'force');
const power = (text: string) => (): number => computed(checkOfScribble(text), 'power');

export const envelopeTypedChecks: readonly PublishedCheck[] = [
  ...within(
    {
      ...typed,
      confidence: 'read',
      unit: 'N',
      source: { title: 'Geankoplis, Transport Processes', where: 'problem 3.1-1' },
    },
    { relative: 5e-3 },
    'the printed answer rounds the density (0.3 %)',
    [['typed-1-force', `typed: ${typedExamples.cylinder}`, '6.94', force(typedExamples.cylinder)]],
  ),
  ...toLastDigit({ ...typed, unit: 'N', source: { title: cengel, where: 'example 11-4' } }, [
    ['typed-2-force', `typed: ${typedExamples.pipe}`, '5275', force(typedExamples.pipe)],
  ]),
  ...toLastDigit(
    {
      ...typed,
      confidence: 'derived',
      unit: 'W',
      source: { title: cengel, where: 'example 11-2, worked out again' },
    },
    [['typed-3-power', `typed: ${typedExamples.mirror}`, '161.0', power(typedExamples.mirror)]],
  ),
  ...within(
    { ...typed, unit: 'kW', source: { title: cengel, where: 'problem 11-30' } },
    { relative: 2e-3 },
    'density and coefficients of the problem are from memory (0.1 %)',
    [
      ['typed-4-side-on', `typed: ${typedExamples.drum}`, '7.55', () => power(typedExamples.drum)() / 1000],
      [
        'typed-4-end-on',
        `typed: ${typedExamples.drumEndOn}`,
        '1.67',
        () => power(typedExamples.drumEndOn)() / 1000,
      ],
    ],
  ),
  ...toLastDigit({ ...typed, unit: 'kN', source: { title: cengel, where: 'example 11-5' } }, [
    ['typed-6-force', `typed: ${typedExamples.wing}`, '16.9', () => force(typedExamples.wing)() / 1000],
  ]),
  ...within(
    { ...typed, unit: 'kW', source: { title: cengel, where: 'example 11-5' } },
    { absolute: 5 },
    'three figures are printed, from the rounded 16.9 kN',
    [
      [
        'typed-6-power',
        `typed: ${typedExamples.wing}`,
        '2620',
        () => (stepOf(checkOfScribble(typedExamples.wing), 'power').computedSi ?? NaN) / 1000,
      ],
    ],
  ),
];
