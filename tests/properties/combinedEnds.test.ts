import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addSource, emptySum, endsOf } from '../../src/physics/doubt/combinedEnds';
import { between } from './arbitraries';

/** Standard deviations from a normal's middle to the end of its 90 % range. */
const z = 1.6448536269514722;

interface Moments {
  readonly mean: number;
  readonly variance: number;
  readonly third: number;
}

/** About zero E x = (a - b) / sqrt(2 pi), E x^2 = (a^2 + b^2) / 2, E x^3 = (a^3 - b^3) sqrt(2 / pi), half-normal to each side. */
function momentsOf(above: number, below: number): Moments {
  const mean = (above - below) / Math.sqrt(2 * Math.PI);
  const square = (above ** 2 + below ** 2) / 2;
  const cube = (above ** 3 - below ** 3) * Math.sqrt(2 / Math.PI);
  return { mean, variance: square - mean ** 2, third: cube - 3 * mean * square + 2 * mean ** 3 };
}

const sources = fc.array(fc.tuple(between(1, 10), between(1, 10)), { minLength: 3, maxLength: 12 });

describe('the range of a sum of lopsided sources', () => {
  it('is that of one lopsided source with the mean, the variance and the third moment of the sum', () => {
    fc.assert(
      fc.property(sources, (sides) => {
        const sum = emptySum();
        for (const [up, down] of sides) addSource(sum, up, -down);
        const { low, high } = endsOf(sum);
        const parts = sides.map(([up, down]) => momentsOf(up / z, down / z));
        const total = (key: keyof Moments): number => parts.reduce((all, part) => all + part[key], 0);
        // From the two ends and the mean: lean a - b, and a + b.
        const lean = (high + low - 2 * total('mean')) / (z - 2 / Math.sqrt(2 * Math.PI));
        const both = (high - low) / z;
        const one = momentsOf((both + lean) / 2, (both - lean) / 2);
        expect(one.variance / total('variance')).toBeCloseTo(1, 10);
        expect((one.third - total('third')) / total('variance') ** 1.5).toBeCloseTo(0, 10);
      }),
      { numRuns: 300 },
    );
  });

  it('of a single source is its own, one that goes one way only too', () => {
    for (const [up, down] of [
      [10, 0],
      [0, -10],
      [4, -9],
      [0, 0],
    ] as const) {
      const sum = emptySum();
      addSource(sum, up, down);
      const { low, high } = endsOf(sum);
      expect(low).toBeCloseTo(down, 10);
      expect(high).toBeCloseTo(up, 10);
    }
  });

  it('never passes the plain sum of the sources’ own ends', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(between(0, 10), between(0, 10)), { maxLength: 6 }), (sides) => {
        const sum = emptySum();
        for (const [up, down] of sides) addSource(sum, up, -down);
        const { low, high } = endsOf(sum);
        expect(high).toBeLessThanOrEqual(sides.reduce((all, [up]) => all + up, 0) + 1e-12);
        expect(low).toBeGreaterThanOrEqual(-sides.reduce((all, [, down]) => all + down, 0) - 1e-12);
      }),
    );
  });
});
