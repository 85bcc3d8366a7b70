import { describe, expect, it } from 'vitest';
import { ledgerBarGeometry, type LedgerBarGeometry } from '../../../src/charts/ledgerBarGeometry';
import { trackPowerScale } from '../../../src/charts/ledgerBarScale';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
import { resultOfPower } from './builders';

/** 106 pixels for 0 to 100 W between margins of 3: one pixel is one watt, zero lies at 3. */
const widest = { before: resultOfPower(100), after: resultOfPower(100) };
const scale = trackPowerScale([widest], 106);
const none = resultOfPower(0);

function stretches(bar: LedgerBarGeometry): (readonly [string, number, number])[] {
  return bar.segments.map(({ kind, x, widthPx }) => [kind, round(x), round(x + widthPx)] as const);
}

function round(px: number): number {
  return Math.round(px * 1e6) / 1e6;
}

describe('the scale of the total, under the bars of the rows', () => {
  const pushing = { before: resultOfPower(-25), after: resultOfPower(-25) };
  const rowsZeroAt28 = trackPowerScale([pushing, widest], 131);

  it('has the same zero as the rows, and still holds the total', () => {
    const total = trackPowerScale([{ before: resultOfPower(1000), after: none }], 131, rowsZeroAt28);
    expect(total.zeroX).toBeCloseTo(28, 9);
    expect(total.xOf(0)).toBeCloseTo(28, 9);
    expect(total.xOf(1000)).toBeCloseTo(128, 9);
  });

  it('holds both sides of a total that may push', () => {
    const total = trackPowerScale([{ before: resultOfPower(1000), after: resultOfPower(-250) }], 131, scale);
    expect(total.xOf(-250)).toBeCloseTo(3, 9);
    expect(total.xOf(1000)).toBeCloseTo(128, 9);
    const shared = trackPowerScale(
      [{ before: resultOfPower(1000), after: resultOfPower(-500) }],
      131,
      rowsZeroAt28,
    );
    expect(shared.zeroX).toBeCloseTo(28, 9);
    expect(shared.xOf(-500)).toBeCloseTo(3, 9);
  });

  it('has a zero of its own where the rows’ would leave the bar less than half its length', () => {
    const total = trackPowerScale([{ before: resultOfPower(-1000), after: none }], 131, rowsZeroAt28);
    expect(total.zeroX).toBeCloseTo(128, 9);
    expect(total.xOf(-1000)).toBeCloseTo(3, 9);
  });
});

describe('a bar of the ledger', () => {
  it('fills what is left after the plan and hatches what it saves', () => {
    const bar = ledgerBarGeometry({ before: resultOfPower(80), after: resultOfPower(30) }, scale);
    expect(stretches(bar)).toEqual([
      ['cost', 3, 33],
      ['saved', 33, 83],
    ]);
    expect(bar.segments[1]?.hatch).not.toBe('');
  });

  it('fills what was there and cross-hatches what a plan adds', () => {
    const bar = ledgerBarGeometry({ before: resultOfPower(30), after: resultOfPower(80) }, scale);
    expect(stretches(bar)).toEqual([
      ['cost', 3, 33],
      ['added', 33, 83],
    ]);
  });

  it('is filled alone when nothing changed, and empty for nothing', () => {
    const same = ledgerBarGeometry({ before: resultOfPower(50), after: resultOfPower(50) }, scale);
    expect(stretches(same)).toEqual([['cost', 3, 53]]);
    const nothing = ledgerBarGeometry({ before: resultOfPower(0), after: resultOfPower(0) }, scale);
    expect(nothing.segments).toEqual([]);
    expect(nothing.spread).toBeNull();
  });

  it('is all saved when the plan removes the fitting', () => {
    const bar = ledgerBarGeometry({ before: resultOfPower(50), after: resultOfPower(0) }, scale);
    expect(stretches(bar)).toEqual([['saved', 3, 53]]);
  });

  it('shows one state alone when asked', () => {
    const row = { before: resultOfPower(80, 5, -5), after: resultOfPower(30, 2, -2) };
    expect(stretches(ledgerBarGeometry(row, scale, { shown: 'before' }))).toEqual([['cost', 3, 83]]);
    expect(stretches(ledgerBarGeometry(row, scale, { shown: 'after' }))).toEqual([['cost', 3, 33]]);
  });

  it('draws the spread of the state that is judged', () => {
    const row = { before: resultOfPower(60, 20, -20), after: resultOfPower(30, 10, -5) };
    const { spread } = ledgerBarGeometry(row, scale);
    expect([spread?.fromX, spread?.toX].map((x) => round(x ?? NaN))).toEqual([28, 43]);
    const before = ledgerBarGeometry(row, scale, { shown: 'before' }).spread;
    expect([before?.fromX, before?.toX].map((x) => round(x ?? NaN))).toEqual([43, 83]);
  });

  it('runs left of zero where the wind pushes, and hatches both sides of zero where the sign turns', () => {
    const pushing = { before: resultOfPower(-25), after: resultOfPower(-5) };
    const both = trackPowerScale([pushing, { before: resultOfPower(100), after: resultOfPower(0) }], 131);
    expect(both.zeroX).toBeCloseTo(28, 9);
    expect(stretches(ledgerBarGeometry(pushing, both))).toEqual([
      ['cost', 23, 28],
      ['added', 3, 23],
    ]);
    const turning = ledgerBarGeometry({ before: resultOfPower(40), after: resultOfPower(-10) }, both);
    expect(stretches(turning)).toEqual([
      ['cost', 18, 28],
      ['saved', 28, 68],
    ]);
  });

  it('stands where it did while its ends move by less than a screen shows', () => {
    const at = (watts: number) => ledgerBarGeometry({ before: resultOfPower(watts), after: none }, scale);
    expect(at(50.1)).toEqual(at(50));
    expect(at(50.3)).not.toEqual(at(50));
    const third = trackPowerScale([{ before: resultOfPower(-100), after: resultOfPower(90) }], 106);
    const { zeroX, segments } = ledgerBarGeometry({ before: resultOfPower(50), after: none }, third);
    expect(segments[0]?.x).toBe(zeroX);
  });

  it('is marked when a number behind it lies outside its range, not for every notice', () => {
    const notice = (code: 'wind-near-axis' | 'en-slenderness-stops') => [{ code, values: {} }];
    expect(ledgerBarGeometry({ ...widest, notices: notice('wind-near-axis') }, scale).isOutside).toBe(true);
    expect(ledgerBarGeometry({ ...widest, notices: notice('en-slenderness-stops') }, scale).isOutside).toBe(
      false,
    );
  });
});

describe('the scale of the bars', () => {
  it('holds every spread with room for its end stroke', () => {
    const rows = [{ before: resultOfPower(90, 30, -10), after: resultOfPower(-4, 1, -6) }];
    const wide = trackPowerScale(rows, 200);
    expect(wide.xOf(-10)).toBeGreaterThanOrEqual(3);
    expect(wide.xOf(120)).toBeLessThanOrEqual(197);
  });

  it('stands still while the widest bar moves within a step, and leaves at most a tenth of its side empty', () => {
    const upTo = (watts: number) =>
      trackPowerScale([{ before: resultOfPower(watts), after: resultOfPower(-0.02 * watts) }], 106);
    expect([94, 97, 100].map((watts) => upTo(watts).xOf(50))).toEqual(Array(3).fill(upTo(99).xOf(50)));
    expect(upTo(101).xOf(50)).toBeLessThan(upTo(100).xOf(50));
    for (let watts = 0.03; watts < 1e5; watts *= 1.013) {
      const { xOf, zeroX } = upTo(watts);
      const roomPx = 103 - zeroX;
      expect(xOf(watts)).toBeLessThanOrEqual(103 + 1e-9);
      expect(xOf(watts) - zeroX).toBeGreaterThan(0.9 * roomPx);
      expect(xOf(-0.02 * watts)).toBeGreaterThanOrEqual(3 - 1e-9);
      expect(zeroX).toBeLessThan(3 + 100 / 16);
    }
  });

  it('gives the larger side its steps where the wind pushes harder than it holds', () => {
    const { xOf } = trackPowerScale([{ before: resultOfPower(-100), after: resultOfPower(26) }], 106);
    expect(xOf(-100)).toBeCloseTo(3, 9);
    expect(xOf(26)).toBeLessThanOrEqual(103);
    expect(xOf(100 * (9 / 32))).toBeCloseTo(103, 9);
  });

  it('counts in watts, from 2000 W up in kilowatts, the unit on the last mark', () => {
    const watts = trackPowerScale([{ before: resultOfPower(330), after: resultOfPower(0) }], 300);
    expect(watts.ticks.map(({ label }) => label)).toEqual(['0', '100', '200', '300\u00a0W']);
    const kilowatts = trackPowerScale([{ before: resultOfPower(2100), after: resultOfPower(0) }], 300);
    expect(kilowatts.ticks.map(({ label }) => label)).toEqual(['0', '0.5', '1.0', '1.5', '2.0\u00a0kW']);
  });

  it('counts in the reader’s unit, whose longer name is left to the head', () => {
    showIn({ ...usualUnits, power: 'hp' });
    const rows = [{ before: resultOfPower(1950), after: resultOfPower(0) }];
    const { ticks } = trackPowerScale(rows, 300);
    showIn(usualUnits);
    expect(ticks.map(({ label }) => label)).toEqual(['0', '0.5', '1.0', '1.5', '2.0', '2.5']);
    expect(ticks[2]?.powerW).toBeCloseTo(745.6999, 4);
  });

  it('leaves out labels that would touch, never the one with the unit', () => {
    const { ticks } = trackPowerScale([{ before: resultOfPower(1900), after: resultOfPower(0) }], 90);
    expect(ticks.at(-1)?.label).toMatch(/W$/);
    expect(ticks.some(({ label }) => label === '')).toBe(true);
  });

  it('moves the label of a mark next to the right end no further than keeps it whole', () => {
    // The mark of 15 kW: to its left altogether, the label would take the room of that of 10 kW.
    const { ticks } = trackPowerScale([{ before: resultOfPower(14100, 2000, -3900), after: none }], 110);
    expect(ticks.map(({ label }) => label)).toEqual(['0', '5', '10', '15\u00a0kW']);
    const last = ticks.at(-1);
    expect(last?.labelX).toBeLessThan(last?.x ?? 0);
    expect(last?.labelX).toBeGreaterThan((last?.x ?? 0) - 16);
    expect(ticks[1]?.labelX).toBe(ticks[1]?.x);
  });

  it('still stands when there is nothing to show', () => {
    const empty = trackPowerScale([], 100);
    expect(empty.xOf(0)).toBe(3);
    expect(empty.ticks.length).toBeGreaterThan(1);
  });
});
