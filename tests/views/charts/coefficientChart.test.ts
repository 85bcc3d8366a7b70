import { describe, expect, it } from 'vitest';
import {
  coefficientChartGeometry,
  sampleCurve,
  type BarCurve,
  type CoefficientSide,
} from '../../../src/charts/coefficientChartGeometry';
import { isInside, labelBox, overlaps } from '../../../src/charts/labelBox';

const smooth: BarCurve = { diameterM: 0.1, roughnessM: 0, inclinationCosine: 1 };

function side(name: CoefficientSide['name'], reynolds: number, curve = smooth): CoefficientSide {
  const coefficient = sampleCurve(curve, [reynolds])[0]?.best ?? NaN;
  return { name, curve, point: { reynolds, coefficient }, others: [] };
}

describe('the chart of a round bar', () => {
  it('puts a decade every quarter of the plot and zero on the axis', () => {
    const { xTicks, yTicks, plot } = coefficientChartGeometry([side('before', 1e5)], 336);
    expect(xTicks.map(({ exponent }) => exponent)).toEqual([3, 4, 5, 6, 7]);
    expect(xTicks.map(({ x }) => Math.round(x))).toEqual([28, 103, 178, 253, 328]);
    expect(yTicks[0]).toEqual({ y: plot.bottom, label: '0.0' });
  });

  it('passes through the published middle at Re 5e4: 1.20, 1.05 to 1.25', () => {
    const [sample] = sampleCurve(smooth, [5e4]);
    expect(sample?.best).toBeCloseTo(1.2, 9);
    expect(sample?.low).toBeCloseTo(1.05, 9);
    expect(sample?.high).toBeCloseTo(1.25, 9);
  });

  it('lays the fitting’s point on its curve', () => {
    const { points, curves, plot, yTicks } = coefficientChartGeometry([side('before', 1e4)], 336);
    const one = yTicks.find(({ label }) => label === '1.0');
    // Re 1e4 has 1.10 in the table: a tenth above the mark of 1.
    const perUnit = plot.bottom - (one?.y ?? NaN);
    expect(points[0]?.x).toBeCloseTo(103, 6);
    expect(points[0]?.y).toBeCloseTo(plot.bottom - 1.1 * perUnit, 1);
    expect(curves[0]?.bestPath).toContain(`${points[0]?.x},${points[0]?.y}`);
  });

  it('draws one curve without a name when both states lie on it, two with names when they do not', () => {
    const rough: BarCurve = { ...smooth, roughnessM: 0.001 };
    const one = coefficientChartGeometry([side('before', 8e4), side('after', 4e4)], 336);
    expect(one.curves.map(({ name }) => name)).toEqual(['']);
    const two = coefficientChartGeometry([side('before', 8e4), side('after', 4e4, rough)], 336);
    expect(two.curves.map(({ name }) => name)).toEqual(['before', 'after']);
    expect(two.curveLabels.map(({ lines }) => lines[0])).toEqual(['before', 'after']);
  });

  it('makes one point of two that cover each other', () => {
    const { points } = coefficientChartGeometry([side('before', 8e4), side('after', 8e4)], 336);
    expect(points.map(({ label }) => label.lines[0])).toEqual(['before, after 1.20']);
  });

  it('reaches down to a slow point', () => {
    const { xTicks } = coefficientChartGeometry([side('before', 300)], 336);
    expect(xTicks[0]?.exponent).toBe(2);
  });

  it('names the stretches on the line and keeps labels inside and apart', () => {
    for (const reynolds of [2e3, 2e4, 9e4, 3e5, 2e6]) {
      const sides = [side('before', reynolds), side('after', reynolds * 0.5)];
      const { regimeLabels, points, plot } = coefficientChartGeometry(sides, 290);
      expect(regimeLabels.map(({ lines }) => lines[0])).toEqual(['dip', 'plateau', 'crisis', 'recovery']);
      const boxes = points.map(({ label }) => labelBox(label));
      for (const box of boxes) {
        expect(isInside(box, plot)).toBe(true);
        for (const other of regimeLabels) expect(overlaps(box, labelBox(other))).toBe(false);
      }
      const [first, second] = boxes;
      if (first !== undefined && second !== undefined) expect(overlaps(first, second)).toBe(false);
    }
  });

  it('has a table of one, two and five behind it, and says its points in words', () => {
    const { table, description } = coefficientChartGeometry([side('before', 5e4)], 336);
    expect(table[0]?.rows.map(({ reynolds }) => reynolds).slice(0, 4)).toEqual([1000, 2000, 5000, 10_000]);
    expect(table[0]?.rows.at(-1)?.reynolds).toBe(1e7);
    expect(description).toContain('before, 1.20 at Reynolds number 50\u2009000');
  });
});
