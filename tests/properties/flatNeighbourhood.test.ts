import { describe, expect, it } from 'vitest';
import { flatNeighbourhood } from '../../src/physics/numerics/flatNeighbourhood';

describe('the flat neighbourhood of a least value', () => {
  it('is that of 1/x + x: 2 at 1, and 2.1 at the roots of x^2 - 2.1 x + 1', () => {
    const flat = flatNeighbourhood((x) => 1 / x + x, 0.1, 10, 0.05);
    expect(flat.leastAt).toBeCloseTo(1, 3);
    expect(flat.least).toBeCloseTo(2, 9);
    const half = Math.sqrt(1.05 ** 2 - 1);
    expect(flat.from).toBeCloseTo(1.05 - half, 5);
    expect(flat.to).toBeCloseTo(1.05 + half, 5);
    expect(flat).toMatchObject({ isCutAtStart: false, isCutAtEnd: false });
  });

  it('is cut where the range ends, on either side or both', () => {
    const curve = (x: number): number => 1 + (x - 1) ** 2;
    expect(flatNeighbourhood(curve, 0.9, 3, 0.04)).toMatchObject({
      from: 0.9,
      isCutAtStart: true,
      isCutAtEnd: false,
    });
    expect(flatNeighbourhood(curve, -1, 1.1, 0.04)).toMatchObject({
      to: 1.1,
      isCutAtStart: false,
      isCutAtEnd: true,
    });
    expect(flatNeighbourhood(curve, 0.95, 1.05, 0.04)).toMatchObject({ from: 0.95, to: 1.05 });
  });

  it('is at the end of the range where the curve falls all the way', () => {
    const flat = flatNeighbourhood((x) => 1 / x, 1, 2, 0.1);
    expect(flat).toMatchObject({ leastAt: 2, least: 0.5, to: 2, isCutAtEnd: true });
    expect(flat.from).toBeCloseTo(2 / 1.1, 5);
    expect(flatNeighbourhood((x) => x, 1, 2, 0.1)).toMatchObject({ leastAt: 1, from: 1, isCutAtStart: true });
  });

  it('is about the deeper of two dips, and ends where the curve first leaves it', () => {
    const dip = (x: number, at: number, width: number): number => Math.exp(-(((x - at) / width) ** 2));
    const flat = flatNeighbourhood((x) => 2 - 0.5 * dip(x, 2, 1) - 0.9 * dip(x, 8, 0.3), 0, 10, 0.1);
    expect(flat.leastAt).toBeCloseTo(8, 3);
    // 1.1 x 1.1 = 2 - 0.9 dip, at 0.3 sqrt(-ln(0.79 / 0.9)) to either side.
    const half = 0.3 * Math.sqrt(-Math.log(0.79 / 0.9));
    expect(flat.from).toBeCloseTo(8 - half, 4);
    expect(flat.to).toBeCloseTo(8 + half, 4);
  });
});
