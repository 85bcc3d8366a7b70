import { airOf, dynamicViscosityPaS, saturationVapourPressurePa } from '../../src/physics/air/air';
import { toLastDigit, within, type PublishedCheck, type Row } from './publishedCheck';

const topic = 'Air';

const dry = (temperatureC: number, pressurePa = 101325) =>
  airOf({ temperatureC, pressurePa, relativeHumidity: 0 });
const density = (temperatureC: number, relativeHumidity: number, pressurePa: number) => (): number =>
  airOf({ temperatureC, relativeHumidity, pressurePa }).densityKgM3;

const standardAtmosphere = {
  title: 'US Standard Atmosphere 1976 / ISO 2533',
  where: 'table of height, read through a public library that reproduces it',
};

/** [height, T in K, p in Pa, rho, mu] */
const heights = [
  ['0', 288.15, 101325, '1.22500', '1.78938e-5'],
  ['100', 287.5, 100129.5, '1.21328', '1.78624e-5'],
  ['1000', 281.651, 89876.3, '1.11166', '1.75785e-5'],
] as const;

const atmosphereDensity = within(
  { topic, kind: 'transcription', source: standardAtmosphere, confidence: 'read', unit: 'kg/m3' },
  { relative: 2e-5 },
  'the model rounds the gas constant to 287.05 J/(kg K), the standard has 287.05287: 1e-5, and the last digit',
  heights.map(([height, temperatureK, pressurePa, rho]): Row => [
    `air-density-${height}m`,
    `density of dry air at ${height} m, from its T and p`,
    rho,
    () => dry(temperatureK - 273.15, pressurePa).densityKgM3,
  ]),
);

const atmosphereViscosity = toLastDigit(
  { topic, kind: 'transcription', source: standardAtmosphere, confidence: 'read', unit: 'Pa s' },
  heights.map(([height, temperatureK, , , mu]): Row => [
    `air-viscosity-${height}m`,
    `dynamic viscosity at ${height} m (Sutherland)`,
    mu,
    () => dynamicViscosityPaS(temperatureK),
  ]),
);

const kinematic = toLastDigit(
  { topic, kind: 'transcription', source: standardAtmosphere, confidence: 'read', unit: 'm2/s' },
  [
    [
      'air-kinematic-0m',
      'kinematic viscosity at sea level',
      '1.4607e-5',
      () => dry(15).kinematicViscosityM2S,
    ],
  ],
);

const dryTable = {
  title: 'Ideal gas and Sutherland with the constants of US Standard Atmosphere 1976',
  where: 'table of dry air at 101325 Pa by temperature',
};

/** [t, rho, mu, nu] */
const temperatures = [
  ['0', '1.2923', '1.7161e-5', '1.3280e-5'],
  ['10', '1.2466', '1.7652e-5', '1.4159e-5'],
  ['20', '1.2041', '1.8134e-5', '1.5060e-5'],
  ['25', '1.1839', '1.8372e-5', '1.5518e-5'],
  ['30', '1.1644', '1.8609e-5', '1.5982e-5'],
] as const;

const kinematicReason =
  'half a unit of the last printed digit (4e-5), and the gas constant rounded to 287.05 J/(kg K): 1e-5';

const byTemperature = temperatures.flatMap(([t, rho, mu, nu]) => {
  const common = { topic, kind: 'transcription', source: dryTable, confidence: 'derived' } as const;
  return [
    ...toLastDigit({ ...common, unit: 'kg/m3' }, [
      [`air-dry-density-${t}C`, `density of dry air at ${t} C`, rho, () => dry(Number(t)).densityKgM3],
    ]),
    ...toLastDigit({ ...common, unit: 'Pa s' }, [
      [
        `air-dry-viscosity-${t}C`,
        `dynamic viscosity at ${t} C`,
        mu,
        () => dry(Number(t)).dynamicViscosityPaS,
      ],
    ]),
    ...within({ ...common, unit: 'm2/s' }, { relative: 5e-5 }, kinematicReason, [
      [
        `air-dry-kinematic-${t}C`,
        `kinematic viscosity at ${t} C`,
        nu,
        () => dry(Number(t)).kinematicViscosityM2S,
      ],
    ]),
  ];
});

/** [name, t in C, relative humidity, p in Pa, ideal gas + Magnus, CIPM-2007, psychrolib 1.1.1] */
export const moistStates = [
  ['15C-dry', 15, 0, 101325, '1.22501', '1.22552', '1.22505'],
  ['15C-80', 15, 0.8, 101325, '1.21879', '1.21930', '1.21881'],
  ['20C-50', 20, 0.5, 101325, '1.19888', '1.19931', '1.19890'],
  ['5C-70', 5, 0.7, 103000, '1.28714', '1.28784', '1.28718'],
] as const;

const describeState = (t: number, humidity: number, p: number): string =>
  `density at ${t} C, ${humidity * 100} % humidity, ${p} Pa`;

const moistTranscription = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'Ideal gas for moist air with the Magnus vapour pressure (WMO)',
      where: 'table of four states of moist air',
    },
    confidence: 'derived',
    unit: 'kg/m3',
  },
  moistStates.map(([name, t, humidity, p, simple]): Row => [
    `air-moist-${name}`,
    describeState(t, humidity, p),
    simple,
    density(t, humidity, p),
  ]),
);

const moistCipm = within(
  {
    topic,
    kind: 'external',
    source: {
      title: 'Picard, Davis, Gläser, Fujii, CIPM-2007, Metrologia 45 (2008) 149',
      where: 'the full formula, evaluated apart from the model',
    },
    confidence: 'second-hand',
    unit: 'kg/m3',
  },
  { relative: 6e-4 },
  'the model leaves out compressibility and the enhancement factor, together about 0.05 %',
  moistStates.map(([name, t, humidity, p, , cipm]): Row => [
    `air-cipm-${name}`,
    describeState(t, humidity, p),
    cipm,
    density(t, humidity, p),
  ]),
);

const psychrolibSource = {
  title: 'ASHRAE Handbook Fundamentals 2017 as programmed in psychrolib 1.1.1',
  where: 'GetMoistAirDensity, GetSatVapPres',
};

const moistPsychrolib = within(
  { topic, kind: 'external', source: psychrolibSource, confidence: 'read', unit: 'kg/m3' },
  { relative: 5e-5 },
  'gas constants 287.042 there and 287.05 here: 3e-5; the rest is the vapour pressure formula',
  moistStates.map(([name, t, humidity, p, , , psychrolib]): Row => [
    `air-psychrolib-${name}`,
    describeState(t, humidity, p),
    psychrolib,
    density(t, humidity, p),
  ]),
);

const magnus = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: { title: 'Magnus formula, WMO', where: 'saturation pressure at 20 C' },
    confidence: 'derived',
    unit: 'Pa',
  },
  [
    [
      'air-saturation-magnus',
      'saturation vapour pressure at 20 C',
      '2332.60',
      () => saturationVapourPressurePa(20),
    ],
  ],
);

/** [name, title, where, confidence, printed]: three other formulas for the saturation pressure at 20 C. */
const otherSaturation = [
  [
    'cipm',
    'Picard et al., CIPM-2007, Metrologia 45 (2008) 149',
    'saturation pressure psv',
    'second-hand',
    '2339.16',
  ],
  ['buck', 'Buck 1996', 'saturation over water', 'from memory', '2338.34'],
  ['psychrolib', psychrolibSource.title, 'GetSatVapPres', 'read', '2338.80'],
] as const;

const saturation = otherSaturation.flatMap(([name, title, where, confidence, printed]) =>
  within(
    { topic, kind: 'external', source: { title, where }, confidence, unit: 'Pa' },
    { relative: 3e-3 },
    'Magnus is the simplest of the forms; 0.3 % of the vapour pressure moves the density by 0.003 %',
    [
      [
        `air-saturation-${name}`,
        'saturation vapour pressure at 20 C',
        printed,
        () => saturationVapourPressurePa(20),
      ],
    ],
  ),
);

export const airChecks: readonly PublishedCheck[] = [
  ...atmosphereDensity,
  ...atmosphereViscosity,
  ...kinematic,
  ...byTemperature,
  ...moistTranscription,
  ...moistCipm,
  ...moistPsychrolib,
  ...magnus,
  ...saturation,
];
