import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dnvEndFactor,
  dnvEndNodes,
  effectiveSlenderness,
  endFactor,
  type EndKind,
  type EndMethod,
} from '../../src/physics/section/endEffect';
import { between } from './arbitraries';

const methods: readonly EndMethod[] = ['dnv', 'en'];
const logSlenderness = between(-1, 4);
const logReynolds = fc.double({ min: 1, max: 8, noNaN: true });

describe.each(methods)('factor of finite length, %s', (method) => {
  it('has no step in slenderness or Reynolds number', () => {
    const nodes = [...dnvEndNodes.map(([ratio]) => ratio), 1, 70];
    fc.assert(
      fc.property(
        fc.oneof(
          logSlenderness.map((log) => 10 ** log),
          fc.constantFrom(...nodes),
        ),
        logReynolds,
        (ratio, log) => {
          const here = endFactor(method, ratio, log);
          for (const near of [
            endFactor(method, ratio * (1 + 1e-9), log),
            endFactor(method, ratio * (1 - 1e-9), log),
            endFactor(method, ratio, log + 1e-9),
            endFactor(method, ratio, log - 1e-9),
          ]) {
            expect(Math.abs(near - here)).toBeLessThan(1e-7);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('grows with slenderness and stays between 0.5 and 1', () => {
    fc.assert(
      fc.property(logSlenderness, between(0, 1), logReynolds, (log, more, Re) => {
        const short = endFactor(method, 10 ** log, Re);
        const long = endFactor(method, 10 ** (log + more), Re);
        expect(short).toBeGreaterThanOrEqual(0.5);
        expect(long).toBeLessThanOrEqual(1);
        expect(long).toBeGreaterThanOrEqual(short - 1e-12);
      }),
    );
  });

  it('is 1 from slenderness 200 up and between two closed ends', () => {
    expect(endFactor(method, 200, 4)).toBe(1);
    expect(endFactor(method, 199.999999, 4)).toBeCloseTo(1, 7);
    expect(endFactor(method, effectiveSlenderness(3, ['surface', 'joined']), 4)).toBe(1);
  });
});

describe('ends', () => {
  it('one closed end doubles the slenderness, whichever end and however closed', () => {
    const closed: readonly EndKind[] = ['surface', 'joined'];
    for (const kind of closed) {
      expect(effectiveSlenderness(12, [kind, 'free'])).toBe(24);
      expect(effectiveSlenderness(12, ['free', kind])).toBe(24);
    }
    expect(effectiveSlenderness(12, ['free', 'free'])).toBe(12);
  });

  it("DNV's factor is held below l/d 2", () => {
    expect(dnvEndFactor(0.5, 4)).toBe(dnvEndFactor(2, 4));
  });

  it("DNV's factor passes from one column to the other around Re 2e5, half way there", () => {
    expect(dnvEndFactor(10, Math.log10(2e5))).toBeCloseTo((0.68 + 0.82) / 2, 12);
    expect(dnvEndFactor(10, Math.log10(2e5) - 0.16)).toBe(0.68);
    expect(dnvEndFactor(10, Math.log10(2e5) + 0.16)).toBeCloseTo(0.82, 14);
  });
});

describe('between the nodes of DNV’s table', () => {
  /** Kept a second time: l/d, below Re 2e5, above. */
  const drawn = [
    [2, 0.58, 0.8],
    [5, 0.62, 0.8],
    [10, 0.68, 0.82],
    [20, 0.74, 0.9],
    [40, 0.82, 0.98],
    [50, 0.87, 0.99],
    [100, 0.98, 1],
    [200, 1, 1],
  ] as const;

  it('the factor lies half way where the logarithm of the slenderness does', () => {
    drawn.slice(1).forEach(([right, below, above], i) => {
      const [left, belowLeft, aboveLeft] = drawn[i] ?? [NaN, NaN, NaN];
      const middle = Math.sqrt(left * right);
      expect(dnvEndFactor(middle, 5)).toBeCloseTo((below + belowLeft) / 2, 12);
      expect(dnvEndFactor(middle, 6)).toBeCloseTo((above + aboveLeft) / 2, 12);
    });
  });
});
