import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  emptyFairing,
  fairingCoefficients,
  fairingRegimes,
  finiteFairing,
  type FairingCoefficients,
} from '../../src/physics/section/fairing';
import type { FairingSurface } from '../../src/physics/section/fairingAligned';
import { bandWidening, fairingBandNodes, isOutsideFairingTable } from '../../src/physics/section/fairingBand';
import { perimeterOverChord } from '../../src/physics/section/fairingOutline';
import { fairingRowsAt, placeRow, rowValue } from '../../src/physics/section/fairingRows';
import { emptySpan, finiteSpan, inducedAngleRad } from '../../src/physics/section/fairingSpan';
import { fairingTable } from '../../src/physics/section/fairingTable';
import { plateEndFactor } from '../../src/physics/section/rectangle';
import { between } from './arbitraries';

const surfaces: readonly FairingSurface[] = ['laminar', 'turbulent'];
const edges = ['drag', 'dragLow', 'dragHigh', 'lift', 'liftLow', 'liftHigh'] as const;
const plateau = 1.8;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

function at(
  thicknessRatio: number,
  Re: number,
  degrees: number,
  surface: FairingSurface = 'laminar',
  aspectRatio = Infinity,
): FairingCoefficients {
  return finiteFairing(
    fairingRowsAt(thicknessRatio),
    thicknessRatio,
    Re,
    radians(degrees),
    aspectRatio,
    surface,
    emptyFairing(),
    true,
  );
}

const thickness = fc.double({ min: 0.05, max: 0.6, noNaN: true });
const inTable = fc.double({ min: 0.12, max: 0.25, noNaN: true });
const logRe = fc.double({ min: 2, max: 8, noNaN: true });
const logReInTable = fc.double({ min: Math.log10(4e4), max: Math.log10(5e6), noNaN: true });
const incidence = between(-180, 180);
const aspect = fc.oneof(fc.constant(Infinity), fc.double({ min: 0.2, max: 300, noNaN: true }));
const surfaceOf = fc.constantFrom(...surfaces);

describe('a section that lifts', () => {
  it('takes from the air and never gives: drag above zero, low <= best <= high, everything finite', () => {
    fc.assert(
      fc.property(thickness, logRe, incidence, surfaceOf, aspect, (ratio, exponent, degrees, surface, A) => {
        const found = at(ratio, 10 ** exponent, degrees, surface, A);
        expect(found.dragLow).toBeGreaterThan(0);
        expect(found.dragLow).toBeLessThanOrEqual(found.drag);
        expect(found.drag).toBeLessThanOrEqual(found.dragHigh);
        for (const edge of edges) expect(Number.isFinite(found[edge])).toBe(true);
      }),
      { numRuns: 5000 },
    );
  });

  it('is symmetric: turned the other way it drags the same and lifts the other way', () => {
    fc.assert(
      fc.property(thickness, logRe, incidence, aspect, (ratio, exponent, degrees, A) => {
        const one = at(ratio, 10 ** exponent, degrees, 'turbulent', A);
        const other = at(ratio, 10 ** exponent, -degrees, 'turbulent', A);
        for (const edge of ['drag', 'dragLow', 'dragHigh'] as const) expect(other[edge]).toBe(one[edge]);
        for (const edge of ['lift', 'liftLow', 'liftHigh'] as const) {
          expect(Math.abs(other[edge] + one[edge])).toBeLessThan(1e-12);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('has no lift and the aligned drag with its nose into the wind, no lift with its tail', () => {
    for (const surface of surfaces) {
      const nose = at(0.18, 2e5, 0, surface);
      expect(nose.lift).toBe(0);
      expect(nose.drag / 0.18).toBeLessThan(0.15);
      expect(Math.abs(at(0.18, 2e5, 180, surface).lift)).toBeLessThan(1e-12);
    }
  });

  it('has the answer of an unbanded run in a banded one', () => {
    const rows = fairingRowsAt(0.2);
    for (const degrees of [0, 7, 15, 33, 95, 170]) {
      const short = finiteFairing(rows, 0.2, 3e5, radians(degrees), 8, 'turbulent', emptyFairing(), false);
      const full = at(0.2, 3e5, degrees, 'turbulent', 8);
      expect([short.drag, short.lift, short.regime]).toEqual([full.drag, full.lift, full.regime]);
    }
  });

  it('names its regimes in the order of incidence', () => {
    const names = [0, 14, 29.9, 30.1, 90, 149.9, 150.1, 180].map(
      (degrees) => fairingRegimes[at(0.15, 1.6e5, degrees).regime],
    );
    expect(names).toEqual([
      'attached',
      'stall',
      'stall',
      'separated',
      'separated',
      'separated',
      'reversed',
      'reversed',
    ]);
  });

  it('has from 90 deg on the table’s drag alone, whatever its surface', () => {
    fc.assert(
      fc.property(
        inTable,
        logReInTable,
        fc.double({ min: 90, max: 180, noNaN: true }),
        (ratio, exponent, degrees) => {
          const laminar = at(ratio, 10 ** exponent, degrees, 'laminar');
          expect(at(ratio, 10 ** exponent, degrees, 'turbulent').drag).toBe(laminar.drag);
          const place = placeRow(10 ** exponent, { row: 0, share: 0 });
          expect(laminar.drag).toBeCloseTo(rowValue(fairingRowsAt(ratio).drag, place, degrees), 9);
        },
      ),
    );
    expect(at(0.2, 1e6, 89, 'turbulent').drag).not.toBe(at(0.2, 1e6, 89, 'laminar').drag);
  });

  it('lets a clean surface drag less than a turbulent one from Re 1e6, and thick smooth ones more at Re 1e5', () => {
    for (const ratio of [0.12, 0.18, 0.25]) {
      expect(at(ratio, 2e6, 0, 'laminar').drag).toBeLessThan(at(ratio, 2e6, 0, 'turbulent').drag);
    }
    expect(at(0.25, 1e5, 0, 'laminar').drag).toBeGreaterThan(at(0.25, 1e5, 0, 'turbulent').drag);
  });

  it('keeps the thinnest and the thickest section outside the table, and says that it is outside', () => {
    const flags = [
      [0.12, 4e4],
      [0.25, 5e6],
      [0.119, 1e5],
      [0.251, 1e5],
      [0.2, 3.9e4],
      [0.2, 5.1e6],
    ].map(([ratio = 0, Re = 0]) => isOutsideFairingTable(ratio, Re));
    expect(flags).toEqual([false, false, true, true, true, true]);
    expect(at(0.08, 1e6, 20).lift).toBe(at(0.12, 1e6, 20).lift);
    expect(at(0.4, 1e6, 20).lift).toBe(at(0.25, 1e6, 20).lift);
    expect(at(0.2, 1e3, 20).lift).toBe(at(0.2, 4e4, 20).lift);
    expect(at(0.2, 1e8, 20).lift).toBe(at(0.2, 5e6, 20).lift);
  });

  it('widens the band by half outside, without a jump at the edge', () => {
    expect(bandWidening(0.2, 1e5)).toBe(1);
    for (const [ratio, Re] of [
      [0.25 * 1.25, 1e5],
      [0.12 / 1.25, 1e5],
      [0.2, 5e6 * 1.26],
      [0.2, 4e4 / 1.26],
    ] as const) {
      expect(bandWidening(ratio, Re)).toBeCloseTo(1.5, 9);
    }
    const inside = at(0.25, 1e6, 50);
    const outside = at(0.5, 1e6, 50);
    const width = (found: FairingCoefficients): number => found.liftHigh - found.liftLow;
    expect(width(outside) / width(inside)).toBeCloseTo(1.5, 6);
  });
});

describe('the doubt after the stall', () => {
  it('is as wide as written down: 0.9 to 1.22 of the drag beam-on, half to one and a half tail first', () => {
    const written = [
      [90, 0.9, 1.22, 0.9, 1.22],
      [135, 0.75, 1.2, 0.75, 1.2],
      [160, 0.6, 1.3, 0.75, 1.2],
      [180, 0.5, 1.5, NaN, NaN],
    ] as const;
    for (const [degrees, dragLow, dragHigh, liftLow, liftHigh] of written) {
      const found = at(0.2, 4e5, degrees);
      expect(found.dragLow / found.drag).toBeCloseTo(dragLow, 6);
      expect(found.dragHigh / found.drag).toBeCloseTo(dragHigh, 6);
      if (degrees === 180) continue;
      expect(found.liftLow / found.lift).toBeCloseTo(liftLow, 6);
      expect(found.liftHigh / found.lift).toBeCloseTo(liftHigh, 6);
    }
    expect(at(0.2, 4e5, 60).liftHigh / at(0.2, 4e5, 60).lift).toBeCloseTo(1.15, 6);
    expect(at(0.2, 4e5, 60).dragLow / at(0.2, 4e5, 60).drag).toBeCloseTo(0.75, 2);
    expect(at(0.2, 4e5, 45).dragLow / at(0.2, 4e5, 45).drag).toBeCloseTo(0.66, 2);
  });

  it('below the stall lets the high state lift 12 % less', () => {
    expect(at(0.12, 2e6, 4).liftHigh / at(0.12, 2e6, 4).lift).toBeCloseTo(0.88, 6);
  });
});

/** Largest change of each edge over a small step, over sections, Reynolds numbers and both surfaces. */
function steepest(
  step: (ratio: number, Re: number, degrees: number, surface: FairingSurface) => FairingCoefficients,
  degreesTo: number,
): Record<(typeof edges)[number], number> {
  const largest = { drag: 0, dragLow: 0, dragHigh: 0, lift: 0, liftLow: 0, liftHigh: 0 };
  for (const surface of surfaces) {
    for (let ratio = 0.12; ratio < 0.249; ratio += 0.0065) {
      for (let exponent = Math.log10(4e4); exponent < Math.log10(5e6); exponent += 0.0877) {
        for (let degrees = 0; degrees < degreesTo; degrees += 0.5) {
          const here = at(ratio, 10 ** exponent, degrees, surface);
          const there = step(ratio, 10 ** exponent, degrees, surface);
          for (const edge of edges) {
            largest[edge] = Math.max(largest[edge], Math.abs(there[edge] - here[edge]));
          }
        }
      }
    }
  }
  return largest;
}

function expectGentle(change: Record<(typeof edges)[number], number>): void {
  for (const edge of edges)
    expect(change[edge], edge).toBeLessThanOrEqual(edge.startsWith('drag') ? 0.02 : 0.08);
}

describe('no steps', () => {
  it('per 0.1 deg drag moves by at most 0.02 and lift by at most 0.08, in both states too', () => {
    expectGentle(steepest((ratio, Re, degrees, surface) => at(ratio, Re, degrees + 0.1, surface), 180));
  });

  it('the same per 0.001 of thickness ratio', () => {
    expectGentle(steepest((ratio, Re, degrees, surface) => at(ratio + 0.001, Re, degrees, surface), 60));
  });

  it('|d ln cd / d ln Re| is at most 12, in both states too', () => {
    const step = 1e-4;
    let largest = 0;
    for (let exponent = 4.5; exponent < 6.8; exponent += 0.02) {
      for (const ratio of [0.1, 0.12, 0.135, 0.15, 0.17, 0.18, 0.21, 0.23, 0.25, 0.3]) {
        for (let degrees = 0; degrees <= 34; degrees += 0.5) {
          const here = at(ratio, 10 ** exponent, degrees);
          const there = at(ratio, 10 ** exponent * Math.exp(step), degrees);
          for (const edge of ['drag', 'dragLow', 'dragHigh'] as const) {
            largest = Math.max(largest, Math.abs(Math.log(there[edge] / here[edge])) / step);
          }
        }
      }
    }
    expect(largest).toBeLessThanOrEqual(12);
  });

  it('one-sided values agree at every node of incidence, Reynolds number and thickness ratio', () => {
    const thicknesses = [...fairingTable.map(({ thicknessRatio }) => thicknessRatio), 0.12 / 1.25, 0.3125];
    const reynolds = [...(fairingTable[0]?.rows.map((row) => row.reynolds) ?? []), 1e5, 3e5, 3.2e4, 6.25e6];
    const incidences = [
      ...Array.from({ length: 37 }, (_, i) => 5 * i),
      ...Array.from({ length: 30 }, (_, i) => i + 1),
      ...fairingBandNodes.map(([degrees]) => degrees),
    ];
    const tiny = 1e-9;
    let largest = 0;
    for (const ratio of thicknesses) {
      for (const Re of reynolds) {
        for (const degrees of incidences) {
          for (const A of [Infinity, 4]) {
            const before = at(ratio * (1 - tiny), Re * (1 - tiny), degrees - tiny, 'laminar', A);
            const after = at(ratio * (1 + tiny), Re * (1 + tiny), degrees + tiny, 'laminar', A);
            const sameSide =
              degrees === 0 || degrees === 180 ? (['drag', 'dragLow', 'dragHigh'] as const) : edges;
            for (const edge of sameSide) largest = Math.max(largest, Math.abs(after[edge] - before[edge]));
          }
        }
      }
    }
    expect(largest).toBeLessThan(1e-6 * plateau);
  });
});

describe('a piece of finite length', () => {
  /** Effective incidence in degrees. */
  function effective(ratio: number, Re: number, degrees: number, A: number, e = 0.9): number {
    const place = placeRow(Re, { row: 0, share: 0 });
    const rows = fairingRowsAt(ratio);
    return finiteSpan(rows, place, degrees > 90, Math.min(degrees, 180 - degrees), A, e, emptySpan())
      .effectiveDeg;
  }

  it('has the effective incidence a - CL(a_e) / (pi A e) below the lift peak', () => {
    fc.assert(
      fc.property(
        inTable,
        fc.double({ min: Math.log10(3.6e5), max: Math.log10(5e6), noNaN: true }),
        between(0, 9),
        fc.double({ min: 0.5, max: 200, noNaN: true }),
        fc.double({ min: 0.75, max: 1, noNaN: true }),
        (ratio, exponent, degrees, A, e) => {
          const found = effective(ratio, 10 ** exponent, degrees, A, e);
          const place = placeRow(10 ** exponent, { row: 0, share: 0 });
          const lift = rowValue(fairingRowsAt(ratio).lift, place, found);
          expect(found + (180 / Math.PI) * inducedAngleRad(lift, A, e)).toBeCloseTo(degrees, 9);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('pays CL^2 / (pi A e) below the stall, on top of the section’s drag at its effective incidence', () => {
    const finite = at(0.15, 1e6, 8, 'turbulent', 6);
    const section = at(0.15, 1e6, effective(0.15, 1e6, 8, 6), 'turbulent');
    expect(finite.lift).toBeCloseTo(section.lift, 9);
    expect(finite.drag).toBeCloseTo(section.drag + finite.lift ** 2 / (Math.PI * 6 * 0.9), 9);
  });

  it('is continuous in incidence and aspect ratio, through the stall and square to the wind', () => {
    fc.assert(
      fc.property(
        inTable,
        logReInTable,
        between(0, 180),
        fc.double({ min: 0.3, max: 250, noNaN: true }),
        (ratio, exponent, degrees, A) => {
          // Past the peak of lift a short piece loses more than 10 per unit of ln A: a step this small tells it from a jump.
          const step = 1e-8;
          const here = at(ratio, 10 ** exponent, degrees, 'laminar', A);
          const turned = at(ratio, 10 ** exponent, Math.min(degrees + step, 180), 'laminar', A);
          const longer = at(ratio, 10 ** exponent, degrees, 'laminar', A * (1 + step));
          for (const edge of edges) {
            expect(Math.abs(turned[edge] - here[edge])).toBeLessThan(1e-6);
            expect(Math.abs(longer[edge] - here[edge])).toBeLessThan(1e-6);
          }
        },
      ),
      { numRuns: 4000 },
    );
  });

  it('moves drag by at most 0.02 and lift by at most 0.08 per 0.1 deg', () => {
    for (const A of [1, 3, 10, 40]) {
      for (const ratio of [0.12, 0.16, 0.21, 0.25]) {
        for (const Re of [4e4, 1e5, 1.6e5, 5e5, 2e6, 5e6]) {
          for (let degrees = 0; degrees < 180; degrees += 0.1) {
            const here = at(ratio, Re, degrees, 'turbulent', A);
            const there = at(ratio, Re, degrees + 0.1, 'turbulent', A);
            expect(Math.abs(there.drag - here.drag)).toBeLessThanOrEqual(0.02);
            expect(Math.abs(there.lift - here.lift)).toBeLessThanOrEqual(0.08);
          }
        }
      }
    }
  });

  it('becomes the section as it grows long', () => {
    for (const degrees of [3, 9, 14, 25, 60, 90, 130, 175]) {
      const long = at(0.18, 4e5, degrees, 'turbulent', 1e7);
      const section = at(0.18, 4e5, degrees, 'turbulent');
      for (const edge of edges) expect(long[edge]).toBeCloseTo(section[edge], 5);
    }
  });

  it('lifts less the shorter it is, below the stall', () => {
    const lifts = [1, 2, 5, 10, 50, Infinity].map((A) => at(0.15, 1e6, 6, 'turbulent', A).lift);
    expect([...lifts].sort((a, b) => a - b)).toEqual(lifts);
    expect(new Set(lifts).size).toBe(lifts.length);
  });

  it('has the plate’s finite-length factor square to the wind, and none below the stall', () => {
    for (const A of [2, 5, 10, 40]) {
      expect(at(0.2, 1e6, 90, 'turbulent', A).drag / at(0.2, 1e6, 90).drag).toBeCloseTo(plateEndFactor(A), 9);
      expect(at(0.2, 1e6, 0, 'turbulent', A).drag).toBe(at(0.2, 1e6, 0, 'turbulent').drag);
    }
  });

  it('begins to blend into the plate at 60 deg at the latest, and is half a chord long at least', () => {
    const spanAt = (degrees: number, A: number) =>
      finiteSpan(
        fairingRowsAt(0.15),
        placeRow(1e6, { row: 0, share: 0 }),
        false,
        degrees,
        A,
        0.9,
        emptySpan(),
      );
    expect(spanAt(59.99, 0.5).plateFactor).toBe(1);
    expect(spanAt(60.5, 0.5).plateFactor).toBeLessThan(1);
    for (const degrees of [3, 10, 30]) {
      expect(spanAt(degrees, 0.2).effectiveDeg).toBe(spanAt(degrees, 0.5).effectiveDeg);
      expect(spanAt(degrees, 0.5).effectiveDeg).toBeLessThan(spanAt(degrees, 0.53).effectiveDeg);
    }
  });

  it('never turns its effective incidence past the wind or beyond the geometric one', () => {
    fc.assert(
      fc.property(
        inTable,
        logReInTable,
        between(0, 90),
        fc.double({ min: 0.3, max: 100, noNaN: true }),
        (ratio, exponent, degrees, A) => {
          const found = effective(ratio, 10 ** exponent, degrees, A);
          expect(found).toBeGreaterThanOrEqual(0);
          expect(found).toBeLessThanOrEqual(degrees + 1e-9);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('the outline', () => {
  it('has a perimeter of twice the chord when it is thin, and more the thicker it is', () => {
    expect(perimeterOverChord(1e-6)).toBeCloseTo(2, 4);
    const perimeters = [0.05, 0.12, 0.18, 0.25, 0.4].map(perimeterOverChord);
    expect([...perimeters].sort((a, b) => a - b)).toEqual(perimeters);
    expect(perimeterOverChord(0.12)).toBeGreaterThan(2.03);
    expect(perimeterOverChord(0.25)).toBeLessThan(2.2);
  });
});

describe('one thickness after another', () => {
  it('gives the same answer however many sections were asked for before', () => {
    const before = fairingCoefficients(0.2, 1e6, radians(12), 'laminar', emptyFairing());
    for (let i = 0; i < 100; i += 1) fairingRowsAt(0.12 + i / 1000);
    expect(fairingCoefficients(0.2, 1e6, radians(12), 'laminar', emptyFairing())).toEqual(before);
  });
});
