import { describe, expect, it } from 'vitest';
import { between, point } from '../../../src/project/file/blankParts';
import type { ItemChange } from '../../../src/project/file/schema';
import { isWithheld } from '../../../src/project/refit/applyPlan';
import { applied, box, item, pole, reason, removed, slim, statuses, stowedAway, thin } from './support';

const retracted: ItemChange = {
  kind: 'retracted',
  dutyFraction: { default: 0.2, byCondition: [{ conditionId: 'reach', fraction: 0.1 }] },
  stowed: null,
};
const moved: ItemChange = { kind: 'moved', placement: between(point(1, -1, 1.5), point(1, 1, 1.9)) };
const likeThin: ItemChange = { kind: 'shapeOf', fittingId: 'thin' };
const sheltered: ItemChange = {
  kind: 'sheltered',
  exposure: { best: 0.4, low: 0.3, high: 0.6, source: 'a screen' },
  exposureLeeward: null,
  shelteredByFittingId: null,
};
const typed: ItemChange = { kind: 'typed', shape: box.shape, source: 'a sketch' };

describe('an item changes its own part and no other', () => {
  it.each([
    [
      'slimmer: the diameter',
      slim(0.05),
      { shape: { ...pole.shape, diameter: { m: 0.05, basis: 'measured' } } },
    ],
    ['another fitting’s shape: the shape', likeThin, { shape: thin.shape }],
    ['typed: the shape', typed, { shape: box.shape }],
    [
      'retracted: duty and stowed state',
      retracted,
      {
        dutyFraction: { default: 0.2, byCondition: [{ conditionId: 'reach', fraction: 0.1 }] },
        stowed: null,
      },
    ],
    ['stowed: never deployed', stowedAway, { dutyFraction: { default: 0, byCondition: [] }, stowed: null }],
    ['moved: the placement', moved, { placement: between(point(1, -1, 1.5), point(1, 1, 1.9)) }],
    [
      'sheltered: the exposure and what gives it',
      sheltered,
      {
        exposure: { best: 0.4, low: 0.3, high: 0.6, source: 'a screen' },
        exposureLeeward: null,
        shelteredByFittingId: null,
      },
    ],
  ] as const)('%s', (_what, change, expected) => {
    const { after } = applied(item('a', 'pole', change));
    expect(after.get('pole')?.fitting).toEqual({ ...pole, ...expected });
    expect(after.get('thin')?.fitting).toBe(thin);
  });

  it('removed: nothing is left of it in the wind', () => {
    expect(applied(item('a', 'pole', removed)).after.get('pole')?.gone).toBe('removed');
  });

  it('a part that an item brought has a doubt of its own, a part it left keeps its doubt', () => {
    const after = applied(item('a', 'pole', slim(0.05))).after.get('pole');
    expect(after?.owners).toEqual({
      size: 'plan/a',
      coefficient: 'pole',
      placement: 'pole',
      length: 'pole',
      exposure: 'pole',
      stowed: 'pole',
    });
    const like = applied(item('a', 'pole', likeThin)).after.get('pole');
    expect(like?.owners).toMatchObject({ size: 'thin', coefficient: 'thin', placement: 'pole' });
  });
});

describe('a row of bars', () => {
  it('cannot be moved to where its last member has no length', () => {
    const placement = {
      kind: 'endPoints' as const,
      start: point(1, -1, 1.5),
      end: point(1, 1, 1.9),
      basis: 'measured' as const,
      pair: false,
      row: { count: 2, lastStart: point(0, 0, 1.5), lastEnd: point(0, 0, 1.5) },
    };
    const { steps } = applied(item('a', 'pole', { kind: 'moved', placement }));
    expect(steps[0]?.status).toBe('contradiction');
    expect(steps[0]?.contradiction?.message).toBe('A bar needs a length.');
  });
});

describe('the order of a plan', () => {
  it('matters: an item acts on the result of the ones before', () => {
    const slimFirst = applied(item('a', 'thin', slim(0.02)), item('b', 'pole', likeThin));
    const likeFirst = applied(item('b', 'pole', likeThin), item('a', 'thin', slim(0.02)));
    expect(slimFirst.after.get('pole')?.fitting.shape).toMatchObject({ diameter: { m: 0.02 } });
    expect(likeFirst.after.get('pole')?.fitting.shape).toMatchObject({ diameter: { m: 0.03 } });
  });

  it('turns a good item into a contradiction', () => {
    const good = applied(item('a', 'pole', slim(0.07)), item('b', 'pole', slim(0.05)));
    const bad = applied(item('b', 'pole', slim(0.05)), item('a', 'pole', slim(0.07)));
    expect(statuses(good)).toEqual(['counted', 'counted']);
    expect(statuses(bad)).toEqual(['counted', 'contradiction']);
  });

  it('does not touch what an item does alone', () => {
    const plan = applied(item('a', 'pole', slim(0.07)), item('b', 'pole', slim(0.05)));
    const [, second] = plan.steps;
    expect(second?.before?.fitting.shape).toMatchObject({ diameter: { m: 0.07 } });
    expect(second?.aloneBefore?.fitting).toBe(pole);
    expect(second?.aloneAfter?.fitting.shape).toMatchObject({ diameter: { m: 0.05 } });
  });
});

describe('a fitting that safety requires', () => {
  it.each([
    ['removed', removed],
    ['retracted', retracted],
    ['stowed', stowedAway],
    ['slimmed', slim(0.02)],
    ['sheltered', sheltered],
    ['shaped like another', { kind: 'shapeOf', fittingId: 'pole' }],
    ['typed anew', { kind: 'typed', shape: thin.shape, source: '' }],
  ] as const)('when %s is withheld until a person gave a reason, and counts after', (_what, change) => {
    const without = applied(item('a', 'stanchion', change));
    expect(statuses(without)).toEqual(['withheld']);
    expect(without.after.get('stanchion')?.gone).toBeNull();
    expect(without.steps[0]?.after).not.toBeNull();
    const given = applied(item('a', 'stanchion', change, { safetyReason: reason }));
    expect(statuses(given)).toEqual(['counted']);
    expect(given.after.get('stanchion')).toBe(given.steps[0]?.after);
  });

  it('counts when it is moved, for it still stands', () => {
    expect(statuses(applied(item('a', 'stanchion', moved)))).toEqual(['counted']);
  });

  it('is as it was for the items after a withheld one', () => {
    const plan = applied(item('a', 'stanchion', removed), item('b', 'stanchion', moved));
    expect(statuses(plan)).toEqual(['withheld', 'counted']);
    expect(plan.after.get('stanchion')?.gone).toBeNull();
  });

  it('keeps its guard through earlier items', () => {
    const plan = applied(item('a', 'stanchion', moved), item('b', 'stanchion', removed));
    expect(statuses(plan)).toEqual(['counted', 'withheld']);
  });

  it('and no other fitting needs a reason', () => {
    expect(isWithheld(item('a', 'pole', removed), false)).toBe(false);
    expect(isWithheld(item('a', 'stanchion', removed), true)).toBe(true);
  });
});

describe('an item that is off', () => {
  it('is kept and does nothing', () => {
    const plan = applied(item('a', 'pole', removed, { on: false }));
    expect(statuses(plan)).toEqual(['off']);
    expect(plan.after.get('pole')?.fitting).toBe(pole);
    expect(plan.after.get('pole')?.gone).toBeNull();
  });
});

describe('an item that is applied again', () => {
  const slimmed = item('slim', 'pole', slim(0.05));

  it('gives the same state object as long as neither it nor the fitting changed, so that the row is known', () => {
    expect(applied(slimmed).after.get('pole')).toBe(applied(slimmed).after.get('pole'));
  });

  it('gives a new one when it, its plan or the fitting it looks at changed', () => {
    const before = applied(slimmed).after.get('pole');
    expect(applied({ ...slimmed }).after.get('pole')).not.toBe(before);
    const like = item('like', 'pole', likeThin);
    const slimmerThin = item('thinner', 'thin', slim(0.01));
    const likeThinNow = applied(like).after.get('pole');
    const likeThinner = applied(slimmerThin, like).after.get('pole');
    expect(likeThinNow?.fitting.shape).toEqual(thin.shape);
    expect(likeThinner?.fitting.shape).toMatchObject({ diameter: { m: 0.01 } });
    expect(applied(like).after.get('pole')?.fitting.shape).toEqual(thin.shape);
  });
});
