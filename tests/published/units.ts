import { standardGravityMs2 } from '../../src/physics/wind/windProfile';
import { fromSi, toSi } from '../../src/units/convert';
import type { PublishedCheck, Row } from './publishedCheck';
import { toLastDigit, within } from './publishedCheck';

const topic = 'Units';

const definitions = {
  topic,
  kind: 'transcription',
  source: { title: 'SI brochure (2019); NIST Special Publication 811 (2008)', where: 'exact by definition' },
  confidence: 'from memory',
} as const;
const horsepowers = { ...definitions, confidence: 'second-hand' } as const;
const exact = [{ relative: 1e-15 }, 'exact by definition: the last bits of a double'] as const;

const one = (
  unit: 'nmi' | 'kn' | 'mph' | 'ft' | 'in' | 'lb' | 'lbf' | 'kgf' | 'hPa' | 'hp' | 'PS',
  what: string,
  printed: string,
): Row => [`unit-${unit}`, what, printed, () => toSi(1, unit)];

export const unitChecks: readonly PublishedCheck[] = [
  ...within({ ...definitions, unit: 'm' }, ...exact, [
    one('nmi', 'international nautical mile', '1852'),
    one('ft', 'foot', '0.3048'),
    one('in', 'inch', '0.0254'),
  ]),
  ...within({ ...definitions, unit: 'm/s' }, ...exact, [one('mph', 'statute mile per hour', '0.44704')]),
  ...toLastDigit({ ...definitions, unit: 'm/s' }, [
    one('kn', 'knot', '0.514444'),
    ['unit-10kn', '10 knots', '5.144444', () => toSi(10, 'kn')],
  ]),
  ...within({ ...definitions, unit: 'm/s2' }, ...exact, [
    ['unit-gravity', 'standard gravity', '9.80665', () => standardGravityMs2],
  ]),
  ...within({ ...definitions, unit: 'kg' }, ...exact, [one('lb', 'pound', '0.45359237')]),
  ...within({ ...definitions, unit: 'N' }, ...exact, [
    one('lbf', 'pound-force', '4.4482216152605'),
    one('kgf', 'kilogram-force', '9.80665'),
  ]),
  ...within({ ...definitions, unit: 'Pa' }, ...exact, [one('hPa', 'hectopascal', '100')]),
  ...within({ ...definitions, unit: 'K' }, ...exact, [
    ['unit-zero-C', 'zero Celsius', '273.15', () => toSi(0, 'C')],
  ]),
  ...within({ ...horsepowers, unit: 'W' }, ...exact, [
    one('hp', 'mechanical horsepower', '745.69987158227022'),
    one('PS', 'metric horsepower', '735.49875'),
  ]),
  ...toLastDigit({ ...horsepowers, unit: 'hp' }, [
    ['unit-kW-hp', '1 kW in mechanical horsepower', '1.341022', () => fromSi(1000, 'hp')],
    ['unit-kW-PS', '1 kW in metric horsepower', '1.359622', () => fromSi(1000, 'PS')],
  ]),
];
