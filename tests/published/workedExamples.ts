import { airOf } from '../../src/physics/air/air';
import { enEndFactor } from '../../src/physics/section/endEffect';
import { enRoundBarCoefficient } from '../../src/physics/section/roundBar';
import { roughnessByFinish } from '../../src/physics/section/roughness';
import { boatVector } from '../../src/physics/vector/vector3';
import { windSpeedMs } from '../../src/physics/wind/windProfile';
import { toSi } from '../../src/units/convert';
import { toLastDigit, within, type PublishedCheck } from './publishedCheck';
import { curveAt } from './roundBarCurves';
import { bar, conditionOf, dragArea, evaluate, fluid, known, memberOf, trueWind } from './support';
import { overRoughness } from './windOverSea';

const topic = 'Worked examples';

/** A boat driven through still air, as the textbooks' cars and pipes are. */
const through = (speedMs: number) => conditionOf({ wind: trueWind(0, 0), boatSpeedMs: speedMs });
const external = { topic, kind: 'external' } as const;
/** Steps that the source leaves out, worked out again from its inputs: not an answer of somebody else. */
const workedOut = { kind: 'transcription', confidence: 'derived' } as const;

const geankoplisSource = { title: 'Geankoplis, Transport Processes', where: 'problem 3.1-1' };
const geankoplis = { ...external, source: geankoplisSource, confidence: 'read' } as const;
const geankoplisAir = { temperatureC: 25, pressurePa: 101300, relativeHumidity: 0 };
const geankoplisTrace = (coefficient?: number) =>
  evaluate(
    bar({ diameterM: 0.09, end: boatVector(0, 0, 2), ...(coefficient === undefined ? {} : { coefficient }) }),
    conditionOf({ air: geankoplisAir }),
  );

const geankoplisChecks: PublishedCheck[] = [
  ...within(
    { ...geankoplis, unit: 'N' },
    { relative: 5e-3 },
    'the printed answer rounds the density (0.3 %)',
    [
      [
        'example-1-force',
        'drag of 1 m of a 90 mm cylinder at 10 m/s with the Cd of 1.3 that the answer reads',
        '6.94',
        () => geankoplisTrace(1.3).deployed.dragAgainstTrackN,
      ],
    ],
  ),
  ...within(
    { ...geankoplis, unit: '1' },
    { absolute: 0.05 },
    'half a unit of the last printed digit, and inside low to high',
    [
      [
        'example-1-coefficient',
        'Cd of a cylinder at Re 5.8e4, read from a chart',
        '1.3',
        () => curveAt(5.8e4).best,
      ],
    ],
  ).map((check) => ({
    ...check,
    knownDisagreement: {
      reason:
        'the textbook reads 1.3 from its chart; the measured curves lie between 1.07 and 1.23 there, and the model takes 1.2 with 1.25 as its high edge',
      relative: -0.077,
    },
  })),
  ...toLastDigit({ ...geankoplis, ...workedOut, unit: '1' }, [
    [
      'example-1-reynolds',
      'Reynolds number, worked out again from the printed inputs',
      '5.80e4',
      () => known(memberOf(geankoplisTrace()).reynolds),
    ],
  ]),
  ...toLastDigit({ ...geankoplis, ...workedOut, unit: 'kg/m3' }, [
    [
      'example-1-density',
      'density, worked out again from the printed inputs',
      '1.1836',
      () => airOf(geankoplisAir).densityKgM3,
    ],
  ]),
];

const pipe = {
  ...external,
  source: { title: 'Cengel and Cimbala, Fluid Mechanics', where: 'example 11-4' },
  confidence: 'second-hand',
} as const;
const pipeTrace = () =>
  evaluate(
    bar({ diameterM: 0.022, end: boatVector(0, 0, 31), coefficient: 1.0 }),
    conditionOf({ wind: trueWind(4, 0) }),
    fluid(999.1, 1.138e-3 / 999.1),
  );

const pipeChecks: PublishedCheck[] = [
  ...toLastDigit({ ...pipe, unit: '1' }, [
    [
      'example-2-reynolds',
      'Reynolds number of a 22 mm pipe in a river of 4 m/s',
      '7.73e4',
      () => known(memberOf(pipeTrace()).reynolds),
    ],
  ]),
  ...toLastDigit({ ...pipe, unit: 'N' }, [
    [
      'example-2-force',
      'drag of 30 m of that pipe, Cd 1.0',
      '5275',
      () => pipeTrace().deployed.dragAgainstTrackN,
    ],
  ]),
];

const mirror = {
  ...external,
  source: {
    title: 'Cengel and Cimbala, Fluid Mechanics',
    where: 'example 11-2, a mirror before and after fairing',
  },
  confidence: 'second-hand',
} as const;
const mirrorArea = (Math.PI / 4) * 0.13 ** 2;
const mirrorTrace = (coefficient: number) =>
  evaluate(dragArea(coefficient * mirrorArea), through(toSi(95, 'km/h')), fluid(1.2, 1.5e-5)).mean;
const mirrorSavingN = () => mirrorTrace(1.1).dragAgainstTrackN - mirrorTrace(0.4).dragAgainstTrackN;

const mirrorChecks: PublishedCheck[] = [
  ...toLastDigit({ ...mirror, unit: '1' }, [
    [
      'example-3-cut',
      'share of the drag that the fairing saves',
      '0.636',
      () => mirrorSavingN() / mirrorTrace(1.1).dragAgainstTrackN,
    ],
  ]),
  ...within(
    { ...mirror, unit: 'L/year' },
    { relative: 3e-3 },
    'the printed answer rounds on the way (0.2 %)',
    [
      [
        'example-3-fuel',
        'fuel saved over 24,000 km at 30 %, 44 MJ/kg, 0.8 kg/L',
        '8.84',
        () => (mirrorSavingN() * 24e6) / 0.3 / 44e6 / 0.8,
      ],
    ],
  ),
  ...toLastDigit({ ...mirror, ...workedOut, unit: 'W' }, [
    ['example-3-before', 'power before, worked out again', '161.0', () => mirrorTrace(1.1).trackPowerW],
    ['example-3-after', 'power after, worked out again', '58.5', () => mirrorTrace(0.4).trackPowerW],
  ]),
];

const drum = {
  ...external,
  source: {
    title: 'Cengel and Cimbala, Fluid Mechanics',
    where: 'problem 11-30, a cylinder of 0.5 m by 2 m',
  },
  confidence: 'second-hand',
  unit: 'kW',
} as const;
const drumAir = fluid(1.028, 1.8e-5);
const drumReason =
  'the problem was read without its density and coefficients; 1.028 kg/m3, 0.9 and 0.8 are from memory (0.1 %)';

const drumChecks = within(drum, { relative: 2e-3 }, drumReason, [
  [
    'example-4-end-on',
    'power end on at 95 km/h',
    '1.67',
    () =>
      evaluate(dragArea(0.9 * (Math.PI / 4) * 0.5 ** 2), through(toSi(95, 'km/h')), drumAir).mean
        .trackPowerW / 1000,
  ],
  [
    'example-4-side-on',
    'power side on at 95 km/h',
    '7.55',
    () =>
      evaluate(
        bar({ diameterM: 0.5, end: boatVector(0, 0, 3), coefficient: 0.8 }),
        through(toSi(95, 'km/h')),
        drumAir,
      ).mean.trackPowerW / 1000,
  ],
]);

const carArea = 22.26 * toSi(1, 'ft') ** 2;
const carAir = fluid((0.07489 * toSi(1, 'lb')) / toSi(1, 'ft') ** 3, 1.5e-5);
const carChecks = toLastDigit(
  {
    ...external,
    source: { title: 'Cengel and Cimbala, Fluid Mechanics', where: 'example 11-1, a car in a wind tunnel' },
    confidence: 'second-hand',
    unit: '1',
  },
  [
    [
      'example-5-coefficient',
      'Cd from 68 lbf on 22.26 ft2 at 88 ft/s',
      '0.34',
      () =>
        toSi(68, 'lbf') /
        evaluate(dragArea(carArea), conditionOf({ wind: trueWind(toSi(88, 'ft'), 0) }), carAir).mean
          .dragAgainstTrackN,
    ],
  ],
);

const wing = {
  ...external,
  source: { title: 'Cengel and Cimbala, Fluid Mechanics', where: 'example 11-5' },
  confidence: 'second-hand',
} as const;
const wingTrace = () => evaluate(dragArea(0.03 * 150), through(155), fluid(0.312, 4e-5)).mean;
const wingChecks: PublishedCheck[] = [
  ...toLastDigit({ ...wing, unit: 'kN' }, [
    [
      'example-6-force',
      'drag of 150 m2 at Cd 0.03, 155 m/s',
      '16.9',
      () => wingTrace().dragAgainstTrackN / 1000,
    ],
  ]),
  ...within(
    { ...wing, unit: 'kW' },
    { relative: 3e-3 },
    'the printed power is the rounded 16.9 kN times 155 m/s',
    [['example-6-power', 'power at 155 m/s', '2620', () => wingTrace().trackPowerW / 1000]],
  ),
];

const chimney = {
  ...external,
  source: {
    title: 'Output of a public Eurocode calculator, EN 1991-1-4 clause 7.9.2',
    where: 'category II, 45 m/s, b 0.7 m, l 22 m, galvanised steel',
  },
  confidence: 'read',
} as const;
const chimneySteps = { ...chimney, ...workedOut } as const;
/** What the calculator's steps hand on: gust speed from qp 3639.419 Pa, EN's air. */
const gustMs = 76.30905;
const enAir = fluid(1.25, 15e-6);
const chimneyTrace = (coefficient: number) =>
  evaluate(
    bar({ diameterM: 0.7, end: boatVector(0, 0, 23), coefficient }),
    conditionOf({ wind: trueWind(gustMs, 0) }),
    enAir,
  );
const chimneyCoefficient = () => enRoundBarCoefficient(3.561089e6, roughnessByFinish.galvanisedSteel / 0.7);
const chimneyFactor = () => enEndFactor(29.542857);
const chimneyForceN = () => chimneyTrace(chimneyCoefficient() * chimneyFactor()).deployed.dragAgainstTrackN;

const chimneyChecks: PublishedCheck[] = [
  ...toLastDigit({ ...chimneySteps, unit: 'm/s' }, [
    [
      'example-7-wind',
      'mean wind at 22 m over z0 0.05 m, from cr(10) 45 m/s at 10 m',
      '52.0419',
      () => windSpeedMs(overRoughness(0.05, 45 * 0.19 * Math.log(10 / 0.05)), 22),
    ],
  ]),
  ...toLastDigit({ ...chimneySteps, unit: 'Pa' }, [
    [
      'example-7-pressure',
      'peak velocity pressure',
      '3639.42',
      () => memberOf(chimneyTrace(1)).dynamicPressurePa,
    ],
  ]),
  ...toLastDigit({ ...chimneySteps, unit: '1' }, [
    ['example-7-reynolds', 'Reynolds number', '3.56109e6', () => known(memberOf(chimneyTrace(1)).reynolds)],
    ['example-7-cf0', 'force coefficient cf,0 without end effect', '0.824840', chimneyCoefficient],
    ['example-7-psi', 'psi at lambda 29.542857', '0.816904', chimneyFactor],
    [
      'example-7-cf',
      'force coefficient cf with end effect',
      '0.673815',
      () => chimneyCoefficient() * chimneyFactor(),
    ],
  ]),
  ...toLastDigit({ ...chimney, unit: 'kN/m2' }, [
    ['example-7-load', 'force over diameter x length', '2.452', () => chimneyForceN() / (0.7 * 22) / 1000],
  ]),
  ...toLastDigit({ ...chimney, unit: 'kN' }, [
    ['example-7-force', 'force on the cylinder', '37.765', () => chimneyForceN() / 1000],
  ]),
];

export const workedExampleChecks: readonly PublishedCheck[] = [
  ...geankoplisChecks,
  ...pipeChecks,
  ...mirrorChecks,
  ...drumChecks,
  ...carChecks,
  ...wingChecks,
  ...chimneyChecks,
];
