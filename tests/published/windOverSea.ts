import {
  openSeaLogLaw,
  speedAt10From,
  standardGravityMs2,
  vonKarman,
  windProfile,
  windSpeedMs,
  type WindProfile,
} from '../../src/physics/wind/windProfile';
import { toLastDigit, type PublishedCheck, type Row } from './publishedCheck';

const topic = 'Wind over the sea';

const overTen = (profile: WindProfile, heightM: number): number =>
  windSpeedMs(profile, heightM) / windSpeedMs(profile, 10);

/** [U10, u*, z0, Cd10, U(2)/U10, U(20)/U10], Charnock 0.011, g 9.80665, kappa 0.40 */
const openSea = [
  [5, '0.1561', '2.7344e-5', '9.751e-4', '0.8744', '1.0541'],
  [10, '0.3589', '1.4449e-4', '1.2882e-3', '0.8556', '1.0622'],
  [15, '0.5914', '3.9226e-4', '1.5542e-3', '0.8414', '1.0683'],
  [20, '0.8490', '8.0850e-4', '1.8020e-3', '0.8292', '1.0736'],
] as const;

const charnockSource = {
  title: 'Charnock 1955 with the open-sea constant 0.011 of IEC 61400-3 and DNV',
  where: 'table of friction velocity, roughness and wind ratios',
};
const charnockCommon = {
  topic,
  kind: 'transcription',
  source: charnockSource,
  confidence: 'derived',
} as const;

const charnockTable = openSea.flatMap(([U10, friction, roughness, dragCoefficient, atTwo, atTwenty]) => {
  const profile = windProfile(openSeaLogLaw, U10);
  const at = `at ${U10} m/s`;
  return [
    ...toLastDigit({ ...charnockCommon, unit: 'm/s' }, [
      [
        `wind-charnock-${U10}-friction`,
        `friction velocity ${at}`,
        friction,
        () => profile.frictionVelocityMs,
      ],
    ]),
    ...toLastDigit({ ...charnockCommon, unit: 'm' }, [
      [`wind-charnock-${U10}-roughness`, `roughness length ${at}`, roughness, () => profile.roughnessLengthM],
    ]),
    ...toLastDigit({ ...charnockCommon, unit: '1' }, [
      [
        `wind-charnock-${U10}-drag`,
        `drag coefficient of the sea, (u*/U10)^2, ${at}`,
        dragCoefficient,
        () => (profile.frictionVelocityMs / profile.speedAt10Ms) ** 2,
      ],
      [`wind-charnock-${U10}-2m`, `U(2)/U10 ${at}`, atTwo, () => overTen(profile, 2)],
      [`wind-charnock-${U10}-20m`, `U(20)/U10 ${at}`, atTwenty, () => overTen(profile, 20)],
    ]),
  ];
});

/** [name, constant, u*, z0, U(2)/U10] at U10 10 m/s */
const otherConstants = [
  ['Garratt 1977', 0.0144, '0.3698', '2.0085e-4', '0.8512'],
  ['Wu 1980', 0.0185, '0.3807', '2.7340e-4', '0.8468'],
] as const;

const otherCharnock = otherConstants.flatMap(([name, charnock, friction, roughness, atTwo]) => {
  const profile = windProfile({ kind: 'log', charnock }, 10);
  const source = { title: `${name}: Charnock's constant ${charnock}`, where: 'values at 10 m/s' };
  const common = { topic, kind: 'transcription', source, confidence: 'second-hand' } as const;
  const id = `wind-${name.split(' ')[0]?.toLowerCase() ?? ''}`;
  return [
    ...toLastDigit({ ...common, unit: 'm/s' }, [
      [`${id}-friction`, 'friction velocity at 10 m/s', friction, () => profile.frictionVelocityMs],
    ]),
    ...toLastDigit({ ...common, unit: 'm' }, [
      [`${id}-roughness`, 'roughness length at 10 m/s', roughness, () => profile.roughnessLengthM],
    ]),
    ...toLastDigit({ ...common, unit: '1' }, [
      [`${id}-2m`, 'U(2)/U10 at 10 m/s', atTwo, () => overTen(profile, 2)],
    ]),
  ];
});

/** [alpha, title, confidence, ratios at 2, 5, 20, 30 m] */
const powerLaws = [
  [0.1, 'Power law over the open sea, alpha 0.10', 'from memory', ['0.8513', '0.9330', '1.0718', '1.1161']],
  [0.11, 'Power law over the open sea, alpha 0.11', 'from memory', ['0.8377', '0.9266', '1.0792', '1.1285']],
  [
    0.14,
    'IEC 61400-3 edition 1, clause 6.3, alpha 0.14',
    'second-hand',
    ['0.7983', '0.9075', '1.1019', '1.1663'],
  ],
] as const;
const powerHeights = [2, 5, 20, 30];

const powerTable = powerLaws.flatMap(([exponent, title, confidence, ratios]) =>
  toLastDigit(
    {
      topic,
      kind: 'transcription',
      source: { title, where: 'eq. 3, ratios to 10 m' },
      confidence,
      unit: '1',
    },
    ratios.map((printed, i): Row => {
      const height = powerHeights[i] ?? NaN;
      return [
        `wind-power-${exponent}-${height}m`,
        `U(${height})/U10, alpha ${exponent}`,
        printed,
        () => overTen(windProfile({ kind: 'power', exponent }, 10), height),
      ];
    }),
  ),
);

/** A log law over a given roughness length: the Charnock constant that makes this roughness at this wind. */
export function overRoughness(roughnessLengthM: number, speedAt10Ms: number): WindProfile {
  const friction = (vonKarman * speedAt10Ms) / Math.log(10 / roughnessLengthM);
  return windProfile(
    { kind: 'log', charnock: (roughnessLengthM * standardGravityMs2) / friction ** 2 },
    speedAt10Ms,
  );
}

const enRatios = [
  [1, '0.7161'],
  [2, '0.8016'],
  [5, '0.9145'],
  [20, '1.0855'],
  [30, '1.1354'],
] as const;

const enTable = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'EN 1991-1-4:2005, log law of terrain category 0 (sea), z0 0.003 m',
      where: 'eq. 4.4, table 4.1: cr(z)/cr(10)',
    },
    confidence: 'second-hand',
    unit: '1',
  },
  enRatios.map(([height, printed]): Row => [
    `wind-en-sea-${height}m`,
    `cr(${height})/cr(10)`,
    printed,
    () => overTen(overRoughness(0.003, 10), height),
  ]),
);

/** The table's four digits, read backwards: from the wind at 2 m to the wind at 10 m. */
const backwards = toLastDigit({ ...charnockCommon, unit: 'm/s' }, [
  [
    'wind-charnock-back-from-2m',
    'wind at 10 m from 8.556 m/s at 2 m',
    '10.00',
    () => speedAt10From(openSeaLogLaw, 8.556, 2),
  ],
  [
    'wind-power-back-from-2m',
    'wind at 10 m from 7.983 m/s at 2 m, alpha 0.14',
    '10.00',
    () => speedAt10From({ kind: 'power', exponent: 0.14 }, 7.983, 2),
  ],
]);

export const windOverSeaChecks: readonly PublishedCheck[] = [
  ...charnockTable,
  ...otherCharnock,
  ...powerTable,
  ...enTable,
  ...backwards,
];
