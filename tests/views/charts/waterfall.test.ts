import { afterEach, describe, expect, it } from 'vitest';
import {
  shortened,
  waterfallGeometry,
  type WaterfallInput,
  type WaterfallStep,
} from '../../../src/charts/waterfallGeometry';
import { savingOf } from '../../../src/physics/ledger/ledgerSums';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
import { resultOfPower } from './builders';

/** An item that brings so many watts from one total to another; its own doubt is the given watts up and down. */
function step(
  id: string,
  savedW: number,
  parts: Partial<WaterfallStep> & { spreadW?: number } = {},
): WaterfallStep {
  const { spreadW = 0, ...rest } = parts;
  const saving = savingOf(resultOfPower(savedW, spreadW, -spreadW), resultOfPower(0));
  return { id, name: id, isCounted: true, saving, savingAlone: saving, ...rest };
}

/** 116 pixels wide with 8 at each side: one pixel is one watt when the chart runs from 0 to 100 W. */
const widthPx = 116;

const plain: WaterfallInput = {
  before: resultOfPower(100),
  after: resultOfPower(50),
  steps: [step('boom', 30), step('rail', 20)],
};

describe('a waterfall from zero', () => {
  const chart = waterfallGeometry(plain, widthPx);

  it('stands before and after on zero and floats each item between the totals', () => {
    const bars = chart.rows.map(({ id, kind, bar }) => [id, kind, bar.x, bar.widthPx]);
    expect(bars).toEqual([
      ['before', 'total', 8, 100],
      ['boom', 'saved', 78, 30],
      ['rail', 'saved', 58, 20],
      ['after', 'total', 8, 50],
    ]);
  });

  it('hands each total down to the next row', () => {
    expect(chart.rows.map(({ totalX }) => totalX)).toEqual([108, 78, 58, 58]);
    expect(chart.rows.map(({ bar }) => bar.y)).toEqual([32, 84, 136, 188]);
    expect(chart.plot.bottom).toBe(4 * 52);
    expect(chart.heightPx).toBe(4 * 52 + 34);
  });

  it('marks zero and the unit on the axis', () => {
    expect(chart.hasZero).toBe(true);
    expect(chart.ticks[0]).toEqual({ x: 8, label: '0' });
    expect(chart.ticks.at(-1)?.label).toMatch(/W$/);
  });

  it('says it in words', () => {
    expect(chart.description).toContain('Before: 100\u00a0W. boom: saves 30\u00a0W');
    expect(chart.description).toContain('alone 20\u00a0W');
    expect(chart.description).toContain('After: 50\u00a0W.');
  });
});

describe('items that are not plain savings', () => {
  it('runs an item that adds to the right, crossed', () => {
    const chart = waterfallGeometry(
      { before: resultOfPower(20), after: resultOfPower(100), steps: [step('cuddy', -80)] },
      widthPx,
    );
    const row = chart.rows[1];
    expect([row?.kind, row?.bar.x, row?.bar.widthPx, row?.totalX]).toEqual(['added', 28, 80, 108]);
    expect(row?.value).toBe('adds 80\u00a0W');
  });

  it('outlines a withheld item where it would stand and moves no total', () => {
    const steps = [step('rail', 40, { isCounted: false }), step('boom', 50)];
    const chart = waterfallGeometry({ ...plain, steps }, widthPx);
    const [, withheld, counted] = chart.rows;
    expect([withheld?.kind, withheld?.bar.x, withheld?.bar.widthPx, withheld?.totalX]).toEqual([
      'withheld',
      68,
      40,
      108,
    ]);
    expect(withheld?.hatch).toBe('');
    expect(withheld?.value).toBe('would save 40\u00a0W');
    expect(withheld?.note).toContain('waits for a reason, not counted');
    expect([counted?.bar.x, counted?.bar.widthPx]).toEqual([58, 50]);
  });

  it('says when an item cannot stand alone', () => {
    const chart = waterfallGeometry({ ...plain, steps: [step('boom', 50, { savingAlone: null })] }, widthPx);
    expect(chart.rows[1]?.note).toContain('cannot stand alone');
  });
});

describe('the spread', () => {
  it('of a saving lies under its bar, at the end that it moves', () => {
    const steps = [step('boom', 50, { spreadW: 10 })];
    const { spread, bar } = waterfallGeometry({ ...plain, steps }, widthPx).rows[1] ?? {};
    expect([spread?.fromX, spread?.toX]).toEqual([48, 68]);
    expect((spread?.y ?? 0) - (bar?.y ?? 0)).toBe(16);
    expect([spread?.isOpenLow, spread?.isOpenHigh]).toEqual([false, false]);
  });

  it('of the totals is drawn whole where there is room', () => {
    const chart = waterfallGeometry(
      { before: resultOfPower(80, 20, -20), after: resultOfPower(30), steps: [step('boom', 50)] },
      widthPx,
    );
    expect(chart.isSpreadCut).toBe(false);
    expect([chart.rows[0]?.spread?.fromX, chart.rows[0]?.spread?.toX]).toEqual([68, 108]);
    expect(chart.rows[3]?.spread ?? null).toBeNull();
  });

  it('of the totals is cut, and open, before it makes the items too small to see', () => {
    const chart = waterfallGeometry(
      {
        before: resultOfPower(1000, 300, -300),
        after: resultOfPower(960, 280, -280),
        steps: [step('boom', 40)],
      },
      widthPx,
    );
    expect(chart.isSpreadCut).toBe(true);
    expect(chart.hasZero).toBe(false);
    const [before, boom] = chart.rows;
    expect(before?.spread).toMatchObject({ fromX: 8, toX: 108, isOpenLow: true, isOpenHigh: true });
    // 40 W and 15 % of it at both ends fill 100 px; without zero a total is a stroke alone.
    expect(boom?.bar.widthPx).toBeCloseTo(100 / 1.3, 1);
    expect(before?.bar.widthPx).toBe(0);
    expect(before?.totalX).toBe(
      boom === undefined ? NaN : Math.round(100 * (boom.bar.x + boom.bar.widthPx)) / 100,
    );
  });
});

describe('at the edge', () => {
  it('stands when nothing costs anything, and where the wind pushes', () => {
    const nothing = waterfallGeometry(
      { before: resultOfPower(0), after: resultOfPower(0), steps: [] },
      widthPx,
    );
    expect(nothing.rows.every(({ bar }) => Number.isFinite(bar.x) && bar.widthPx === 0)).toBe(true);
    const pushing = waterfallGeometry(
      { before: resultOfPower(-20), after: resultOfPower(-100), steps: [step('boom', 80)] },
      widthPx,
    );
    expect(pushing.hasZero).toBe(true);
    expect(pushing.rows.map(({ bar }) => [bar.x, bar.widthPx])).toEqual([
      [88, 20],
      [8, 80],
      [8, 100],
    ]);
  });

  it('keeps every mark inside a chart of 360 px, and shortens long names beside their value', () => {
    const name = 'Outriggers in high-modulus carbon, unshipped upwind and on the run';
    const steps = [step('a', 30, { name, spreadW: 9 }), step('b', 20, { spreadW: 25 })];
    const { rows, plot } = waterfallGeometry({ ...plain, steps }, 360);
    for (const { bar, spread, shownName, value } of rows) {
      expect(bar.x).toBeGreaterThanOrEqual(plot.left);
      expect(bar.x + bar.widthPx).toBeLessThanOrEqual(plot.right + 0.01);
      expect(spread?.fromX ?? plot.left).toBeGreaterThanOrEqual(plot.left);
      expect(spread?.toX ?? plot.right).toBeLessThanOrEqual(plot.right);
      expect((shownName.length + value.length) * 6.2).toBeLessThan(344);
    }
    expect(rows[1]?.shownName.endsWith('…')).toBe(true);
    expect(rows[1]?.name).toBe(name);
  });

  it('never cuts a character in two', () => {
    expect(shortened('🜁🜂🜃🜄', 3)).toBe('🜁🜂…');
    expect(shortened('abc', 3)).toBe('abc');
  });
});

describe("a waterfall in the reader's unit", () => {
  afterEach(() => {
    showIn(usualUnits);
  });
  const wide: WaterfallInput = {
    before: resultOfPower(1471, 80, -80),
    after: resultOfPower(1100),
    steps: [step('boom', 300), step('rail', 71), step('kite', 20, { isCounted: false, spreadW: 5 })],
  };

  it('has round ticks in it, where they are to scale', () => {
    showIn({ ...usualUnits, power: 'PS' });
    const { ticks, rows } = waterfallGeometry(wide, 352);
    const shown = ticks.filter(({ label }) => label !== '');
    expect(shown.map(({ label }) => label)).toEqual(['1.6', '1.8', '2.0']);
    const pxPerHp = ((shown[2]?.x ?? 0) - (shown[0]?.x ?? 0)) / 0.4;
    const savedPx = (rows[0]?.totalX ?? 0) - (rows.at(-1)?.totalX ?? 0);
    expect(savedPx / pxPerHp).toBeCloseTo((1471 - 1100) / 735.49875, 2);
  });

  it('names the horsepower in every line and keeps each inside the chart', () => {
    showIn({ ...usualUnits, power: 'hp' });
    const { rows } = waterfallGeometry(wide, 352);
    for (const { value, note } of rows) {
      expect(value).toMatch(/hp\u00a0\(mechanical\)$/);
      // A letter of a note is about 5.3 pixels wide.
      expect(note.length * 5.3).toBeLessThan(336);
    }
    expect(rows[1]?.note).toMatch(/^[\d.]+–[\d.]+; alone [\d.]+\u00a0hp\u00a0\(mechanical\)$/);
    expect(rows[3]?.note).toMatch(/^waits for a reason, not counted; .*hp\u00a0\(mechanical\)$/);
  });
});
