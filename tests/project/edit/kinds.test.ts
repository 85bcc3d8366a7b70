import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeShapeKind } from '../../../src/project/edit/changeShapeKind';
import { changeWindKind } from '../../../src/project/edit/changeWindKind';
import { patchFitting } from '../../../src/project/edit/fittingEdits';
import { changePlacementKind, otherKind, setRowCount } from '../../../src/project/edit/placementEdits';
import { deckLineOf, membersOf } from '../../../src/project/core/fittingToPhysics';
import { blankBoat } from '../../../src/project/file/blankParts';
import { solveProjectCondition } from '../../../src/project/ledger/conditionSummary';
import { placement } from '../file/arbitraryParts';
import { after, beat, boat, done, fittingOf } from './support';

const line = deckLineOf(blankBoat);

function farthestM(a: ReturnType<typeof membersOf>, b: ReturnType<typeof membersOf>): number {
  const ends = a.flatMap(({ start, end }, i) => [
    [start, b[i]?.start],
    [end, b[i]?.end],
  ]);
  return Math.max(
    ...ends.map(([p, q]) =>
      Math.hypot(...[0, 1, 2].map((axis) => (p?.[axis] ?? 0) - (q?.[axis] ?? Infinity))),
    ),
  );
}

describe('the other way of saying where a fitting is', () => {
  it('keeps the place of a single member to a tenth of a millimetre, both ways', () => {
    fc.assert(
      fc.property(placement, (one) => {
        const single = { ...one, row: null };
        const other = otherKind(single, line);
        const back = otherKind(other, line);
        expect(other.kind).not.toBe(single.kind);
        expect(other.pair).toBe(single.pair);
        expect(farthestM(membersOf(single, line), membersOf(other, line))).toBeLessThan(1e-4);
        expect(farthestM(membersOf(single, line), membersOf(back, line))).toBeLessThan(1e-4);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps the first and the last of a taped row where the deck puts them', () => {
    fc.assert(
      fc.property(placement, (one) => {
        fc.pre(one.kind === 'taped' && one.row !== null);
        const before = membersOf({ ...one, pair: false }, line);
        const now = membersOf({ ...otherKind(one, line), pair: false }, line);
        expect(farthestM(before.slice(0, 1), now.slice(0, 1))).toBeLessThan(1e-4);
        expect(farthestM(before.slice(-1), now.slice(-1))).toBeLessThan(1e-4);
      }),
    );
  });

  it('says by how much the members of a row move that cannot stand quite as they did', () => {
    const start = { xM: -3, yM: 1, zM: 1.5 };
    const lower = { xM: -5, yM: 1, zM: 1.2 };
    const row = { count: 2, lastStart: lower, lastEnd: { ...lower, zM: 2.2 } };
    const placed = {
      kind: 'endPoints',
      start,
      end: { ...start, zM: 2.5 },
      basis: 'measured',
      row,
      pair: false,
    } as const;
    const project = after(patchFitting(boat(), 'pole', { placement: placed }));
    expect(done(changePlacementKind(project, 'pole', 'taped')).message).toMatch(/moves by up to 300\smm\.$/);
  });

  it('does nothing when asked for the way it is', () => {
    const project = boat();
    expect(after(changePlacementKind(project, 'pole', 'endPoints'))).toBe(project);
  });
});

describe('a row', () => {
  it('begins straight aft at 1 m, and one member is no row', () => {
    const { project, message } = done(setRowCount(boat(), 'pole', 4));
    const [first, , , last] = membersOf(fittingOf(project, 'pole').placement, line);
    expect(last?.start[0]).toBeCloseTo((first?.start[0] ?? 0) - 3, 9);
    expect(last?.end[2]).toBe(first?.end[2]);
    expect(message).toMatch(/ 1.00\sm apart/);
    expect(after(setRowCount(project, 'pole', 1)).fittings).toEqual(boat().fittings);
  });

  it('keeps its last place when its count changes', () => {
    const four = after(setRowCount(boat(), 'pole', 4));
    const six = after(setRowCount(four, 'pole', 6));
    expect(membersOf(fittingOf(six, 'pole').placement, line).at(-1)).toEqual(
      membersOf(fittingOf(four, 'pole').placement, line).at(-1),
    );
  });

  it('refuses a count that is none at the count', () => {
    expect(setRowCount(boat(), 'pole', 2.5)).toHaveProperty(
      'refused.path',
      'fittings[0].placement.row.count',
    );
    expect(setRowCount(boat(), 'pole', 0)).toHaveProperty('refused.path', 'fittings[0].placement.row.count');
  });
});

describe('another kind of shape', () => {
  it('boxes a bar in: 2 m athwart and 0.4 m up, 0.1 m thick', () => {
    const { shape } = fittingOf(after(changeShapeKind(boat(), 'pole', 'bluffBody')), 'pole');
    expect(shape).toMatchObject({
      length: { m: 0.1, basis: 'estimated' },
      width: { m: 2, basis: 'estimated' },
      height: { m: 0.4, basis: 'estimated' },
    });
  });

  it('stands a bar up where a body stood, as wide as seen from ahead and as high', () => {
    const { shape, placement: placed } = fittingOf(after(changeShapeKind(boat(), 'box', 'roundBar')), 'box');
    expect(shape).toMatchObject({ kind: 'roundBar', diameter: { m: 0.6, basis: 'estimated' } });
    expect(placed).toMatchObject({ start: { zM: 1.2 }, end: { xM: 0, yM: 0, zM: 1.7 } });
  });

  it('gives a measured area the handbook drag of what was there, with its range and a source', () => {
    const ofBody = fittingOf(after(changeShapeKind(boat(), 'box', 'measuredArea')), 'box').shape;
    expect(ofBody).toMatchObject({ dragAreaM2: { best: 0.315, low: 0.24, high: 0.39 } });
    const ofBar = fittingOf(after(changeShapeKind(boat(), 'stanchion', 'measuredArea')), 'stanchion').shape;
    // 1.2 x 0.03 m x 0.65 m
    expect(ofBar).toMatchObject({ dragAreaM2: { best: 0.0234 }, provenance: { kind: 'estimate' } });
    expect(ofBar.kind === 'measuredArea' && ofBar.provenance.source).toContain('round bar');
  });

  it('sizes a body and a bar so that the same coefficient gives the drag area back', () => {
    const area = after(changeShapeKind(boat(), 'box', 'measuredArea'));
    const body = fittingOf(after(changeShapeKind(area, 'box', 'bluffBody')), 'box').shape;
    expect(body).toMatchObject({ width: { m: Number(Math.sqrt(0.3).toFixed(6)) } });
    const bar = fittingOf(after(changeShapeKind(area, 'box', 'roundBar')), 'box');
    // 0.315 = 1.2 x diameter x 1 m
    expect(bar.shape).toMatchObject({ diameter: { m: 0.2625 } });
  });

  it('does nothing when it is of that kind already', () => {
    const project = boat();
    expect(after(changeShapeKind(project, 'box', 'bluffBody'))).toBe(project);
  });
});

describe('the other way of giving the wind', () => {
  it('is the same wind: the masthead reading, and back, to a part in a million', () => {
    const reading = after(changeWindKind(boat(), 'beat', 'instrument'));
    const now = reading.conditions[1];
    expect(now?.wind).toMatchObject({ kind: 'instrument', heightUpMastM: 18 });
    const summary = solveProjectCondition(reading, now ?? beat).summary;
    const before = solveProjectCondition(boat(), beat).summary;
    expect(summary.trueWindAt10Ms).toBeCloseTo(before.trueWindAt10Ms, 5);
    expect(summary.trueWindAngleRad).toBeCloseTo(before.trueWindAngleRad, 6);
    const back = after(changeWindKind(reading, 'beat', 'true')).conditions[1]?.wind;
    expect(back).toMatchObject({ kind: 'true', heightM: 10 });
    expect(back?.speedMs).toBeCloseTo(9, 4);
  });
});
