import { describe, expect, it } from 'vitest';
import { sectionDragAt, sectionLiftAt } from '../../src/physics/section/fairingRows';
import { fairingDragFrom30, fairingTable } from '../../src/physics/section/fairingTable';

/**
 * Sums formed from the published rows at the table's own nodes, apart from the table: [t/c, Re, sum of the lift nodes in
 * degrees, sum of lift x (1 + degrees), the same two of drag]. A slip in any number of the table shows in one of them.
 */
const rowSums: readonly (readonly [
  thicknessRatio: number,
  reynolds: number,
  liftDegrees: number,
  lift: number,
  dragDegrees: number,
  drag: number,
])[] = [
  [0.12, 40000, 91, 60.334, 24, 0.9285],
  [0.12, 80000, 97, 71.3556, 39, 2.438],
  [0.12, 160000, 127, 84.5508, 51, 3.1861],
  [0.12, 360000, 167, 123.7157, 89, 4.5021],
  [0.12, 700000, 177, 154.9293, 62, 4.3992],
  [0.12, 1e6, 217, 191.0122, 74, 5.1813],
  [0.12, 2e6, 227, 223.5215, 74, 5.8476],
  [0.12, 5e6, 255, 276.857, 99, 6.8865],
  [0.15, 40000, 146, 70.7086, 25, 1.2656],
  [0.15, 80000, 167, 91.2578, 38, 2.2902],
  [0.15, 160000, 214, 132.4298, 46, 3.6366],
  [0.15, 360000, 250, 191.6552, 78, 5.3145],
  [0.15, 700000, 251, 226.8236, 79, 5.8555],
  [0.15, 1e6, 205, 202.0364, 84, 6.6122],
  [0.15, 2e6, 178, 192.6254, 98, 7.5602],
  [0.15, 5e6, 153, 181.054, 114, 8.4584],
  [0.18, 40000, 143, 58.0258, 43, 2.9967],
  [0.18, 80000, 190, 99.1453, 69, 4.6749],
  [0.18, 160000, 184, 123.7078, 73, 4.5773],
  [0.18, 360000, 186, 156.7406, 74, 5.693],
  [0.18, 700000, 164, 156.8899, 80, 5.9056],
  [0.18, 1e6, 163, 165.9813, 91, 7.4713],
  [0.18, 2e6, 137, 151.688, 99, 7.8492],
  [0.18, 5e6, 121, 144.7444, 106, 9.9457],
  [0.21, 40000, 164, 62.6228, 47, 3.187],
  [0.21, 80000, 216, 117.8872, 49, 3.2022],
  [0.21, 160000, 188, 135.6322, 73, 4.753],
  [0.21, 360000, 152, 132.2805, 81, 6.1377],
  [0.21, 700000, 151, 146.8832, 101, 8.2577],
  [0.21, 1e6, 134, 133.7292, 112, 10.111],
  [0.21, 2e6, 141, 152.6848, 108, 10.2392],
  [0.21, 5e6, 139, 164.0471, 105, 9.294],
  [0.25, 40000, 158, 59.8271, 56, 4.7536],
  [0.25, 80000, 175, 99.165, 78, 6.6159],
  [0.25, 160000, 167, 126.6937, 210, 28.8696],
  [0.25, 360000, 122, 109.2506, 176, 25.2507],
  [0.25, 700000, 128, 123.9069, 169, 23.9134],
  [0.25, 1e6, 127, 129.5172, 166, 23.0175],
  [0.25, 2e6, 133, 143.8754, 157, 22.1872],
  [0.25, 5e6, 117, 129.3246, 163, 21.8119],
];

/** Sum of the degrees and of value x (1 + degrees) of a list of pairs. */
function sumsOf(pairs: readonly number[]): readonly [degrees: number, weighted: number] {
  let degrees = 0;
  let weighted = 0;
  for (let i = 0; i < pairs.length; i += 2) {
    const at = pairs[i] ?? NaN;
    degrees += at;
    weighted += (pairs[i + 1] ?? NaN) * (1 + at);
  }
  return [degrees, weighted];
}

const allRows = fairingTable.flatMap((section) => section.rows.map((row) => ({ section, row })));

describe('the table of sections', () => {
  it('holds the sums of the published rows', () => {
    const found = allRows.map(({ section, row }) => [
      section.thicknessRatio,
      row.reynolds,
      ...[...sumsOf(row.lift), ...sumsOf(row.drag)].map((sum) => Number(sum.toFixed(4))),
    ]);
    expect(found).toEqual(rowSums);
  });

  it('holds the sums of the published columns beyond the stall', () => {
    const sumOf = (values: readonly number[]): number =>
      values.reduce((sum, value, i) => sum + value * (i + 1), 0);
    const [thin, ...thicker] = fairingTable;
    expect(sumOf(fairingDragFrom30)).toBeCloseTo(467.91, 9);
    expect(sumOf(thin?.liftFrom30 ?? [])).toBeCloseTo(-214.545, 9);
    expect(sumsOf(thin?.separatedDrag ?? [])[1]).toBeCloseTo(71.193, 9);
    for (const { liftFrom30, separatedDrag } of thicker) {
      expect(sumOf(liftFrom30)).toBeCloseTo(-202.51, 9);
      expect(sumsOf(separatedDrag)[1]).toBeCloseTo(67.801, 9);
    }
  });

  it('lists rising incidences, from 0 to where the next curve begins', () => {
    for (const { section, row } of allRows) {
      for (const pairs of [row.lift, row.drag, section.separatedDrag]) {
        const degrees = pairs.filter((_, i) => i % 2 === 0);
        expect([...degrees].sort((a, b) => a - b)).toEqual(degrees);
      }
      expect(row.lift.at(-2)).toBe(30);
      expect(row.lift.at(-1)).toBe(section.liftFrom30[0]);
      expect(section.separatedDrag.at(-1)).toBe(fairingDragFrom30[0]);
    }
  });

  it('goes on rising, by less than 0.15 a degree, from a row’s own drag to the separated curve', () => {
    for (const { section, row } of allRows) {
      const joined = row.drag.at(-2) ?? NaN;
      const jump = sectionDragAt(section, row, joined + 1) - sectionDragAt(section, row, joined);
      expect(jump).toBeGreaterThan(0);
      expect(jump).toBeLessThan(0.15);
    }
  });

  it('leaves lift alone but where the table falls below half a separated plate’s after the stall', () => {
    const departures: number[] = [];
    for (const { row } of allRows) {
      for (let i = 0; i < row.lift.length; i += 2) {
        const degree = row.lift[i] ?? NaN;
        const printed = row.lift[i + 1] ?? NaN;
        const used = sectionLiftAt(row, degree);
        if (used === printed) continue;
        expect(used).toBeCloseTo(0.45 * Math.sin((2 * degree * Math.PI) / 180), 9);
        departures.push(used - printed);
      }
    }
    expect(departures.length).toBe(31);
    expect(Math.max(...departures)).toBeLessThan(0.2);
  });

  it('has no lift below zero before 90 deg', () => {
    for (const { row } of allRows) {
      for (let degree = 1; degree <= 30; degree += 1) expect(sectionLiftAt(row, degree)).toBeGreaterThan(0);
    }
  });
});
