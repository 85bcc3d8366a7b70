import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../src/units/parse';
import { formatQuantity } from '../../src/units/print';
import { defaultUnits, unitsOf } from '../../src/units/unitTable';
import type { Dimension } from '../../src/units/unitTable';

const dimensions = Object.keys(defaultUnits) as Dimension[];

describe('what people type', () => {
  it.each([
    ['22 kn', 'speed', (22 * 1852) / 3600],
    ['22kts', 'speed', (22 * 1852) / 3600],
    ['11,3 m/s', 'speed', 11.3],
    ['11.3', 'speed', (11.3 * 1852) / 3600],
    ['100mm', 'length', 0.1],
    ['1/4 in', 'length', 0.00635],
    ['1 1/4 in', 'length', 0.03175],
    ['½ in', 'length', 0.0127],
    ['1½"', 'length', 0.0381],
    ["6'", 'length', 1.8288],
    ['12 345 N', 'force', 12345],
    ['12\u2009345 N', 'force', 12345],
    ["12'345 N", 'force', 12345],
    ['-12.5°', 'angle', (-12.5 * Math.PI) / 180],
    ['\u22125 deg', 'angle', (-5 * Math.PI) / 180],
    ['1e3', 'power', 1000],
    ['1 HP', 'power', 745.69987158227022],
    ['1 ps', 'power', 735.49875],
    ['1 hp (metric)', 'power', 735.49875],
    ['0.01 1/m', 'perLength', 0.01],
    ['33 t.m', 'moment', 33 * 9806.65],
    ['4 kN·m', 'moment', 4000],
    ['0,05 m²', 'area', 0.05],
    ['500 cm2', 'area', 0.05],
    ['1013.25', 'pressure', 101325],
    ['20', 'temperature', 293.15],
    ['-5 °C', 'temperature', 268.15],
    ['300 K', 'temperature', 300],
    ['.5', 'none', 0.5],
    ['50 %', 'none', 0.5],
    ['+3,', 'none', 3],
    ['1,234', 'none', 1.234],
  ] as const)('"%s" is read as %s', (text, dimension, valueSi) => {
    const parsed = parseQuantity(text, dimension);
    expect(parsed.kind).toBe('quantity');
    if (parsed.kind === 'quantity')
      expect(parsed.valueSi).toBeCloseTo(valueSi, 12 - Math.ceil(Math.log10(Math.abs(valueSi) + 1)));
  });

  it('takes the unit of the field when none is typed, and says so', () => {
    expect(parseQuantity('30', 'length', 'mm')).toEqual({
      kind: 'quantity',
      valueSi: 0.03,
      value: 30,
      unit: 'mm',
      isUnitTyped: false,
    });
    expect(parseQuantity('30 m', 'length', 'mm')).toMatchObject({ unit: 'm', isUnitTyped: true });
  });
});

describe('what cannot be read', () => {
  it.each([
    ['', 'speed', 'empty', 'speed'],
    ['   ', 'speed', 'empty', '12.5 kn'],
    ['fast', 'speed', 'notANumber', '"fast"'],
    ['kn 22', 'speed', 'notANumber', 'number'],
    ['--5', 'force', 'notANumber', 'force'],
    ['NaN', 'force', 'notANumber', 'force'],
    ['Infinity', 'force', 'notANumber', 'force'],
    ['1,234.5 N', 'force', 'ambiguous', '1234.5'],
    ['1.234.567', 'force', 'ambiguous', 'more than one way'],
    ['12 34 N', 'force', 'ambiguous', 'more than one way'],
    ['22 m', 'speed', 'wrongUnit', 'a length'],
    ['5 bananas', 'length', 'unknownUnit', 'mm'],
    ['5 constructor', 'length', 'unknownUnit', 'mm'],
    ['5 %', 'length', 'wrongUnit', 'a plain number'],
    ['1/0 in', 'length', 'dividesByZero', 'zero'],
    ['1e999', 'power', 'outOfReach', 'too large'],
    ['1e308 kW', 'power', 'outOfReach', 'too large'],
    ['1'.repeat(61), 'power', 'tooLong', '60'],
  ] as const)('"%s" as %s is refused as %s', (text, dimension, problem, words) => {
    const parsed = parseQuantity(text, dimension);
    expect(parsed).toMatchObject({ kind: 'problem', problem });
    if (parsed.kind === 'problem') expect(parsed.message).toContain(words);
  });

  it('never throws and never answers with a number that is not finite', () => {
    const text = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 80 }),
      fc.string({ unit: fc.constantFrom(...Array.from('0123456789.,-+e/ \'"%kmnsNWh°½')), maxLength: 80 }),
    );
    fc.assert(
      fc.property(text, fc.constantFrom(...dimensions), (typed, dimension) => {
        const parsed = parseQuantity(typed, dimension);
        if (parsed.kind === 'quantity') expect(Number.isFinite(parsed.valueSi)).toBe(true);
        else expect(parsed.message).not.toBe('');
      }),
      { numRuns: 1000 },
    );
  });
});

describe('printing and reading together', () => {
  it.each(dimensions)('what is printed of %s can be typed back, to its three figures', (dimension) => {
    fc.assert(
      fc.property(
        fc.constantFrom(...unitsOf(dimension)),
        fc.double({ min: 0.01, max: 9e6, noNaN: true }),
        fc.boolean(),
        (unit, size, isNegative) => {
          const parsed0 = parseQuantity(String(isNegative ? -size : size), dimension, unit);
          if (parsed0.kind !== 'quantity') throw new Error(parsed0.message);
          const parsed = parseQuantity(formatQuantity(parsed0.valueSi, unit), dimension, unit);
          if (parsed.kind !== 'quantity') throw new Error(parsed.message);
          expect(parsed.unit).toBe(unit);
          // Half a unit of the third figure at most, and a little for converting 0.01 °C to kelvin and back.
          expect(Math.abs(parsed.value - parsed0.value)).toBeLessThanOrEqual(size * 0.0051 + 1e-12);
        },
      ),
    );
  });
});
