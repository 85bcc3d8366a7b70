import { edgedBodyCoefficient } from '../../src/physics/body/threeAxisBody';
import { boatVector } from '../../src/physics/vector/vector3';
import { fromSi } from '../../src/units/convert';
import { toLastDigit, within, type PublishedCheck } from './publishedCheck';
import { bar, conditionOf, dragArea, evaluate, fluid, known, memberOf } from './support';

const topic = 'Numbers on an envelope';

const practice = {
  topic,
  kind: 'external',
  source: { title: 'Drag budgets of racing yachts, common practice', where: 'no source' },
  confidence: 'common practice, no source',
} as const;

/** Air of 1.2 kg/m3 at 10 m/s. */
const envelope = (dragAreaM2: number) =>
  evaluate(dragArea(dragAreaM2), conditionOf(), fluid(1.2, 1.5e-5)).mean;
const both = () => envelope(0.5 * 0.8).airPowerW + envelope(0.5 * 0.6).airPowerW;

/** A pole of 100 mm by 3 m in 10 m/s of air at 20 C. */
const poleTrace = (free: boolean) =>
  memberOf(
    evaluate(
      bar({ diameterM: 0.1, end: boatVector(0, 0, 4), ends: free ? ['free', 'free'] : ['joined', 'joined'] }),
      conditionOf({ air: { temperatureC: 20, pressurePa: 101325, relativeHumidity: 0 } }),
    ),
  );
const poleCoefficient = () => poleTrace(true).dragAreaM2 / (0.1 * 3);

/** A guard wire of 5 mm in 10 m/s of standard air. */
const wireTrace = () =>
  memberOf(evaluate(bar({ diameterM: 0.005, end: boatVector(0, 0, 2) }), conditionOf()));

const forces = toLastDigit({ ...practice, unit: 'N' }, [
  [
    'envelope-force',
    'force: 1.2 kg/m3, 10 m/s, Cd 0.5, 0.8 m2',
    '24',
    () => envelope(0.5 * 0.8).dragAgainstTrackN,
  ],
]);

const powers: PublishedCheck[] = [
  ...toLastDigit({ ...practice, unit: 'W' }, [
    ['envelope-power', 'air power of 0.8 m2 at Cd 0.5', '240', () => envelope(0.5 * 0.8).airPowerW],
    ['envelope-power-other', 'air power of 0.6 m2 at Cd 0.5', '180', () => envelope(0.5 * 0.6).airPowerW],
    ['envelope-power-both', 'air power of both', '420', both],
  ]),
  ...toLastDigit({ ...practice, unit: 'hp' }, [
    ['envelope-horsepower', 'both in mechanical horsepower', '0.563', () => fromSi(both(), 'hp')],
  ]),
];

const pole: PublishedCheck[] = [
  ...toLastDigit({ ...practice, unit: '1' }, [
    [
      'envelope-pole-reynolds',
      'Reynolds number of a 100 mm tube at 10 m/s, 20 C',
      '6.6e4',
      () => known(poleTrace(true).reynolds),
    ],
    [
      'envelope-pole-plane',
      'Cd of that tube in two dimensions',
      '1.2',
      () => known(poleTrace(false).coefficientBest),
    ],
  ]),
  ...within({ ...practice, unit: '1' }, { absolute: 0.02 }, '"about" 0.95', [
    ['envelope-pole-free', 'Cd of that tube at 3 m with two free ends', '0.95', poleCoefficient],
  ]),
  ...within({ ...practice, unit: '1' }, { absolute: 0.2 }, '"about" two', [
    ['envelope-pole-ratio', 'how much an envelope with Cd 0.5 is low', '2', () => poleCoefficient() / 0.5],
  ]),
];

const wire: PublishedCheck[] = [
  ...toLastDigit({ ...practice, kind: 'transcription', confidence: 'derived', unit: '1' }, [
    [
      'envelope-wire-reynolds',
      'Reynolds number of a 5 mm wire at 10 m/s',
      '3.4e3',
      () => known(wireTrace().reynolds),
    ],
  ]),
  ...within(
    { ...practice, kind: 'transcription', confidence: 'derived', unit: '1' },
    { absolute: 0.05 },
    'said to be 0.9 to 1.0',
    [
      [
        'envelope-wire-coefficient',
        'Cd of that wire: in the dip',
        '0.95',
        () => known(wireTrace().coefficientBest),
      ],
    ],
  ),
];

const cube = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'Cengel and Cimbala, Fluid Mechanics', where: 'table 11-2, cube' },
    confidence: 'second-hand',
    unit: '1',
  },
  [['envelope-cube', 'Cd of a cube, on frontal area', '1.05', () => edgedBodyCoefficient.best]],
);

export const envelopeChecks: readonly PublishedCheck[] = [...forces, ...powers, ...pole, ...wire, ...cube];
