import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSi } from '../../src/units/convert';
import { typedNumber } from '../../src/units/typedNumber';
import type { Unit } from '../../src/units/unitTable';

const units: readonly Unit[] = ['kn', 'km/h', 'mph', 'm/s', 'mm', 'in', 'ft', 'm', 'N', 'kgf', 'lbf'];

describe('the number that a person would have typed', () => {
  it('is the round one where the stored value was rounded to its place', () => {
    expect(typedNumber(11.061, 'kn')).toBe(21.5);
    expect(typedNumber(12.347, 'kn')).toBe(24);
    expect(typedNumber(4.681, 'kn')).toBe(9.1);
    expect(typedNumber(-11.061, 'kn')).toBe(-21.5);
  });

  it('has six figures where the stored value is a round one in another unit', () => {
    expect(typedNumber(7, 'kn')).toBe(13.6069);
    expect(typedNumber(0.005, 'in')).toBe(0.19685);
    expect(typedNumber(0, 'kn')).toBe(0);
  });

  it('is never off by more than one in ten thousand, however round the stored value', () => {
    expect(typedNumber(100, 'kn')).toBe(194.4);
    expect(typedNumber(1000, 'ft')).toBe(3281);
    expect(typedNumber(12.7, 'kgf')).toBe(1.295);
    expect(typedNumber(0.0257, 'in')).toBe(1.0118);
  });

  it('loses nothing of what was typed in its own unit, to six figures', () => {
    fc.assert(
      fc.property(fc.constantFrom(...units), fc.integer({ min: -99_999, max: 99_999 }), (unit, whole) => {
        const typed = whole / 1000;
        expect(typedNumber(toSi(typed, unit), unit)).toBe(typed === 0 ? 0 : typed);
      }),
    );
  });

  it('stands for the stored value to its last digit, or has six figures', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.integer({ min: 1, max: 999_999 }),
        fc.integer({ min: 0, max: 4 }),
        (unit, whole, decimals) => {
          const stored = Number((whole / 10 ** decimals).toFixed(decimals));
          const back = toSi(typedNumber(stored, unit), unit);
          expect(Math.abs(back - stored)).toBeLessThanOrEqual(
            Math.max(0.5 * 10 ** -decimals, 5.1e-6 * stored) * (1 + 1e-9),
          );
        },
      ),
    );
  });
});
