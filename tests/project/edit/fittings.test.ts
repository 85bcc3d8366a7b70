import { describe, expect, it } from 'vitest';
import { deleteFittings } from '../../../src/project/edit/deleteFittings';
import {
  addFitting,
  duplicateFittings,
  excludeFittings,
  includeFittings,
  patchFitting,
  setDutyInCondition,
} from '../../../src/project/edit/fittingEdits';
import { moveFittings, shiftFitting } from '../../../src/project/edit/orderFittings';
import { item, planOf, pole } from '../refit/support';
import { after, boat, done, fittingOf, idsOf } from './support';

describe('a fitting', () => {
  it('is added right after the one named, with an id that is free', () => {
    const answer = done(addFitting(boat(), { ...pole, name: 'New pole' }, 'thin'));
    const [id = ''] = answer.newIds ?? [];
    expect(idsOf(answer.project.fittings).slice(0, 4)).toEqual(['pole', 'thin', id, 'box']);
    expect(fittingOf(answer.project, id).name).toBe('New pole');
  });

  it('is added after the last of its zone when none is named', () => {
    const project = after(patchFitting(boat(), 'box', { zoneId: 'rig' }));
    const answer = done(addFitting(project, { ...pole, zoneId: 'rig' }));
    expect(idsOf(answer.project.fittings)[3]).toBe(answer.newIds?.[0]);
  });

  it('is copied to stand after the original, and copies of copies keep apart by name', () => {
    const once = done(duplicateFittings(boat(), ['pole', 'box']));
    expect(once.project.fittings.map(({ name }) => name).slice(0, 6)).toEqual([
      'Pole',
      'Pole, copy',
      'Thin tube',
      'Box',
      'Box, copy',
      'Stanchion',
    ]);
    const twice = after(duplicateFittings(once.project, [once.newIds?.[0] ?? '']));
    expect(twice.fittings[2]?.name).toBe('Pole, copy 2');
    expect(new Set(idsOf(twice.fittings)).size).toBe(twice.fittings.length);
  });

  it('copies a name of full length, and does not cut a character in two', () => {
    const name = `${'x'.repeat(192)}𝄞${'y'.repeat(6)}`;
    const project = after(patchFitting(boat(), 'pole', { name }));
    expect(after(duplicateFittings(project, ['pole'])).fittings[1]?.name).toBe(`${'x'.repeat(192)}𝄞, copy`);
    const split = after(patchFitting(boat(), 'pole', { name: `${'x'.repeat(193)}𝄞${'y'.repeat(5)}` }));
    expect(after(duplicateFittings(split, ['pole'])).fittings[1]?.name).toBe(`${'x'.repeat(193)}, copy`);
  });

  it('changes in one field and leaves everything else the very same', () => {
    const project = boat();
    const changed = after(
      patchFitting(project, 'pole', { shape: { kind: 'roundBar', diameter: { m: 0.05 } } }),
    );
    const pole2 = fittingOf(changed, 'pole');
    expect(pole2.shape).toMatchObject({ diameter: { m: 0.05, basis: 'measured' } });
    expect(pole2.placement).toBe(fittingOf(project, 'pole').placement);
    expect(changed.fittings.slice(1)).toEqual(project.fittings.slice(1));
    expect(changed.fittings.slice(1).every((fitting, i) => fitting === project.fittings[i + 1])).toBe(true);
    expect(changed.plans).toBe(project.plans);
  });

  it('set to what it was already is the very same project', () => {
    const project = boat();
    expect(after(patchFitting(project, 'pole', { name: 'Pole', exposure: { best: 1 } }))).toBe(project);
    expect(after(includeFittings(project, ['pole']))).toBe(project);
  });

  it('refuses a wrong value at its field, in the words of the file', () => {
    expect(patchFitting(boat(), 'box', { massKg: -1 })).toEqual({
      refused: {
        path: 'fittings[2].massKg',
        message: 'must be a number from 0 to 1000000; it is -1',
      },
    });
    expect(patchFitting(boat(), 'pole', { exposure: { low: 1.2 } })).toEqual({
      refused: { path: 'fittings[0].exposure.low', message: 'must not be above best (1); it is 1.2' },
    });
    expect(patchFitting(boat(), 'gone', { massKg: 1 })).toHaveProperty('refused.path', '');
  });

  it('replaces a part whose kind changes, and keeps no field of the old kind', () => {
    const rough = after(
      patchFitting(boat(), 'pole', {
        shape: { kind: 'roundBar', surface: { kind: 'roughness', roughnessM: 0.001 } },
      }),
    );
    const smooth = after(
      patchFitting(rough, 'pole', { shape: { kind: 'roundBar', surface: { kind: 'smooth' } } }),
    );
    expect(fittingOf(smooth, 'pole').shape).toEqual(pole.shape);
  });

  it('is left out with a reason, or with none yet, and taken in again', () => {
    const project = boat();
    const out = after(excludeFittings(project, ['pole', 'box'], 'part of the rig'));
    expect(fittingOf(out, 'box').excluded).toEqual({ reason: 'part of the rig' });
    expect(after(includeFittings(out, ['pole', 'box'])).fittings).toEqual(project.fittings);
    expect(fittingOf(after(excludeFittings(project, ['pole'], '')), 'pole').excluded).toEqual({ reason: '' });
  });

  it('has a duty of its own in a condition, until it is taken back', () => {
    const set = after(setDutyInCondition(boat(), 'pole', 'beat', 0.25));
    const again = after(setDutyInCondition(set, 'pole', 'beat', 0.5));
    expect(fittingOf(again, 'pole').dutyFraction.byCondition).toEqual([
      { conditionId: 'beat', fraction: 0.5 },
    ]);
    expect(fittingOf(after(setDutyInCondition(again, 'pole', 'beat', null)), 'pole').dutyFraction).toEqual(
      pole.dutyFraction,
    );
    expect(setDutyInCondition(boat(), 'pole', 'nowhere', 1)).toHaveProperty(
      'refused.path',
      'fittings[0].dutyFraction.byCondition[0].conditionId',
    );
  });
});

describe('the order of fittings', () => {
  it('moves several together to stand before another, in their own order', () => {
    const moved = after(moveFittings(boat(), ['stanchion', 'pole'], 'deck', 'hidden'));
    expect(idsOf(moved.fittings)).toEqual(['thin', 'box', 'pole', 'stanchion', 'hidden', 'left-out']);
  });

  it('moves into another zone, after its last', () => {
    const first = after(moveFittings(boat(), ['box'], 'rig', null));
    const second = after(moveFittings(first, ['pole'], 'rig', null));
    expect(second.fittings.filter(({ zoneId }) => zoneId === 'rig').map(({ id }) => id)).toEqual([
      'box',
      'pole',
    ]);
  });

  it('stays when moved to where it is', () => {
    const project = boat();
    expect(after(moveFittings(project, ['thin'], 'deck', 'thin'))).toBe(project);
    expect(after(moveFittings(project, ['thin'], 'deck', 'box'))).toBe(project);
  });

  it('steps up and down within a zone, and over its edge into the next', () => {
    expect(idsOf(after(shiftFitting(boat(), 'thin', -1)).fittings).slice(0, 2)).toEqual(['thin', 'pole']);
    expect(idsOf(after(shiftFitting(boat(), 'pole', 1)).fittings).slice(0, 2)).toEqual(['thin', 'pole']);
    const over = after(shiftFitting(boat(), 'left-out', 1));
    expect(fittingOf(over, 'left-out').zoneId).toBe('rig');
    const back = after(shiftFitting(over, 'left-out', -1));
    expect(back.fittings).toEqual(boat().fittings);
    const project = boat();
    expect(after(shiftFitting(project, 'pole', -1))).toBe(project);
  });
});

describe('deleting fittings', () => {
  it('takes along the items about them and the items with their shape, and says so', () => {
    const plan = planOf(
      item('a', 'box', { kind: 'removed' }),
      item('b', 'pole', { kind: 'shapeOf', fittingId: 'box' }),
      item('c', 'pole', { kind: 'stowed', stowed: null }),
    );
    const { project, message } = done(deleteFittings(boat({ plans: [plan] }), ['box']));
    expect(idsOf(project.plans[0]?.items ?? [])).toEqual(['c']);
    expect(fittingOf(project, 'hidden').shelteredByFittingId).toBeNull();
    expect(message).toBe(
      'Deleted with it: 1 refit item about what was deleted, 1 refit item that took its shape. ' +
        'No longer sheltered by it: 1 fitting; the exposure stays as typed, so look at it again.',
    );
  });

  it('takes the shelter from items that named it', () => {
    const { exposure } = pole;
    const shelter = {
      kind: 'sheltered',
      exposure,
      exposureLeeward: null,
      shelteredByFittingId: 'thin',
    } as const;
    const plan = planOf(item('a', 'pole', shelter));
    const { project, message } = done(deleteFittings(boat({ plans: [plan] }), ['thin']));
    expect(project.plans[0]?.items[0]?.change).toEqual({ ...shelter, shelteredByFittingId: null });
    expect(message).toContain('1 refit item;');
  });

  it('says nothing and leaves the plans alone when nothing names them', () => {
    const project = boat();
    const answer = done(deleteFittings(project, ['thin', 'left-out']));
    expect(answer.message).toBeUndefined();
    expect(answer.project.plans).toBe(project.plans);
    expect(answer.project.fittings).toHaveLength(4);
  });
});
