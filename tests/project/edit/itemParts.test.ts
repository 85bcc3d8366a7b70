import { describe, expect, it } from 'vitest';
import { deckLineOf, membersOf } from '../../../src/project/core/fittingToPhysics';
import {
  changeItemFitting,
  changeItemPlacementKind,
  changeItemShapeKind,
  setItemDutyInCondition,
  setItemRowCount,
} from '../../../src/project/edit/itemPartEdits';
import { point } from '../../../src/project/file/blankParts';
import type { Project, RefitItem } from '../../../src/project/file/schema';
import { box, item, planOf, pole } from '../refit/support';
import { after, boat, done } from './support';

/** A plan of one item about the pole, or of several. */
function withItems(...items: readonly RefitItem[]): { readonly project: Project; readonly planId: string } {
  const plan = planOf(...items);
  return { project: boat({ plans: [plan] }), planId: plan.id };
}

function itemOf(project: Project, index = 0): RefitItem {
  const found = project.plans[0]?.items[index];
  if (found === undefined) throw new Error('no such item');
  return found;
}

const moved = item('move', 'pole', { kind: 'moved', placement: pole.placement });

describe('where an item moves its fitting to', () => {
  it('is said in the other way at the same place', () => {
    const { project, planId } = withItems(moved);
    const taped = after(changeItemPlacementKind(project, planId, 'move', 'taped'));
    const { change } = itemOf(taped);
    if (change.kind !== 'moved') throw new Error('another change');
    expect(change.placement.kind).toBe('taped');
    const line = deckLineOf(project.boat);
    const [now, then] = [change.placement, pole.placement].map((each) => membersOf(each, line)[0]);
    [0, 1, 2].forEach((axis) => {
      expect(now?.end[axis]).toBeCloseTo(then?.end[axis] ?? NaN, 4);
    });
  });

  it('becomes a row, which says where to look, and one again', () => {
    const { project, planId } = withItems(moved);
    const { project: four, message } = done(setItemRowCount(project, planId, 'move', 4));
    expect(itemOf(four)).toMatchObject({ change: { placement: { row: { count: 4 } } } });
    expect(message).toMatch(/say where its last one stands\.$/);
    expect(after(setItemRowCount(four, planId, 'move', 1)).plans).toEqual(project.plans);
  });

  it('is refused at an item that does something else', () => {
    const { project, planId } = withItems(item('off', 'pole', { kind: 'removed' }));
    expect(setItemRowCount(project, planId, 'off', 4)).toHaveProperty('refused');
    expect(setItemRowCount(project, planId, 'nobody', 4)).toHaveProperty('refused');
  });
});

describe('the shape that an item gives', () => {
  it('carries its sizes over from where the plan has put the fitting by then', () => {
    const turned = { ...pole.placement, start: point(0, 0, 1.5), end: point(0, 0, 4.5) };
    const typed = item('shape', 'pole', { kind: 'typed', shape: pole.shape, source: 'the yard' });
    const { project, planId } = withItems(
      item('move', 'pole', { kind: 'moved', placement: turned as typeof pole.placement }),
      typed,
    );
    const { project: next, message } = done(changeItemShapeKind(project, planId, 'shape', 'bluffBody'));
    expect(itemOf(next, 1).change).toMatchObject({
      shape: { kind: 'bluffBody', height: { m: 3, basis: 'estimated' }, width: { m: 0.1 } },
      source: 'the yard',
    });
    expect(message).toMatch(/look at them again/);
  });
});

describe('the share of a condition', () => {
  it('is set and taken back, and the others stay', () => {
    const dutyFraction = { default: 0.5, byCondition: [{ conditionId: 'reach', fraction: 0.1 }] };
    const { project, planId } = withItems(
      item('in', 'pole', { kind: 'retracted', dutyFraction, stowed: null }),
    );
    const set = after(setItemDutyInCondition(project, planId, 'in', 'beat', 0.25));
    expect(itemOf(set)).toMatchObject({
      change: {
        dutyFraction: {
          byCondition: [
            { conditionId: 'reach', fraction: 0.1 },
            { conditionId: 'beat', fraction: 0.25 },
          ],
        },
      },
    });
    expect(after(setItemDutyInCondition(set, planId, 'in', 'beat', null)).plans).toEqual(project.plans);
  });
});

describe('the fitting that an item is about', () => {
  const safetyReason = { person: 'B. Person', reason: 'holds as much' };

  it('starts the change anew, without the reason given for the old one, and says so', () => {
    const { project, planId } = withItems({ ...moved, name: 'Pole: moved', safetyReason });
    const { project: next, message } = done(changeItemFitting(project, planId, 'move', 'box'));
    expect(itemOf(next)).toMatchObject({
      name: 'Box: moved',
      fittingId: 'box',
      change: { kind: 'moved', placement: box.placement },
      safetyReason: null,
    });
    expect(message).toMatch(/starts anew from Box; .*The reason given for Pole is taken back\.$/);
  });

  it('keeps a name that somebody typed, and refuses what the other fitting cannot be', () => {
    const slimmer = item('slim', 'pole', {
      kind: 'slimmer',
      diameter: { m: 0.05, basis: 'estimated' },
    });
    const { project, planId } = withItems({ ...moved, name: 'Our idea' }, slimmer);
    expect(itemOf(after(changeItemFitting(project, planId, 'move', 'box'))).name).toBe('Our idea');
    expect(changeItemFitting(project, planId, 'slim', 'box')).toHaveProperty(
      'refused.message',
      'Box is no round bar or wire and has no diameter',
    );
  });
});
