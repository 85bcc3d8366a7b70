import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  enRoundBarCoefficient,
  roundBarDrag,
  roundBarSurface,
  type RoundBarDrag,
} from '../../src/physics/section/roundBar';
import { roundBarNodes, roundBarReynoldsRange } from '../../src/physics/section/roundBarTable';
import { between } from './arbitraries';

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

describe('EN’s round bar', () => {
  it('as rough as a tenth of its diameter has 1.2 at every Reynolds number', () => {
    for (let log = 4; log < 7; log += 0.01)
      expect(enRoundBarCoefficient(10 ** log, 0.1)).toBeCloseTo(1.2, 12);
  });

  it('has its roughness line from Re 1.8e5 up', () => {
    const at = (Re: number): number => enRoundBarCoefficient(Re, 1e-5);
    expect(at(1.79e5)).toBeCloseTo(1.2, 12);
    for (const Re of [1.81e5, 1.9e5, 2.5e5]) {
      const line = 1.2 + (0.18 * Math.log10(1e-4)) / (1 + 0.4 * Math.log10(Re / 1e6));
      expect(at(Re)).toBeCloseTo(Math.max(Math.min(0.11 / (Re / 1e6) ** 1.4, 1.2), line, 0.4), 12);
    }
  });
});

describe('round bar', () => {
  it('low <= best <= high, all above zero, at any Reynolds number, roughness and inclination', () => {
    fc.assert(
      fc.property(
        between(-2, 9),
        fc.double({ min: -8, max: -1, noNaN: true }),
        between(0, 1),
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

/** The curve as it was drawn, "Re low best high", kept a second time so that a slip of the pen in the table shows. */
const drawn = [
  '1 8.95 11.9 13.4',
  '3 4.31 5.73 6.5',
  '10 2.32 2.87 3.25',
  '30 1.51 1.8 2.1',
  '100 1.26 1.4 1.53',
  '200 1.13 1.27 1.39',
  '500 0.95 1.1 1.29',
  '1000 0.855 0.99 1.2',
  '2000 0.8 0.93 1.15',
  '5000 0.845 0.98 1.18',
  '10000 0.907 1.1 1.285',
  '20000 0.92 1.17 1.31',
  '50000 0.905 1.2 1.32',
  '75000 0.9 1.2 1.32',
  '100000 0.86 1.2 1.31',
  '125000 0.58 1.195 1.3',
  '150000 0.44 1.18 1.28',
  '200000 0.22 1.11 1.25',
  '250000 0.2 0.98 1.22',
  '300000 0.2 0.76 1.12',
  '350000 0.2 0.58 0.94',
  '400000 0.2 0.46 0.76',
  '500000 0.2 0.33 0.52',
  '700000 0.2 0.33 0.58',
  '1000000 0.2 0.38 0.66',
  '2000000 0.32 0.5 0.72',
  '3500000 0.4 0.62 0.8',
  '5000000 0.42 0.66 0.85',
  '10000000 0.43 0.67 0.86',
];

describe('the curve of a round bar, worked by hand', () => {
  it('has the nodes that were drawn', () => {
    expect(roundBarNodes.map((node) => node.join(' '))).toEqual(drawn);
    expect(roundBarReynoldsRange).toEqual({ from: 1, to: 10_000_000 });
  });

  it('changes its regimes at Re 200, 1e4, 1.8e5 and 5e5', () => {
    for (const [Re, before] of [
      [200, 0],
      [1e4, 1],
      [1.8e5, 2],
      [5e5, 3],
    ] as const) {
      expect(dragAt(Re * 0.999, 0, 1).regime).toBe(before);
      expect(dragAt(Re * 1.001, 0, 1).regime).toBe(before + 1);
    }
  });

  it('meets the crisis earlier by 6000 / sqrt(k/d), on a ramp from Re 1e4 to 6.3e4, by a factor of ten at most', () => {
    // k/d 1e-3: 6000 / sqrt(1e-3) = 189737, 0.19897 decades before 3e5. The ramp: half at 10^4.4, 0.15625 at 10^4.2.
    expect(dragAt(1e5, 1e-3, 1).logCrisisReynolds).toBeCloseTo(5.19897, 5);
    expect(dragAt(10 ** 4.79, 1e-3, 1).logCrisisReynolds).toBeLessThan(4.79 + 0.19897);
    expect(dragAt(10 ** 4.4, 1e-3, 1).logCrisisReynolds).toBeCloseTo(4.4 + 0.5 * 0.19897, 5);
    expect(dragAt(10 ** 4.2, 1e-3, 1).logCrisisReynolds).toBeCloseTo(4.2 + 0.15625 * 0.19897, 5);
    // k/d 0.05: 26833, 1.0485 decades before 3e5.
    expect(dragAt(1e5, 0.05, 1).logCrisisReynolds).toBeCloseTo(6, 10);
    expect(dragAt(1e5, 0.05, 0.5).logCrisisReynolds).toBeCloseTo(6, 10);
  });

  it('moves with the inclination as cos^-1.87, held beyond 60 deg', () => {
    expect(dragAt(1e5, 0, 0.8).logCrisisReynolds).toBeCloseTo(5 + 1.87 * 0.09691, 5);
    expect(dragAt(1e5, 0, 0.5).logCrisisReynolds).toBeCloseTo(5 + 1.87 * 0.30103, 5);
    expect(dragAt(1e5, 0, 0.3).logCrisisReynolds).toBeCloseTo(5 + 1.87 * 0.30103, 5);
  });

  it('lies halfway, in the logarithm, from the smooth curve to EN’s line behind the crisis of a rough bar', () => {
    // Re 1e7 is beyond the table for either: smooth 0.67; EN 1.2 + 0.18 log10(10 k/d) / 1.4.
    const line = (logTenK: number): number => 1.2 + (0.18 * logTenK) / 1.4;
    expect(dragAt(1e7, 1e-3, 1).best).toBeCloseTo(Math.sqrt(0.67 * line(-2)), 10);
    expect(dragAt(1e7, 1e-4, 1).best).toBeCloseTo(Math.sqrt(0.67 * line(-3)), 10);
    // k/d 10^-4.5: half of the ramp from 1e-5 to 1e-4, so a quarter; 10^-4.75: 0.15625 of it.
    expect(dragAt(1e7, 10 ** -4.5, 1).best).toBeCloseTo(0.67 * (line(-3.5) / 0.67) ** 0.25, 10);
    expect(dragAt(1e7, 10 ** -4.75, 1).best).toBeCloseTo(0.67 * (line(-3.75) / 0.67) ** (0.15625 / 2), 10);
    expect(dragAt(1e7, 1e-3, 1).high).toBeCloseTo(line(-2), 10);
    expect(dragAt(1e7, 1e-5, 1).high).toBeCloseTo(0.86, 10);
    expect(dragAt(1e7, 1e-3, 1).low).toBeCloseTo(0.43, 10);
  });

  it('has EN’s line, held below Re 1.8e5, as its high edge where that is higher, on the same ramp', () => {
    // k/d 1 would be 1.2 + 0.18 / (1 + 0.4 (log10 1.8e5 - 6)) = 1.45636 at Re 1e5.
    const held = 1.2 + 0.18 / (1 + 0.4 * (5.2552725 - 6));
    expect(dragAt(1e5, 1, 1).high).toBeCloseTo(held, 5);
    const smooth = Math.max(dragAt(10 ** 4.4, 0, 1).high, dragAt(10 ** 4.9, 0, 1).high);
    expect(dragAt(10 ** 4.4, 1, 1).high).toBeCloseTo(smooth + 0.5 * (held - smooth), 5);
  });
});
