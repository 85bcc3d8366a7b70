/** What a quantity is; each dimension holds its values in one SI unit. */
export type Dimension =
  | 'none'
  | 'speed'
  | 'length'
  | 'angle'
  | 'force'
  | 'power'
  | 'moment'
  | 'area'
  | 'pressure'
  | 'temperature'
  | 'mass'
  | 'density'
  | 'duration'
  | 'frequency'
  | 'perLength'
  | 'secondMoment'
  | 'bendingStiffness'
  | 'massPerLength'
  | 'arealDensity'
  | 'dynamicViscosity'
  | 'kinematicViscosity';

export interface UnitDefinition {
  readonly dimension: Dimension;
  /** SI value of one unit is numerator / denominator; a fraction keeps 9 mm at 0.009 m to the last bit. */
  readonly numerator: number;
  readonly denominator: number;
  /** SI value of zero of this unit, after the factor; only temperature has one. */
  readonly offset?: number;
  /** As it stands after a number, for people. */
  readonly printed: string;
  /** Other ways people type it, beside the key and the printed form. */
  readonly typed: readonly string[];
}

function unit(
  dimension: Dimension,
  numerator: number,
  denominator: number,
  printed: string,
  typed: readonly string[] = [],
): UnitDefinition {
  return { dimension, numerator, denominator, printed, typed };
}

const standardGravity = 9.80665; // m/s2, exact by definition
const poundKg = 0.45359237; // exact
const poundForceN = 4.4482216152605; // = poundKg x standardGravity, exact
const mechanicalHorsepowerW = 745.69987158227022; // = 550 ft lbf/s, exact
const metricHorsepowerW = 735.49875; // = 75 kgf m/s, exact

/**
 * Every unit that the tool knows. The factors are exact: SI brochure (9th edition, 2019) for the metric ones and
 * the knot, NIST Special Publication 811 (2008), appendix B, for foot, pound, pound-force and the horsepowers.
 */
export const unitTable = {
  '1': unit('none', 1, 1, ''),
  '%': unit('none', 1, 100, '%', ['percent']),

  'm/s': unit('speed', 1, 1, 'm/s', ['mps', 'm/sec']),
  kn: unit('speed', 1852, 3600, 'kn', ['kt', 'kts', 'knot', 'knots']),
  'km/h': unit('speed', 1000, 3600, 'km/h', ['kmh', 'kph']),
  mph: unit('speed', 0.44704, 1, 'mph', ['mi/h']),

  m: unit('length', 1, 1, 'm', ['metre', 'metres', 'meter', 'meters']),
  mm: unit('length', 1, 1000, 'mm'),
  cm: unit('length', 1, 100, 'cm'),
  in: unit('length', 254, 10_000, 'in', ['inch', 'inches', '"', '″']),
  ft: unit('length', 3048, 10_000, 'ft', ['foot', 'feet', "'", '′']),
  nmi: unit('length', 1852, 1, 'nmi'),

  rad: unit('angle', 1, 1, 'rad'),
  deg: unit('angle', Math.PI, 180, '°', ['degree', 'degrees', 'º']),

  N: unit('force', 1, 1, 'N'),
  kN: unit('force', 1000, 1, 'kN'),
  kgf: unit('force', standardGravity, 1, 'kgf'),
  lbf: unit('force', poundForceN, 1, 'lbf'),

  W: unit('power', 1, 1, 'W'),
  kW: unit('power', 1000, 1, 'kW'),
  hp: unit('power', mechanicalHorsepowerW, 1, 'hp (mechanical)', ['hp mechanical', 'mechanical hp']),
  PS: unit('power', metricHorsepowerW, 1, 'hp (metric)', ['hp metric', 'metric hp']),

  'N m': unit('moment', 1, 1, 'N m', ['Nm', 'N.m', 'N·m', 'N*m']),
  'kN m': unit('moment', 1000, 1, 'kN m', ['kNm', 'kN.m', 'kN·m', 'kN*m']),
  't.m': unit('moment', 1000 * standardGravity, 1, 't.m', ['t m', 'tm', 't·m', 't*m']),

  m2: unit('area', 1, 1, 'm²', ['m^2', 'sqm', 'sq m']),
  cm2: unit('area', 1, 10_000, 'cm²', ['cm^2', 'sq cm']),

  Pa: unit('pressure', 1, 1, 'Pa'),
  MPa: unit('pressure', 1e6, 1, 'MPa'),
  GPa: unit('pressure', 1e9, 1, 'GPa'),
  hPa: unit('pressure', 100, 1, 'hPa', ['mbar', 'mb']),

  K: unit('temperature', 1, 1, 'K'),
  C: { ...unit('temperature', 1, 1, '°C', ['deg C', 'degC', 'celsius']), offset: 273.15 },

  kg: unit('mass', 1, 1, 'kg'),
  g: unit('mass', 1, 1000, 'g'),
  t: unit('mass', 1000, 1, 't'),
  lb: unit('mass', poundKg, 1, 'lb', ['lbs']),

  'kg/m3': unit('density', 1, 1, 'kg/m³', ['kg/m^3']),

  s: unit('duration', 1, 1, 's', ['sec']),
  min: unit('duration', 60, 1, 'min'),
  h: unit('duration', 3600, 1, 'h', ['hr', 'hrs', 'hour', 'hours']),

  Hz: unit('frequency', 1, 1, 'Hz'),
  m4: unit('secondMoment', 1, 1, 'm⁴', ['m^4']),
  cm4: unit('secondMoment', 1, 1e8, 'cm⁴', ['cm^4']),
  'N m2': unit('bendingStiffness', 1, 1, 'N m²', ['Nm2', 'N m^2']),
  'kg/m': unit('massPerLength', 1, 1, 'kg/m'),
  'kg/m2': unit('arealDensity', 1, 1, 'kg/m²', ['kg/m^2']),
  'g/m2': unit('arealDensity', 1, 1000, 'g/m²', ['g/m^2']),
  '1/m': unit('perLength', 1, 1, 'per m', ['N/(N m)', 'N/Nm']),
  'Pa s': unit('dynamicViscosity', 1, 1, 'Pa s', ['Pa.s', 'Pa·s']),
  'm2/s': unit('kinematicViscosity', 1, 1, 'm²/s', ['m^2/s']),
} as const satisfies Readonly<Record<string, UnitDefinition>>;

export type Unit = keyof typeof unitTable;

/** In which unit a bare number is read, where the field names no other. */
export const defaultUnits = {
  none: '1',
  speed: 'kn',
  length: 'm',
  angle: 'deg',
  force: 'N',
  power: 'W',
  moment: 'N m',
  area: 'm2',
  pressure: 'hPa',
  temperature: 'C',
  mass: 'kg',
  density: 'kg/m3',
  duration: 'h',
  frequency: 'Hz',
  perLength: '1/m',
  secondMoment: 'cm4',
  bendingStiffness: 'N m2',
  massPerLength: 'kg/m',
  arealDensity: 'kg/m2',
  dynamicViscosity: 'Pa s',
  kinematicViscosity: 'm2/s',
} as const satisfies Readonly<Record<Dimension, Unit>>;

/** How a dimension is called in a sentence. */
export const dimensionNames = {
  none: 'a plain number',
  speed: 'a speed',
  length: 'a length',
  angle: 'an angle',
  force: 'a force',
  power: 'a power',
  moment: 'a moment',
  area: 'an area',
  pressure: 'a pressure',
  temperature: 'a temperature',
  mass: 'a mass',
  density: 'a density',
  duration: 'a time',
  frequency: 'a frequency',
  perLength: 'a value per length',
  secondMoment: 'a second moment of area',
  bendingStiffness: 'a bending stiffness',
  massPerLength: 'a mass per length',
  arealDensity: 'a mass per area',
  dynamicViscosity: 'a dynamic viscosity',
  kinematicViscosity: 'a kinematic viscosity',
} as const satisfies Readonly<Record<Dimension, string>>;

export function definitionOf(unitName: Unit): UnitDefinition {
  return unitTable[unitName];
}

export function isUnit(name: string): name is Unit {
  return Object.hasOwn(unitTable, name);
}

export function unitsOf(dimension: Dimension): readonly Unit[] {
  return Object.keys(unitTable).filter(
    (name): name is Unit => isUnit(name) && definitionOf(name).dimension === dimension,
  );
}
