import { describe, expect, it } from 'vitest';
import { coefficientChartGeometry, type CoefficientSide } from '../../../src/charts/coefficientChartGeometry';
import { memberCurve, type CoefficientCurve } from '../../../src/charts/coefficientCurves';
import type { MemberShape } from '../../../src/physics/fitting/fittingInput';
import { isInside, labelBox, overlaps } from '../../../src/charts/labelBox';

const parts = { coefficient: null, coefficientDoubtId: 'own:a:coefficient', friction: true } as const;
const place = { inclinationCosine: 1, reynolds: 2e5, effectiveSlenderness: Infinity };

function size(valueM: number) {
  return { valueM, basis: 'measured', doubtId: 'own:a:size' } as const;
}

function tube(roughnessM: number): CoefficientCurve {
  const shape: MemberShape = {
    kind: 'roundBar',
    diameter: size(0.1),
    roughnessM,
    ends: ['joined', 'joined'],
    ...parts,
  };
  return memberCurve(shape, place, 'turbulent');
}

const smooth = tube(0);

const fairing = memberCurve(
  {
    kind: 'fairing',
    chord: size(0.4),
    thickness: size(0.1),
    cornerRadiusM: 0,
    direction: { kind: 'fixed', angleRad: 0 },
    directionDoubtId: 'own:a:direction',
    ends: ['joined', 'joined'],
    ...parts,
  },
  place,
  'turbulent',
);

function side(name: CoefficientSide['name'], x: number, curve = smooth): CoefficientSide {
  const coefficient = curve.at(x).best;
  return { name, shapeName: 'round bar', curve, point: { x, coefficient }, others: [] };
}

describe('the chart of a coefficient', () => {
  it('puts a decade every quarter of the plot and zero on the axis', () => {
    const { xTicks, yTicks, plot } = coefficientChartGeometry([side('before', 1e5)], 336);
    expect(xTicks.map(({ exponent }) => exponent)).toEqual([3, 4, 5, 6, 7]);
    expect(xTicks.map(({ x }) => Math.round(x))).toEqual([28, 103, 178, 253, 328]);
    expect(yTicks[0]).toEqual({ y: plot.bottom, label: '0.0' });
  });

  it('passes through the published middle at Re 5e4: 1.20, 0.905 to 1.32', () => {
    const sample = smooth.at(5e4);
    expect(sample.best).toBeCloseTo(1.2, 9);
    expect(sample.low).toBeCloseTo(0.905, 9);
    expect(sample.high).toBeCloseTo(1.32, 9);
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
    const rough = tube(0.001);
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
    expect(table[0]?.rows.map(({ x }) => x).slice(0, 4)).toEqual([1000, 2000, 5000, 10_000]);
    expect(table[0]?.rows.at(-1)?.x).toBe(1e7);
    expect(description).toContain('before, round bar, 1.20 at Reynolds number 50\u2009000');
  });

  it('draws a section with a direction against incidence, to 180 degrees, and names each regime once', () => {
    const chart = coefficientChartGeometry([side('before', 20, fairing)], 336);
    expect(chart.xTicks.map(({ label }) => label)).toEqual([
      '0°',
      '30°',
      '60°',
      '90°',
      '120°',
      '150°',
      '180°',
    ]);
    expect(chart.points[0]?.x).toBeCloseTo(28 + (300 * 20) / 180, 1);
    expect(chart.table[0]?.rows.map(({ x }) => x)).toHaveLength(19);
    const names = chart.regimeLabels.map(({ lines }) => lines[0]);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain('separated');
    expect(chart.description).toContain('20° of incidence');
  });
});
