import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sphereDrag, sphereRegimes, sphereSurface } from '../../src/physics/body/sphere';
import { sphereNodes, sphereReynoldsRange } from '../../src/physics/body/sphereTable';
import { halfLastDigit } from '../published/publishedCheck';
import { sphereAt, sphereCurves } from '../published/sphere';
import { almedeijSphere, chengSphere, cliftSphere, morrisonSphere } from '../published/sphereFormulas';
import { between } from './arbitraries';

const edges = ['low', 'best', 'high'] as const;
const logReynolds = between(0, 7.3);
const roughness = fc.oneof(
  fc.constant(0),
  between(-6, -1.9).map((log) => 10 ** log),
);

/** The curve as it was drawn, "Re low best high", kept a second time so that a slip of the pen in the table shows. */
const drawn = [
  '1 24 26.7 30.5',
  '2 12.6 14.7 16.9',
  '3 8.95 10.4 11.95',
  '10 3.66 4.25 4.88',
  '30 1.81 2.1 2.41',
  '100 0.925 1.07 1.17',
  '200 0.665 0.77 0.84',
  '500 0.48 0.555 0.605',
  '1000 0.425 0.465 0.5',
  '2000 0.39 0.42 0.455',
  '5000 0.338 0.402 0.525',
  '10000 0.345 0.412 0.54',
  '20000 0.366 0.437 0.57',
  '50000 0.4 0.464 0.53',
  '100000 0.36 0.475 0.545',
  '150000 0.17 0.475 0.545',
  '200000 0.085 0.44 0.508',
  '250000 0.07 0.36 0.495',
  '300000 0.07 0.26 0.485',
  '350000 0.07 0.17 0.42',
  '400000 0.07 0.11 0.26',
  '500000 0.07 0.088 0.15',
  '700000 0.07 0.112 0.2',
  '1000000 0.075 0.14 0.26',
  '2000000 0.12 0.18 0.27',
  '5000000 0.15 0.19 0.27',
  '10000000 0.15 0.19 0.27',
];

describe('the curve of a sphere', () => {
  it('has the nodes that were drawn', () => {
    expect(sphereNodes.map((node) => node.join(' '))).toEqual(drawn);
    expect(sphereReynoldsRange).toEqual({ from: 1, to: 10_000_000 });
  });

  it('changes its regimes at Re 1e3, 1.5e5 and 5e5', () => {
    for (const [Re, before] of [
      [1e3, 0],
      [1.5e5, 1],
      [5e5, 2],
    ] as const) {
      expect(sphereAt(Re * 0.999).regime).toBe(before);
      expect(sphereAt(Re * 1.001).regime).toBe(before + 1);
    }
  });

  it('moves and rises with roughness as worked by hand', () => {
    // k/d 1e-3: critical Re 6000 / sqrt(1e-3) = 189737, 0.19897 decades before 3e5; rough share 3 0.8^2 - 2 0.8^3 = 0.896.
    const rough = sphereAt(1e6, 1e-3);
    expect(rough.logCrisisReynolds).toBeCloseTo(6.19897, 5);
    // Re 1.26e4 lies a sixteenth of the way, 0.1 of 0.8 decades, up the ramp from 1e4: 3 / 64 - 2 / 512 = 0.0429688.
    expect(sphereAt(10 ** 4.1, 1.25e-2).logCrisisReynolds).toBeCloseTo(4.1 + 0.0429688 * 0.747425, 5);
    expect(sphereAt(10 ** 4.2, 1.25e-2).logCrisisReynolds).toBeCloseTo(4.2 + 0.15625 * 0.747425, 5);
    // Beyond Re 2e6 the rough value counts with its share alone: 0.19 and 0.15, 0.27 towards 0.4 and 0.3, 0.44.
    const far = sphereAt(1e7, 1e-3);
    expect(far.best).toBeCloseTo(0.19 * (0.4 / 0.19) ** 0.896, 10);
    expect(far.low).toBeCloseTo(0.15 * (0.3 / 0.15) ** 0.896, 10);
    expect(far.high).toBeCloseTo(0.27 * (0.44 / 0.27) ** 0.896, 10);
    // Half way, in the logarithm, between Re 3e5 and 2e6 half of it counts.
    const surface = sphereSurface(1.25e-2, 1);
    const middle = Math.sqrt(3e5 * 2e6) / 10 ** surface.onsetShift;
    const smooth = sphereAt(Math.sqrt(3e5 * 2e6)).best;
    expect(sphereAt(middle, 1.25e-2).best).toBeCloseTo(smooth * (0.4 / smooth) ** 0.5, 9);
    const start = 3.1e5 / 10 ** sphereSurface(5e-3, 1).onsetShift;
    expect(sphereAt(start, 5e-3).best / sphereAt(3.1e5).best).toBeCloseTo(1, 2);
    expect(sphereSurface(1, 1)).toEqual({ onsetShift: 1, roughShare: 1 });
  });
});

describe('a sphere', () => {
  it('has its best value between low and high, smooth or rough', () => {
    fc.assert(
      fc.property(logReynolds, roughness, (log, k) => {
        const { low, best, high } = sphereAt(10 ** log, k);
        expect(low).toBeGreaterThan(0);
        expect(low).toBeLessThanOrEqual(best);
        expect(best).toBeLessThanOrEqual(high);
      }),
    );
  });

  it('drags no less than Stokes, 24 / Re, which is the least that any flow can dissipate', () => {
    for (let log = 0; log < 7; log += 0.005) {
      expect(sphereAt(10 ** log).low * 10 ** log).toBeGreaterThanOrEqual(24 - 1e-9);
    }
  });

  it('has no step and a slope of at most 12 against Reynolds number', () => {
    fc.assert(
      fc.property(logReynolds, roughness, (log, k) => {
        const [here, there] = [sphereAt(10 ** log, k), sphereAt(10 ** (log + 1e-4), k)];
        for (const edge of edges) {
          const slope = Math.log(there[edge] / here[edge]) / (1e-4 * Math.LN10);
          expect(Math.abs(slope)).toBeLessThan(12);
        }
      }),
    );
  });

  it('passes through its nodes, the same from both sides', () => {
    for (const [Re, low, best, high] of sphereNodes) {
      const [left, right] = [sphereAt(Re * (1 - 1e-10)), sphereAt(Re * (1 + 1e-10))];
      const node = { low, best, high };
      for (const edge of edges) {
        expect(left[edge] / node[edge]).toBeCloseTo(1, 7);
        expect(Math.abs(left[edge] / right[edge] - 1)).toBeLessThan(1e-6);
      }
    }
  });

  it('changes smoothly with roughness, down to none', () => {
    fc.assert(
      fc.property(logReynolds, between(-6, -1.9), (log, logK) => {
        const [here, there] = [sphereAt(10 ** log, 10 ** logK), sphereAt(10 ** log, 10 ** (logK + 1e-5))];
        for (const edge of edges) expect(Math.abs(there[edge] / here[edge] - 1)).toBeLessThan(1e-3);
      }),
    );
    expect(sphereAt(1e6, 1e-9)).toEqual(sphereAt(1e6));
  });

  it('meets its crisis between Re 2e5 and 4e5 when smooth, earlier the rougher, and never below 1e4', () => {
    expect(sphereAt(1.5e5).best).toBeGreaterThan(0.45);
    expect(sphereAt(4e5).best).toBeLessThan(0.15);
    const onset = (k: number): number => {
      for (let log = 4; log < 6; log += 0.001) if (sphereAt(10 ** log, k).best < 0.3) return 10 ** log;
      return Infinity;
    };
    const onsets = [0, 1e-3, 5e-3, 1.25e-2].map(onset);
    expect(onsets).toEqual([...onsets].sort((a, b) => b - a));
    expect(onset(1.25e-2) / onset(0)).toBeLessThan(0.3);
    expect(sphereAt(1e4, 1.25e-2)).toEqual(sphereAt(1e4));
  });

  it('drags more behind the crisis the rougher it is', () => {
    const values = [0, 1e-4, 1e-3, 5e-3].map((k) => sphereAt(5e6, k).best);
    expect(values).toEqual([...values].sort((a, b) => a - b));
    expect(values[3]).toBeGreaterThan(0.39);
  });

  it('names the stretch of its curve', () => {
    const names = [1e2, 1e5, 3e5, 2e6].map((Re) => sphereRegimes[sphereAt(Re).regime]);
    expect(names).toEqual(['creeping', 'plateau', 'crisis', 'recovery']);
  });

  it('leaves the band alone when only the best value is asked for', () => {
    const out = { best: 0, low: -1, high: -1, regime: 0, logCrisisReynolds: 0 };
    sphereDrag(1e5, sphereSurface(0, 1), out, false);
    expect(out).toMatchObject({ low: -1, high: -1 });
    expect(out.best).toBeCloseTo(0.475, 10);
  });
});

describe('numbers quoted from the published formulas are what these formulas give', () => {
  const formulas = {
    almedeij: almedeijSphere,
    clift: cliftSphere,
    morrison: morrisonSphere,
    cheng: chengSphere,
  } as const;

  it.each(sphereCurves.map((curve) => [curve[0], curve[2]] as const))('%s', (name, points) => {
    for (const [Re, printedText] of points) {
      const difference = Math.abs(formulas[name](Re) - Number(printedText));
      expect(difference, `Re ${Re}`).toBeLessThanOrEqual(1.001 * halfLastDigit(printedText));
    }
  });
});
