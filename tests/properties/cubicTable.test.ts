import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubicTable, pieceAt, valueAt, valueOnPiece } from '../../src/physics/numerics/cubicTable';
import { smoothStep } from '../../src/physics/numerics/smoothStep';
import { between } from './arbitraries';

/** Abscissae with gaps of 0.1 to 3 and one column of values. */
const tables = fc
  .array(
    fc.record({
      gap: fc.double({ min: 0.1, max: 3, noNaN: true }),
      value: between(-5, 5),
    }),
    { minLength: 2, maxLength: 12 },
  )
  .map((points) => {
    let x = -4;
    const abscissae = points.map(({ gap }) => (x += gap));
    const values = points.map(({ value }) => value);
    return {
      abscissae,
      values,
      table: cubicTable(
        abscissae,
        values.map((value) => [value]),
      ),
    };
  });

const slopeStep = 1e-7;

/** One-sided slope of the first column. */
function slope(table: ReturnType<typeof cubicTable>, x: number, step: number): number {
  return (valueAt(table, 0, x + step) - valueAt(table, 0, x)) / step;
}

describe('a cubic table', () => {
  it('passes through every node', () => {
    fc.assert(
      fc.property(tables, ({ abscissae, values, table }) => {
        abscissae.forEach((x, i) => {
          expect(valueAt(table, 0, x)).toBeCloseTo(values[i] ?? NaN, 10);
        });
      }),
    );
  });

  it('stays between neighbouring nodes and never turns back between them', () => {
    fc.assert(
      fc.property(tables, ({ abscissae, values, table }) => {
        for (let i = 0; i + 1 < abscissae.length; i += 1) {
          const from = abscissae[i] ?? NaN;
          const to = abscissae[i + 1] ?? NaN;
          const rise = (values[i + 1] ?? NaN) - (values[i] ?? NaN);
          let before = values[i] ?? NaN;
          for (let k = 1; k <= 40; k += 1) {
            const here = valueAt(table, 0, from + ((to - from) * k) / 40);
            expect((here - before) * Math.sign(rise)).toBeGreaterThanOrEqual(-1e-10);
            before = here;
          }
        }
      }),
    );
  });

  it('has no step in value at a node', () => {
    fc.assert(
      fc.property(tables, ({ abscissae, table }) => {
        for (let i = 1; i + 1 < abscissae.length; i += 1) {
          const x = abscissae[i] ?? NaN;
          expect(valueOnPiece(table, 0, i - 1, x)).toBeCloseTo(valueOnPiece(table, 0, i, x), 10);
        }
      }),
    );
  });

  it('has no step in slope at a node, and is level at both ends', () => {
    fc.assert(
      fc.property(tables, ({ abscissae, table }) => {
        for (const x of abscissae) {
          expect(Math.abs(slope(table, x, slopeStep) - slope(table, x, -slopeStep))).toBeLessThan(2e-3);
        }
        expect(Math.abs(slope(table, abscissae[0] ?? NaN, slopeStep))).toBeLessThan(1e-3);
        expect(Math.abs(slope(table, abscissae.at(-1) ?? NaN, -slopeStep))).toBeLessThan(1e-3);
      }),
    );
  });

  it('left sloping at its ends carries the end secant on from its neighbour, level or three times as steep at most', () => {
    const startOf = (secant: number, neighbour: number): number => {
      const table = cubicTable([0, 1, 2], [[0], [secant], [secant + neighbour]], 'sloping');
      return (valueAt(table, 0, slopeStep) - valueAt(table, 0, 0)) / slopeStep;
    };
    expect(startOf(1, 1)).toBeCloseTo(1, 5);
    expect(startOf(1, 2)).toBeCloseTo(0.5, 5);
    expect(startOf(1, 3.2)).toBeCloseTo(0, 5);
    expect(startOf(1, -2.9)).toBeCloseTo(2.95, 5);
    expect(startOf(1, -3.1)).toBeCloseTo(3, 5);
    expect(startOf(-1, 4)).toBeCloseTo(-3, 5);
    const two = cubicTable([0, 2], [[1], [5]], 'sloping');
    expect(valueAt(two, 0, 0.5)).toBeCloseTo(2, 12);
  });

  it('left sloping at its ends never turns back between nodes either', () => {
    fc.assert(
      fc.property(tables, ({ abscissae, values }) => {
        const table = cubicTable(
          abscissae,
          values.map((value) => [value]),
          'sloping',
        );
        const [from, to] = [abscissae[0] ?? NaN, abscissae[1] ?? NaN];
        const sign = Math.sign((values[1] ?? NaN) - (values[0] ?? NaN));
        for (let k = 0; k < 20; k += 1) {
          const at = (step: number): number => valueAt(table, 0, from + ((to - from) * step) / 20);
          expect((at(k + 1) - at(k)) * sign).toBeGreaterThanOrEqual(-1e-10);
        }
      }),
    );
  });

  it('holds its end values outside', () => {
    const table = cubicTable([0, 1, 3], [[2], [5], [4]]);
    expect(valueAt(table, 0, -10)).toBe(2);
    expect(valueAt(table, 0, 30)).toBeCloseTo(4, 14);
  });

  it('keeps its columns apart', () => {
    const table = cubicTable(
      [0, 1, 2],
      [
        [1, -1],
        [4, 0],
        [9, 5],
      ],
    );
    expect(valueAt(table, 0, 1)).toBe(4);
    expect(valueAt(table, 1, 1)).toBe(0);
    expect(valueAt(table, 0, 2)).toBeCloseTo(9, 14);
    expect(valueAt(table, 1, 2)).toBeCloseTo(5, 14);
  });

  it('finds the piece by its left node', () => {
    const table = cubicTable([0, 1, 3, 7], [[0], [1], [2], [3]]);
    expect([-1, 0, 0.5, 1, 2.9, 3, 7, 9].map((x) => pieceAt(table, x))).toEqual([0, 0, 0, 1, 1, 2, 2, 2]);
  });
});

describe('the smooth step', () => {
  it('goes from 0 to 1 with a half in the middle, without a kink', () => {
    expect(smoothStep(2, 4, 1)).toBe(0);
    expect(smoothStep(2, 4, 2)).toBe(0);
    expect(smoothStep(2, 4, 3)).toBe(0.5);
    expect(smoothStep(2, 4, 4)).toBe(1);
    expect(smoothStep(2, 4, 5)).toBe(1);
    expect(smoothStep(2, 4, 2 + 1e-6)).toBeLessThan(1e-11);
    expect(smoothStep(2, 4, 4 - 1e-6)).toBeGreaterThan(1 - 1e-11);
  });
});
