import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatPlain } from '../../src/units/plain';
import {
  columnDecimals,
  formatQuantity,
  formatRange,
  formatValue,
  formatValueRange,
  printUnit,
} from '../../src/units/print';
import { printNumber } from '../../src/units/printIn';

const minus = '\u2212';
const thin = '\u2009';
const space = '\u00a0';

describe('a quantity for people', () => {
  it.each([
    [0, '0'],
    [1.2345, '1.23'],
    [12.345, '12.3'],
    [99.94, '99.9'],
    [99.96, '100'],
    [123.45, '123'],
    [999.6, '1000'],
    [1234.5, '1235'],
    [12345, `12${thin}345`],
    [1234567, `1${thin}234${thin}567`],
    [0.5, '0.500'],
    [0.01234, '0.0123'],
    [-3.14159, `${minus}3.14`],
    [-12345, `${minus}12${thin}345`],
    [-0, '0'],
    [Number.NaN, '\u2013'],
    [Infinity, '\u2013'],
  ])('prints %d with three figures as %s', (value, text) => {
    expect(formatValue(value, '1')).toBe(text);
  });

  it('gives very small and very large numbers a power of ten', () => {
    expect(printNumber(1.5e-5)).toEqual({ digits: '1.50', exponent: `${minus}5` });
    expect(printNumber(-2.5e7)).toEqual({ digits: `${minus}2.50`, exponent: '7' });
    expect(formatValue(1.5e-5, 'm2/s')).toBe(`1.50${space}\u00d7${space}10\u207b\u2075`);
  });

  it('keeps the place that a column asks for, and gives no minus to a zero', () => {
    expect(formatValue(1234.56, 'N', { decimals: 1 })).toBe('1234.6');
    expect(formatValue(0.00004, 'N', { decimals: 1 })).toBe('0.0');
    expect(formatValue(-0.04, 'N', { decimals: 1 })).toBe('0.0');
  });

  it.each([
    [11.31777778, 'kn', `22.0${space}kn`],
    [-Math.PI / 36, 'deg', `${minus}5.00°`],
    [0.05, 'mm', `50.0${space}mm`],
    [293.15, 'C', `20.0${space}°C`],
    [745.69987158227022, 'hp', `1.00${space}hp${space}(mechanical)`],
    [98.0665, 't.m', `0.0100${space}t.m`],
    [1500, 'kN m', `1.50${space}kN${space}m`],
    [0.25, '1', '0.250'],
    [0.25, '%', `25.0${space}%`],
  ] as const)('prints %d SI in %s as %s', (valueSi, unit, text) => {
    expect(formatQuantity(valueSi, unit)).toBe(text);
  });

  it('prints units for a head with raised figures and spaces that do not break', () => {
    expect(printUnit('m2')).toBe('m²');
    expect(printUnit('N m')).toBe(`N${space}m`);
  });

  it('rounds a column to one place, the one its largest number wants', () => {
    expect(columnDecimals([3, 45.2, -7], 'N')).toBe(1);
    expect(columnDecimals([3, -145.2, 7], 'W')).toBe(0);
    expect(columnDecimals([0.02, 1.5], '1')).toBe(2);
    expect(columnDecimals([], 'N')).toBe(0);
    expect(columnDecimals([Number.NaN, 12], 'N')).toBe(1);
  });
});

describe('a spread', () => {
  it.each([
    [36.2, 48.4, '36.2\u201348.4'],
    [0.9, 1.3, '0.90\u20131.30'],
    [80, 120, '80\u2013120'],
    [0, 5, '0.00\u20135.00'],
    [-5, 12, `${minus}5.0 to 12.0`],
    [-12, -5, `${minus}12.0 to ${minus}5.0`],
    [0, 0, '0\u20130'],
    [9000, 12345, `9000\u201312${thin}345`],
  ])('from %d to %d reads %s', (low, high, text) => {
    expect(formatValueRange(low, high, '1')).toBe(text);
  });

  it('carries its unit once', () => {
    expect(formatRange(36, 48, 'W')).toBe(`36.0\u201348.0${space}W`);
    expect(formatRange(0, Math.PI / 6, 'deg')).toBe('0.0\u201330.0°');
  });

  it('keeps powers of ten where the numbers need them', () => {
    expect(formatValueRange(1.4e-5, 1.6e-5, 'm2/s')).toMatch(/^1\.40.+ to 1\.60.+$/);
  });
});

describe('a number for files', () => {
  it('reads back as the same number, in plain ASCII', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const text = formatPlain(value);
        expect(text).toMatch(/^-?[0-9.e+-]+$/);
        expect(Number(text)).toBe(value === 0 ? 0 : value);
      }),
    );
  });

  it('converts when a unit is asked for', () => {
    expect(formatPlain(0.1, 'mm')).toBe('100');
    expect(formatPlain(-0)).toBe('0');
  });
});
