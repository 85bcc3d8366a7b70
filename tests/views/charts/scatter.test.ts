import { describe, expect, it } from 'vitest';
import { labelBox, overlaps } from '../../../src/charts/labelBox';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
import { beatenBy, scatterGeometry, type ScatterItem } from '../../../src/charts/scatterGeometry';

function item(id: string, savingW: number, price: number): ScatterItem {
  return { id, name: id, mark: id, savingW, price };
}

describe('one item beats another', () => {
  it('when it saves no less for no more, and is better in one', () => {
    const items = [item('a', 50, 100), item('b', 50, 200), item('c', 40, 100), item('d', 60, 300)];
    expect(items.map((each) => beatenBy(each, items)?.id ?? null)).toEqual([null, 'a', 'a', null]);
  });

  it('not when they are alike, nor when each is better in one', () => {
    const alike = [item('a', 50, 100), item('b', 50, 100)];
    expect(alike.map((each) => beatenBy(each, alike))).toEqual([null, null]);
    const apart = [item('a', 50, 100), item('b', 40, 90)];
    expect(apart.map((each) => beatenBy(each, apart))).toEqual([null, null]);
  });

  it('counts less mass than none as better', () => {
    const items = [item('a', 50, -3), item('b', 50, 0)];
    expect(beatenBy(items[1] ?? item('', 0, 0), items)?.id).toBe('a');
  });
});

describe('the scatter', () => {
  it('puts zero saving below and zero price on an axis, to scale', () => {
    const chart = scatterGeometry([item('a', 100, 1000), item('b', 50, 500)], 'cost, EUR', 354);
    expect(chart.zeroX).toBe(40);
    expect(chart.zeroY).toBe(152);
    expect(chart.points.map(({ x, y }) => [x, y])).toEqual([
      [340, 22],
      [190, 87],
    ]);
    expect(chart.xTicks[0]).toEqual({ at: 40, label: '0' });
  });

  it('holds negative prices and savings', () => {
    const chart = scatterGeometry([item('a', 100, -4), item('b', -100, 4)], 'change of mass, kg', 354);
    expect([chart.zeroX, chart.zeroY]).toEqual([190, 87]);
    expect(chart.points.map(({ x, y }) => [x, y])).toEqual([
      [40, 22],
      [340, 152],
    ]);
  });

  it('keeps labels apart from each other and inside', () => {
    const items = ['1', '2', '3', '4', '5'].map((mark, i) => item(mark, 50 + i, 100 + 3 * i));
    const chart = scatterGeometry(items, 'cost', 360);
    const boxes = chart.points.map(({ label }) => labelBox(label));
    for (const [i, box] of boxes.entries()) {
      expect(box.left).toBeGreaterThanOrEqual(0);
      expect(box.right).toBeLessThanOrEqual(360);
      expect(boxes.slice(i + 1).some((other) => overlaps(box, other))).toBe(false);
    }
  });

  it('stands when everything is zero, and says in words who beats whom', () => {
    const flat = scatterGeometry([item('a', 0, 0), item('b', 0, 0)], 'cost', 360);
    expect(flat.points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
    const { description } = scatterGeometry([item('a', 50, 1), item('b', 40, 2)], 'cost', 360);
    expect(description).toContain('b: 40.0\u00a0W for 2.00, beaten by a');
  });

  it("has round ticks in the reader's unit, each point to scale", () => {
    showIn({ ...usualUnits, power: 'PS' });
    try {
      const chart = scatterGeometry([item('a', 73.549875, 1), item('b', 30, 2)], 'cost', 360);
      expect(chart.yTicks.map(({ label }) => label)).toEqual(['0', '0.02', '0.04', '0.06', '0.08', '0.10']);
      expect(chart.points[0]?.y).toBe(chart.yTicks.at(-1)?.at);
      expect(chart.description).toContain('a: 0.100\u00a0hp\u00a0(metric) for 1.00');
    } finally {
      showIn(usualUnits);
    }
  });
});
