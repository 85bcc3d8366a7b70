import { describe, expect, it } from 'vitest';
import {
  alignedDrag,
  laminarAlignedDrag,
  turbulentAlignedDrag,
  type AlignedDrag,
  type FairingSurface,
} from '../../src/physics/section/fairingAligned';
import { roughFriction, turbulentFriction } from '../../src/physics/section/skinFriction';

function aligned(ratio: number, Re: number, table: number, surface: FairingSurface): AlignedDrag {
  return alignedDrag(ratio, Re, table, surface, { best: 0, low: 0, high: 0 });
}

/** t/c 0.25: form factor 1 + 0.5 + 60 / 256 = 1.734375; laminar 2 Cf 1.25 + 0.0625. */
const turbulentAt = (Re: number): number => 2 * 1.734375 * turbulentFriction(Re);
const laminarAt = (Re: number): number => (2.5 * 1.328) / Math.sqrt(Re) + 0.0625;

describe('the aligned drag of a fairing, worked by hand', () => {
  it('of a smooth surface lies halfway, in the logarithm, from table to laminar formula to Re 1e5', () => {
    const { best, low, high } = aligned(0.25, 1e5, 0.02, 'laminar');
    expect(best).toBeCloseTo(Math.sqrt(0.02 * laminarAt(1e5)), 12);
    expect(low).toBeCloseTo(0.9 * 0.02, 12);
    expect(high).toBeCloseTo(laminarAt(1e5), 12);
    expect(aligned(0.25, 9e4, 0.02, 'laminar').best).toBeCloseTo(Math.sqrt(0.02 * laminarAt(9e4)), 12);
  });

  it('goes over to the table by Re 1e6, by half between; the laminar edge fades from 3e5', () => {
    const middle = Math.sqrt(1e5 * 1e6);
    expect(aligned(0.25, middle, 0.02, 'laminar').best).toBeCloseTo(
      0.02 * (laminarAt(middle) / 0.02) ** 0.25,
      12,
    );
    expect(aligned(0.25, 3e5, 0.02, 'laminar').high).toBeCloseTo(laminarAt(3e5), 12);
    const fading = Math.sqrt(3e5 * 1e6);
    expect(aligned(0.25, fading, 0.02, 'laminar').high).toBeCloseTo(Math.sqrt(0.02 * laminarAt(fading)), 12);
    expect(aligned(0.25, 1e6, 0.02, 'laminar').best).toBeCloseTo(0.02, 12);
    expect(aligned(0.25, 9.5e5, 0.02, 'laminar').best).toBeGreaterThan(0.02 * (1 + 1e-4));
  });

  it('has edges of a tenth below the lowest source and 15 % above the highest from Re 1e6 up', () => {
    const high = aligned(0.25, 1e6, 0.02, 'laminar');
    expect(high.high).toBeCloseTo(1.15 * 0.02, 12);
    expect(high.low).toBeCloseTo(0.9 * turbulentAt(1e6), 12);
    const low = aligned(0.25, 1e6, 0.01, 'turbulent');
    expect(low.high).toBeCloseTo(1.15 * turbulentAt(1e6), 12);
    expect(low.low).toBeCloseTo(0.9 * 0.01, 12);
    expect(low.best).toBeCloseTo(turbulentAt(1e6), 12);
  });

  it('never counts the laminar formula where it lies below the table', () => {
    expect(aligned(0.12, 1e5, 0.5, 'laminar').best).toBeCloseTo(0.5, 12);
  });

  it('holds its formulas for sections thicker than half their chord', () => {
    expect(turbulentAlignedDrag(0.7, 1e6)).toBe(turbulentAlignedDrag(0.5, 1e6));
    expect(turbulentAlignedDrag(0.5, 1e6)).toBeCloseTo(2 * (1 + 1 + 60 / 16) * turbulentFriction(1e6), 12);
    expect(laminarAlignedDrag(0.7, 1e5)).toBe(laminarAlignedDrag(0.5, 1e5));
    expect(laminarAlignedDrag(0.5, 1e5)).toBeCloseTo((3 * 1.328) / Math.sqrt(1e5) + 0.25, 12);
    expect(laminarAlignedDrag(0.49, 1e5)).toBeLessThan(laminarAlignedDrag(0.5, 1e5));
  });

  it('takes friction held below Re 1e4, and half as much again when rough', () => {
    expect(turbulentFriction(10)).toBe(turbulentFriction(1e4));
    expect(turbulentFriction(1e4)).toBeCloseTo(0.455 / 4 ** 2.58, 12);
    expect(turbulentFriction(1.05e4)).toBeLessThan(turbulentFriction(1e4));
    expect(roughFriction(1e6)).toBeCloseTo(1.5 * turbulentFriction(1e6), 12);
  });
});
