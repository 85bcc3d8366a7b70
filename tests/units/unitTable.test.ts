import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, toSi } from '../../src/units/convert';
import { defaultUnits, definitionOf, isUnit, unitTable, unitsOf } from '../../src/units/unitTable';
import type { Dimension } from '../../src/units/unitTable';
import { between } from '../properties/arbitraries';

const allUnits = Object.keys(unitTable).filter(isUnit);
const allDimensions = Object.keys(defaultUnits) as Dimension[];

// SI brochure, 9th edition (2019), and NIST Special Publication 811 (2008), appendix B.8: exact by definition.
describe('published factors', () => {
  it.each([
    ['nmi', 1852],
    ['kn', 1852 / 3600],
    ['kgf', 9.80665],
    ['ft', 0.3048],
    ['in', 0.0254],
    ['lb', 0.45359237],
    ['lbf', 4.4482216152605],
    ['hp', 745.69987158227022],
    ['PS', 735.49875],
    ['mph', 0.44704],
    ['hPa', 100],
    ['MPa', 1e6],
    ['GPa', 1e9],
    ['cm4', 1e-8],
    ['g/m2', 1e-3],
  ] as const)('one %s is exactly %d in SI', (unit, sizeSi) => {
    expect(toSi(1, unit)).toBe(sizeSi);
  });

  it('puts 0 °C at 273.15 K', () => {
    expect(toSi(0, 'C')).toBe(273.15);
  });

  it('reads 10 kn as 5.144444 m/s, to the printed digits', () => {
    expect(toSi(10, 'kn')).toBeCloseTo(5.144444, 6);
  });

  it('makes 1 kW 1.341022 mechanical and 1.359622 metric horsepower, to the printed digits', () => {
    expect(fromSi(1000, 'hp')).toBeCloseTo(1.341022, 6);
    expect(fromSi(1000, 'PS')).toBeCloseTo(1.359622, 6);
  });
});

describe('factors follow from one another', () => {
  it('a pound-force is a pound times standard gravity', () => {
    expect(toSi(1, 'lbf')).toBeCloseTo(toSi(1, 'lb') * toSi(1, 'kgf'), 13);
  });

  it('a mechanical horsepower is 550 foot pound-force a second', () => {
    expect(toSi(1, 'hp')).toBeCloseTo(550 * toSi(1, 'ft') * toSi(1, 'lbf'), 10);
  });

  it('a metric horsepower is 75 kilogram-force metre a second', () => {
    expect(toSi(1, 'PS')).toBeCloseTo(75 * toSi(1, 'kgf'), 10);
  });

  it('a tonne metre is 9806.65 N m', () => {
    expect(toSi(1, 't.m')).toBeCloseTo(9806.65, 9);
  });

  it('a mile an hour is 5280 feet in 3600 seconds', () => {
    expect(toSi(1, 'mph')).toBeCloseTo((5280 * toSi(1, 'ft')) / 3600, 14);
  });

  it('180 degrees are pi', () => {
    expect(toSi(180, 'deg')).toBe(Math.PI);
  });
});

describe('the table', () => {
  it.each(allDimensions)('reads a bare %s in a unit of that dimension', (dimension) => {
    expect(unitsOf(dimension)).toContain(defaultUnits[dimension]);
  });

  it.each(allDimensions)(
    'has exactly one way to read each spelling of %s, whatever the capitals',
    (dimension) => {
      const spellings = unitsOf(dimension).flatMap((unit) => {
        const { printed, typed } = definitionOf(unit);
        return [...new Set([unit, printed, ...typed].map((spelling) => spelling.toLowerCase()))];
      });
      expect(spellings).toEqual([...new Set(spellings)]);
    },
  );

  it.each(allUnits)('converts to %s and back to the same number', (unit) => {
    fc.assert(
      fc.property(between(-1e9, 1e9), (value) => {
        const offset = definitionOf(unit).offset ?? 0;
        expect(Math.abs(fromSi(toSi(value, unit), unit) - value)).toBeLessThanOrEqual(
          // Below the last term doubles themselves lose digits.
          4 * Number.EPSILON * Math.max(Math.abs(value), offset) + 1e-300,
        );
      }),
    );
  });

  it('keeps whole millimetres at the double nearest to their metres', () => {
    for (let lengthMm = 0; lengthMm <= 2000; lengthMm += 1)
      expect(toSi(lengthMm, 'mm')).toBe(Number(`${String(lengthMm)}e-3`));
  });
});
