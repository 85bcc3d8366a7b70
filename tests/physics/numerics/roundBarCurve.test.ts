import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundBarDrag, roundBarSurface, type RoundBarDrag } from '../../../src/physics/section/roundBar';
import { roundBarNodes } from '../../../src/physics/section/roundBarTable';

const roughnesses = [0, 1e-6, 1e-5, 3e-5, 1e-4, 5e-4, 2e-3, 1e-2, 5e-2];
const cosines = [1, 0.9, Math.SQRT1_2, 0.6, 0.5, 0.2, 0];
const plateau = 1.2;
const edges = ['low', 'best', 'high'] as const;

function dragAt(Re: number, relativeRoughness: number, cosine: number): RoundBarDrag {
  const out = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };
  return roundBarDrag(Re, roundBarSurface(relativeRoughness, 1), cosine, out);
}

const cases = roughnesses.flatMap((roughness) => cosines.map((cosine) => [roughness, cosine] as const));

/** Reynolds numbers where something joins: nodes, ends of ramps, EN's start, and the same seen through a shifted entry. */
function joints(roughness: number, cosine: number): number[] {
  const shift = dragAt(1e5, roughness, cosine).logCrisisReynolds - 5;
  const nodes = roundBarNodes.map(([Re]) => Re);
  return [...nodes, ...nodes.map((Re) => Re / 10 ** shift), 10 ** 4.6, 1.8e5, 3e5];
}

/** Largest |d ln Cd / d ln Re| of each edge from Re 1 to 1e7, by 4000 equal steps. */
function steepestSlopes(roughness: number, cosine: number): Record<(typeof edges)[number], number> {
  const steps = 4000;
  const stride = (7 * Math.LN10) / steps;
  const steepest = { low: 0, best: 0, high: 0 };
  let before = dragAt(1, roughness, cosine);
  for (let i = 1; i <= steps; i += 1) {
    const here = dragAt(Math.exp(i * stride), roughness, cosine);
    for (const edge of edges) {
      steepest[edge] = Math.max(steepest[edge], Math.abs(Math.log(here[edge] / before[edge])) / stride);
    }
    before = here;
  }
  return steepest;
}

describe.each(cases)('round bar, k/d %d, |u_n|/|u| %d', (roughness, cosine) => {
  it('has no step at any joint', () => {
    let largest = 0;
    for (const Re of joints(roughness, cosine)) {
      const before = dragAt(Re * (1 - 1e-9), roughness, cosine);
      const after = dragAt(Re * (1 + 1e-9), roughness, cosine);
      for (const edge of edges) largest = Math.max(largest, Math.abs(after[edge] - before[edge]));
    }
    expect(largest).toBeLessThan(1e-6 * plateau);
  });

  it('is nowhere steeper than |d ln Cd / d ln Re| 12', () => {
    const steepest = steepestSlopes(roughness, cosine);
    expect(steepest.best).toBeLessThanOrEqual(12);
    expect(steepest.high).toBeLessThanOrEqual(12);
    expect(steepest.low).toBeLessThanOrEqual(12);
  });
});

describe('round bar', () => {
  it('low <= best <= high, all above zero, at any Reynolds number, roughness and inclination', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 9, noNaN: true }),
        fc.double({ min: -8, max: -1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (logRe, logRoughness, cosine) => {
          const { low, best, high } = dragAt(10 ** logRe, 10 ** logRoughness, cosine);
          expect(low).toBeGreaterThan(0);
          expect(low).toBeLessThanOrEqual(best);
          expect(best).toBeLessThanOrEqual(high);
        },
      ),
      { numRuns: 5000 },
    );
  });

  it('passes through its table when it is smooth and square to the wind', () => {
    for (const [Re, low, best] of roundBarNodes) {
      const drag = dragAt(Re, 0, 1);
      expect(drag.best).toBeCloseTo(best, 9);
      expect(drag.low).toBeCloseTo(low, 9);
    }
  });

  it('does not feel roughness or inclination below Re 1e4', () => {
    for (const Re of [50, 2e3, 1e4]) {
      expect(dragAt(Re, 1e-2, 0.5).best).toBe(dragAt(Re, 0, 1).best);
    }
  });

  it('meets the crisis earlier when rougher or more inclined, and not at all later', () => {
    for (const [rougher, smoother] of [
      [2e-3, 5e-4],
      [1e-2, 2e-3],
    ] as const) {
      expect(dragAt(1e5, rougher, 1).logCrisisReynolds).toBeGreaterThan(
        dragAt(1e5, smoother, 1).logCrisisReynolds,
      );
    }
    expect(dragAt(1e5, 0, 0.7).logCrisisReynolds).toBeGreaterThan(dragAt(1e5, 0, 0.9).logCrisisReynolds);
    expect(dragAt(1e5, 1e-6, 1).logCrisisReynolds).toBe(dragAt(1e5, 0, 1).logCrisisReynolds);
  });

  it('drags more behind the crisis when rougher', () => {
    const behind = roughnesses.map((roughness) => dragAt(1e6, roughness, 1).best);
    behind.slice(1).forEach((best, i) => {
      expect(best).toBeGreaterThanOrEqual((behind[i] ?? NaN) - 1e-12);
    });
  });

  it('holds its ends outside Re 1 to 1e7', () => {
    expect(dragAt(0, 0, 1).best).toBeCloseTo(11.9, 9);
    expect(dragAt(1e9, 0, 1).best).toBeCloseTo(0.67, 9);
  });
});
