import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pullTestArea, pullTestQuantities, type PullTestTrace } from '../../src/physics/body/pullTest';
import { studentQuantile95, studentTable95 } from '../../src/physics/body/pullTestStudent';
import { pullTestOf, pullTraceOf } from '../published/pullTest';
import { between } from './arbitraries';

const readings = fc.array(between(5, 50), { minLength: 2, maxLength: 12 });

function problemOf(changes: Parameters<typeof pullTestOf>[0]): string {
  const result = pullTestArea(pullTestOf(changes));
  return result.kind === 'problem' ? result.problem : 'none';
}

function scatterOf({ scatterDoubt }: PullTestTrace): number {
  if (scatterDoubt === null) throw new Error('two readings have a scatter');
  return scatterDoubt;
}

describe('a pull test', () => {
  it('finds the drag area that made its readings', () => {
    fc.assert(
      fc.property(
        between(0.01, 3),
        between(3, 30),
        between(-5, 5),
        between(-1, 1),
        (areaM2, windSpeedMs, tareN, pullAngleRad) => {
          const dragN = 0.5 * 1.2 * windSpeedMs ** 2 * areaM2;
          const forceN = tareN + dragN / Math.cos(pullAngleRad);
          const trace = pullTraceOf({
            forcesN: [forceN, forceN],
            tareN,
            pullAngleRad,
            windSpeedMs,
            densityKgM3: 1.2,
          });
          expect(trace.dragAreaBestM2 / areaM2).toBeCloseTo(1, 9);
          expect(trace.dragForceN / dragN).toBeCloseTo(1, 9);
          expect(trace.dragAreaLowM2).toBeCloseTo(trace.dragAreaBestM2, 9);
          expect(trace.dragAreaHighM2).toBeCloseTo(trace.dragAreaBestM2, 9);
        },
      ),
    );
  });

  it('does not mind the order of its readings, and is surer of the same scatter read more often', () => {
    fc.assert(
      fc.property(readings, (forcesN) => {
        const once = pullTraceOf({ forcesN });
        const reversed = pullTraceOf({ forcesN: [...forcesN].reverse() });
        expect(reversed.dragAreaHighM2).toBeCloseTo(once.dragAreaHighM2, 9);
        const twice = pullTraceOf({ forcesN: [...forcesN, ...forcesN] });
        expect(twice.dragAreaBestM2).toBeCloseTo(once.dragAreaBestM2, 9);
        expect(scatterOf(twice)).toBeLessThanOrEqual(scatterOf(once) + 1e-12);
      }),
    );
  });

  it('adds its doubts in squares, the wind’s larger upwards', () => {
    fc.assert(
      fc.property(
        readings,
        between(0.001, 0.2),
        between(0.01, 1),
        (forcesN, windSpeedDoubt, forceMeterDoubtN) => {
          const trace = pullTraceOf({ forcesN, windSpeedDoubt, forceMeterDoubtN });
          const { dragAreaBestM2: best, forceMeterDoubt, windDoubtUp, windDoubtDown } = trace;
          const scatter = scatterOf(trace);
          expect(windDoubtUp).toBeGreaterThan(windDoubtDown);
          expect(forceMeterDoubt * trace.meanForceN).toBeCloseTo(forceMeterDoubtN, 12);
          const up = Math.sqrt(scatter ** 2 + forceMeterDoubt ** 2 + windDoubtUp ** 2);
          const down = Math.sqrt(scatter ** 2 + forceMeterDoubt ** 2 + windDoubtDown ** 2);
          expect(trace.dragAreaHighM2 / best - 1).toBeCloseTo(up, 9);
          expect(trace.dragAreaLowM2).toBeCloseTo(best * Math.max(1 - down, 0), 9);
        },
      ),
    );
  });

  it('has the wind’s ends exactly: low and high are the areas of the faster and the slower wind', () => {
    const trace = pullTraceOf({ windSpeedDoubt: 0.1 });
    expect(trace.dragAreaHighM2).toBeCloseTo(pullTraceOf({ windSpeedMs: 9 }).dragAreaBestM2, 12);
    expect(trace.dragAreaLowM2).toBeCloseTo(pullTraceOf({ windSpeedMs: 11 }).dragAreaBestM2, 12);
  });

  it('covers the truth nine times in ten when the readings scatter normally', () => {
    let seed = 12345;
    const uniform = (): number => {
      seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
      return (seed + 0.5) / 2_147_483_648;
    };
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    let covered = 0;
    const trials = 4000;
    for (let trial = 0; trial < trials; trial += 1) {
      const forcesN = Array.from({ length: 5 }, () => 100 + 5 * normal());
      const { dragAreaLowM2, dragAreaHighM2 } = pullTraceOf({ forcesN });
      if (dragAreaLowM2 <= 1.6 && 1.6 <= dragAreaHighM2) covered += 1;
    }
    expect(covered / trials).toBeGreaterThan(0.885);
    expect(covered / trials).toBeLessThan(0.915);
  });

  it('says that one reading tells nothing about scatter', () => {
    const result = pullTestArea(pullTestOf({ forcesN: [12], forceMeterDoubtN: 0.6 }));
    expect(result).toMatchObject({
      kind: 'area',
      notices: ['scatter-not-known'],
      trace: { scatterDoubt: null, standardDeviationN: null, studentFactor: null, readingCount: 1 },
    });
    expect(pullTraceOf({ forcesN: [12], forceMeterDoubtN: 0.6 }).dragAreaHighM2).toBeCloseTo(0.2016, 10);
    expect(pullTestArea(pullTestOf({ forcesN: [12, 12.1] }))).toMatchObject({ notices: [] });
  });

  it('holds the low end at zero, and says so, where the doubt is as large as the force', () => {
    const result = pullTestArea(pullTestOf({ forcesN: [1, 20] }));
    expect(result).toMatchObject({ notices: ['low-held-at-zero'], trace: { dragAreaLowM2: 0 } });
    const noticesAt = (forceMeterDoubtN: number): readonly string[] => {
      const read = pullTestArea(pullTestOf({ forcesN: [10, 10], forceMeterDoubtN }));
      return read.kind === 'area' ? read.notices : [read.problem];
    };
    expect(noticesAt(10.01)).toEqual(['low-held-at-zero']);
    expect(noticesAt(9.99)).toEqual([]);
  });

  it('names what is wrong instead of giving a number', () => {
    expect(problemOf({ forcesN: [] })).toBe('no-reading');
    expect(problemOf({ forcesN: [10, NaN] })).toBe('not-a-number');
    expect(problemOf({ tareN: Infinity })).toBe('not-a-number');
    expect(problemOf({ windSpeedMs: 0 })).toBe('wind-not-positive');
    expect(problemOf({ windSpeedMs: -3 })).toBe('wind-not-positive');
    expect(problemOf({ densityKgM3: 0 })).toBe('density-not-positive');
    expect(problemOf({ pullAngleRad: 1.2 })).toBe('pull-across-the-wind');
    expect(problemOf({ pullAngleRad: Math.PI / 3 })).toBe('none');
    expect(problemOf({ windSpeedDoubt: 1 })).toBe('doubt-out-of-range');
    expect(problemOf({ windSpeedDoubt: -0.1 })).toBe('doubt-out-of-range');
    expect(problemOf({ forceMeterDoubtN: -1 })).toBe('doubt-out-of-range');
    expect(problemOf({ tareN: 10 })).toBe('force-not-above-tare');
  });

  it('describes every number of its working', () => {
    expect(Object.keys(pullTestQuantities).sort()).toEqual(Object.keys(pullTraceOf({})).sort());
  });
});

/** The t that leaves 90 % between its two signs, by halving. */
function exactQuantile95(degrees: number): number {
  let [low, high] = [1.5, 1.8];
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (centralShare(middle, degrees) < 0.9) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Share of Student's distribution between -t and t, by Simpson's rule on t = sqrt(n) tan(angle). */
function centralShare(t: number, degrees: number): number {
  const largest = Math.atan(t / Math.sqrt(degrees));
  const density = (angle: number): number => Math.cos(angle) ** (degrees - 1);
  const integral = (to: number): number => {
    const steps = 4000;
    let sum = density(0) + density(to);
    for (let i = 1; i < steps; i += 1) sum += (i % 2 === 1 ? 4 : 2) * density((to * i) / steps);
    return (sum * to) / (3 * steps);
  };
  return integral(largest) / integral(Math.PI / 2);
}

describe("Student's factor", () => {
  it('leaves 90 % of the distribution between its two signs, tabled or not', () => {
    const all = [...studentTable95.map((_, i) => i + 1), 31, 35, 50, 100, 300];
    for (const degrees of all) {
      expect(centralShare(studentQuantile95(degrees), degrees), `${degrees}`).toBeCloseTo(0.9, 3);
    }
  });

  it('misses by (3 z^7 + 19 z^5 + 17 z^3 - 15 z) / (384 n^3) beyond the table, the first term that it leaves out', () => {
    const z = 1.6448536269514722;
    const leftOut = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384;
    for (const degrees of [40, 50]) {
      const missed = degrees ** 3 * (exactQuantile95(degrees) - studentQuantile95(degrees));
      expect(missed / leftOut).toBeGreaterThan(0.95);
      expect(missed / leftOut).toBeLessThan(1.05);
    }
  });

  it('falls with every further reading, without a jump where the table ends', () => {
    for (let degrees = 1; degrees < 60; degrees += 1) {
      expect(studentQuantile95(degrees + 1)).toBeLessThan(studentQuantile95(degrees));
    }
    expect(studentQuantile95(30) - studentQuantile95(31)).toBeLessThan(0.0025);
  });
});
