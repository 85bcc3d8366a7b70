import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossings } from '../../../src/physics/numerics/crossings';

const tolerance = 1e-9;

function expectClose(found: readonly number[], expected: readonly number[]): void {
  expect(found).toHaveLength(expected.length);
  expected.forEach((x, i) => {
    expect(Math.abs((found[i] ?? NaN) - x)).toBeLessThanOrEqual(tolerance);
  });
}

describe('the crossings of a curve with zero', () => {
  it('are none where it keeps its sign', () => {
    expect(crossings((x) => x * x + 1, -2, 2, 0.3, tolerance)).toEqual([]);
    expect(crossings(() => -1, -2, 2, 0.3, tolerance)).toEqual([]);
  });

  it('is one where it changes once, also when a sample hits it', () => {
    expectClose(
      crossings((x) => x - 0.7, 0, 2, 0.3, tolerance),
      [0.7],
    );
    expectClose(
      crossings((x) => 1 - x, 0, 2, 0.5, tolerance),
      [1],
    );
  });

  it('are all of several, in rising order', () => {
    const found = crossings(Math.sin, 1, 20, 0.5, tolerance);
    expectClose(
      found,
      [1, 2, 3, 4, 5, 6].map((k) => k * Math.PI),
    );
  });

  it('are both of a pair inside one step, above and below, in the middle and at an end', () => {
    for (const [low, high] of [
      [0.51, 0.53],
      [0.02, 0.03],
      [1.97, 1.99],
      [0.999, 1.001],
    ] as const) {
      expectClose(
        crossings((x) => (x - low) * (x - high), 0, 2, 0.5, tolerance),
        [low, high],
      );
      expectClose(
        crossings((x) => (low - x) * (x - high), 0, 2, 0.5, tolerance),
        [low, high],
      );
    }
  });

  it('are none where it only touches zero, at a sample or between', () => {
    expect(crossings((x) => (x - 1) ** 2, 0, 2, 0.5, tolerance)).toEqual([]);
    expect(crossings((x) => -((x - 0.7) ** 2), 0, 2, 0.5, tolerance)).toEqual([]);
    expect(crossings((x) => Math.max(Math.abs(x - 1) - 0.3, 0), 0, 2, 0.1, tolerance)).toEqual([]);
  });

  it('are none where it is zero all over, or zero at an end', () => {
    expect(crossings(() => 0, 0, 2, 0.5, tolerance)).toEqual([]);
    expect(crossings((x) => x, 0, 2, 0.5, tolerance)).toEqual([]);
    expect(crossings((x) => x - 2, 0, 2, 0.5, tolerance)).toEqual([]);
  });

  it('is one on the stretch of zero over which the sign changes', () => {
    const found = crossings((x) => Math.max(x - 1.2, 0) + Math.min(x - 0.8, 0), 0, 2, 0.1, tolerance);
    expect(found).toHaveLength(1);
    expect(Math.abs((found[0] ?? NaN) - 1)).toBeLessThanOrEqual(0.2 + tolerance);
  });

  it('are found in one step over the whole, and with no tolerance at all', () => {
    expectClose(
      crossings((x) => x ** 3 - 0.2, 0, 1, 5, 0),
      [0.2 ** (1 / 3)],
    );
  });

  it('are the roots of a polynomial that was made from them', () => {
    const apart = fc
      .uniqueArray(fc.integer({ min: 1, max: 39 }), { minLength: 0, maxLength: 6 })
      .map((places) => places.map((place) => place / 4 + 0.013).sort((a, b) => a - b));
    fc.assert(
      fc.property(apart, (roots) => {
        const curve = (x: number): number => roots.reduce((product, root) => product * (x - root), 1);
        expectClose(crossings(curve, 0, 10, 0.1, tolerance), roots);
      }),
    );
  });
});
