import { describe, expect, it } from 'vitest';
import { halfLastDigitSi } from '../../src/units/writtenDigits';

describe('half of the last digit that counts', () => {
  it.each([
    ['170 W', 'W', 5],
    ['24 N', 'N', 0.5],
    ['5275 N', 'N', 0.5],
    ['100 N', 'N', 5],
    ['1200 W', 'W', 50],
    ['11000 W', 'W', 500],
    ['2000', 'N', 50],
    ['5 N', 'N', 0.5],
    ['0.563 hp', 'hp', 0.0005 * 745.69987158227022],
    ['7.55 kW', 'kW', 5],
    ['0,30 m2', 'm2', 0.005],
    ['6.6e4', '1', 500],
    ['7e-3 m', 'm', 0.0005],
    ['1\u2009200 W', 'W', 50],
    ['-50 W', 'W', 0.5 * 1],
    ['.8 m2', 'm2', 0.05],
  ] as const)('of %s (%s) is %f in SI', (text, unit, half) => {
    expect(halfLastDigitSi(text, unit)).toBeCloseTo(half, 12);
  });

  it('is none for a fraction, whose unit may hold a stroke', () => {
    expect(halfLastDigitSi('1/4 in', 'in')).toBe(0);
    expect(halfLastDigitSi('½ in', 'in')).toBe(0);
    expect(halfLastDigitSi('12 m/s', 'm/s')).toBe(0.5);
  });
});
