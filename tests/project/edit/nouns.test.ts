import { describe, expect, it } from 'vitest';
import * as conditions from '../../../src/project/edit/conditionEdits';
import { setDutyInCondition } from '../../../src/project/edit/fittingEdits';
import * as items from '../../../src/project/edit/itemEdits';
import { beforeAfterStep, neighbourId } from '../../../src/project/edit/lists';
import * as plans from '../../../src/project/edit/planEdits';
import * as profile from '../../../src/project/edit/profileEdits';
import * as whole from '../../../src/project/edit/projectEdits';
import * as zones from '../../../src/project/edit/zoneEdits';
import type { ItemChange, RefitItem } from '../../../src/project/file/schema';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import { item, planOf, reach, slim } from '../refit/support';
import { after, boat, done, emptyPlan, fittingOf, idsOf } from './support';

describe('zones', () => {
  it('are added, named, moved, and deleted when empty', () => {
    const added = done(zones.addZone(boat(), 'Stern', 'deck'));
    const [id = ''] = added.newIds ?? [];
    expect(idsOf(added.project.zones)).toEqual(['deck', id, 'rig']);
    expect(idsOf(after(zones.moveZone(added.project, id, null)).zones)).toEqual(['deck', 'rig', id]);
    expect(after(zones.renameZone(added.project, id, 'Aft')).zones[1]?.name).toBe('Aft');
    expect(after(zones.deleteZone(added.project, id))).toEqual(boat());
  });

  it('stay while they hold something, and one stays anyway', () => {
    expect(zones.deleteZone(boat(), 'deck')).toEqual({
      refused: { path: 'zones[0]', message: 'holds 6 fittings; move or delete what it holds first' },
    });
    const bare = boat({ fittings: [], plans: [], zones: [{ id: 'deck', name: 'Deck' }] });
    expect(zones.deleteZone(bare, 'deck')).toHaveProperty('refused.path', 'zones[0]');
    expect(zones.renameZone(boat(), 'rig', '')).toEqual({
      refused: { path: 'zones[1].name', message: 'must not be empty' },
    });
  });
});

describe('a zone that holds something', () => {
  it('goes once it is said where its fittings stand, in their order, and says how many moved', () => {
    const { project, message } = done(zones.deleteZoneInto(boat(), 'deck', 'rig'));
    expect(idsOf(project.zones)).toEqual(['rig']);
    expect(idsOf(project.fittings)).toEqual(idsOf(boat().fittings));
    expect(new Set(project.fittings.map(({ zoneId }) => zoneId))).toEqual(new Set(['rig']));
    expect(message).toBe('Moved to Rig: 6 fittings.');
  });

  it('does not go into itself or into one that is not there', () => {
    for (const into of ['deck', 'nowhere']) {
      expect(zones.deleteZoneInto(boat(), 'deck', into)).toHaveProperty('refused');
    }
  });
});

describe('a step in a list', () => {
  const list = [{ id: 'a' }, { id: 'b' }, { id: 'c' }];

  it('leads before the one above or the one after the next, to the end, and not beyond', () => {
    expect(beforeAfterStep(list, 'b', -1)).toBe('a');
    expect(beforeAfterStep(list, 'a', 1)).toBe('c');
    expect(beforeAfterStep(list, 'b', 1)).toBeNull();
    expect(beforeAfterStep(list, 'a', -1)).toBeUndefined();
    expect(beforeAfterStep(list, 'c', 1)).toBeUndefined();
    expect(beforeAfterStep(list, 'nobody', 1)).toBeUndefined();
  });

  it('has the next for a neighbour, else the one before', () => {
    expect(neighbourId(list, 'a')).toBe('b');
    expect(neighbourId(list, 'c')).toBe('b');
    expect(neighbourId(list.slice(0, 1), 'a')).toBeNull();
  });
});

describe('conditions', () => {
  it('are added ready to calculate', () => {
    const { project, newIds } = done(
      conditions.addCondition(boat(), conditions.plainCondition(boat()), 'reach'),
    );
    const conditionId = newIds?.[0] ?? '';
    expect(project.conditions[1]).toMatchObject({ id: conditionId, name: 'Condition' });
    const question = {
      basis: { kind: 'condition', conditionId },
      planId: null,
      againstPlanId: null,
    } as const;
    expect(projectLedger(project, question).ok).toBe(true);
    expect(conditions.plainCondition(project).name).toBe('Condition 2');
  });

  it('are copied with the duties that fittings have in them', () => {
    const project = after(setDutyInCondition(boat(), 'pole', 'reach', 0.25));
    const copied = done(conditions.duplicateCondition(project, 'reach'));
    const [id = ''] = copied.newIds ?? [];
    expect(copied.project.conditions[1]).toEqual({ ...reach, id, name: 'Reach, copy' });
    expect(fittingOf(copied.project, 'pole').dutyFraction.byCondition).toEqual([
      { conditionId: 'reach', fraction: 0.25 },
      { conditionId: id, fraction: 0.25 },
    ]);
    expect(copied.project.profile).toBe(project.profile);
  });

  it('go with their hours and the duties that name them, and say so', () => {
    const retracted: ItemChange = {
      kind: 'retracted',
      dutyFraction: { default: 0, byCondition: [{ conditionId: 'beat', fraction: 1 }] },
      stowed: null,
    };
    const start = boat({ plans: [planOf(item('r', 'pole', retracted))] });
    const { project, message } = done(
      conditions.deleteCondition(after(setDutyInCondition(start, 'box', 'beat', 0.5)), 'beat'),
    );
    expect(project.profile?.entries).toEqual([{ conditionId: 'reach', hours: 2 }]);
    expect(fittingOf(project, 'box').dutyFraction.byCondition).toEqual([]);
    expect(project.plans[0]?.items[0]?.change).toMatchObject({ dutyFraction: { byCondition: [] } });
    expect(message).toBe('Deleted with it: its hours in the course profile, 2 duties given for it.');
  });

  it('keep at least one', () => {
    const one = after(conditions.deleteCondition(boat(), 'beat'));
    expect(conditions.deleteCondition(one, 'reach')).toHaveProperty('refused.path', 'conditions[0]');
  });

  it('refuse a wrong wind at its field', () => {
    expect(conditions.patchCondition(boat(), 'beat', { wind: { kind: 'true', speedMs: 61 } })).toEqual({
      refused: { path: 'conditions[1].wind.speedMs', message: 'must be a number from 0 to 60; it is 61' },
    });
    const turned = after(
      conditions.patchCondition(boat(), 'beat', { tack: 'port', air: { temperatureC: 30 } }),
    );
    expect(turned.conditions[1]).toMatchObject({
      tack: 'port',
      air: { temperatureC: 30, pressurePa: 101_325 },
    });
    expect(turned.conditions[0]).toBe(boat().conditions[0]);
    expect(idsOf(after(conditions.moveCondition(boat(), 'beat', 'reach')).conditions)).toEqual([
      'beat',
      'reach',
    ]);
  });
});

describe('the course profile', () => {
  it('comes with the first hours and goes with the last', () => {
    const none = after(profile.deleteProfile(boat()));
    expect(none.profile).toBeNull();
    const begun = after(profile.setHours(none, 'beat', 4));
    expect(begun.profile?.entries).toEqual([{ conditionId: 'beat', hours: 4 }]);
    const gone = done(profile.removeFromProfile(begun, 'beat'));
    expect(gone.project.profile).toBeNull();
    expect(gone.message).toBe('The course profile went with its last hours.');
  });

  it('sets hours, and refuses none at all', () => {
    const project = after(profile.setHours(boat(), 'reach', 5));
    expect(project.profile?.entries[0]?.hours).toBe(5);
    const zero = after(profile.setHours(project, 'reach', 0));
    expect(profile.setHours(zero, 'beat', 0)).toHaveProperty('refused.path', 'profile.entries');
    expect(after(profile.renameProfile(project, 'Short course')).profile?.name).toBe('Short course');
    expect(profile.renameProfile(after(profile.deleteProfile(project)), 'x')).toHaveProperty('refused');
  });
});

describe('plans', () => {
  it('are added, copied with items of their own, named, moved and deleted', () => {
    const added = done(plans.addPlan(boat()));
    expect(added.project.plans[1]).toMatchObject({ name: 'Plan 2', items: [] });
    const copied = after(plans.duplicatePlan(boat(), 'plan'));
    expect(copied.plans.map(({ name }) => name)).toEqual(['Plan', 'Plan, copy']);
    expect(copied.plans[1]?.items[0]).toMatchObject({ fittingId: 'box', change: { kind: 'removed' } });
    expect(copied.plans[1]?.items[0]?.id).not.toBe(copied.plans[0]?.items[0]?.id);
    const copyId = copied.plans[1]?.id ?? '';
    expect(idsOf(after(plans.movePlan(copied, copyId, 'plan')).plans)).toEqual([copyId, 'plan']);
    expect(after(plans.deletePlan(copied, copyId))).toEqual(boat());
    expect(after(plans.patchPlan(boat(), 'plan', { note: 'for spring' })).plans[0]?.note).toBe('for spring');
  });
});

const kinds: readonly ItemChange['kind'][] = [
  'slimmer',
  'shapeOf',
  'retracted',
  'stowed',
  'removed',
  'moved',
  'sheltered',
  'typed',
];

function itemsAfter(kind: ItemChange['kind']): readonly RefitItem[] {
  return after(items.addItem(boat({ plans: [emptyPlan] }), 'empty', 'pole', kind)).plans[0]?.items ?? [];
}

describe('refit items', () => {
  it.each(kinds)('of the kind %s start as something that counts', (kind) => {
    const project = after(items.addItem(boat({ plans: [emptyPlan] }), 'empty', 'pole', kind));
    const basis = { kind: 'condition', conditionId: 'reach' } as const;
    const answer = projectLedger(project, { basis, planId: 'empty', againstPlanId: null });
    expect(answer.ok && answer.ledger.plan?.items.map(({ status }) => status)).toEqual(['counted']);
    expect(itemsAfter(kind)[0]).toMatchObject({ fittingId: 'pole', on: true, cost: 0 });
  });

  it('slim what earlier items have left, so that the second is slimmer still', () => {
    const once = after(items.addItem(boat({ plans: [emptyPlan] }), 'empty', 'pole', 'slimmer'));
    const twice = after(items.addItem(once, 'empty', 'pole', 'slimmer'));
    const diameters = twice.plans[0]?.items.map(
      ({ change }) => change.kind === 'slimmer' && change.diameter.m,
    );
    expect(diameters?.[0]).toBeCloseTo(0.08, 9);
    expect(diameters?.[1]).toBeCloseTo(0.064, 9);
  });

  it('cannot slim what has no diameter, and say so at the change', () => {
    expect(items.addItem(boat(), 'plan', 'box', 'slimmer')).toEqual({
      refused: {
        path: 'plans[0].items[1].change',
        message: 'Box is no round bar or wire and has no diameter',
      },
    });
    expect(items.changeItemKind(boat(), 'plan', 'box-off', 'slimmer')).toHaveProperty(
      'refused.path',
      'plans[0].items[0].change.kind',
    );
  });

  it('change kind, and their name follows unless somebody typed another', () => {
    const start = after(items.addItem(boat(), 'plan', 'pole', 'removed'));
    const [, added] = start.plans[0]?.items ?? [];
    expect(added?.name).toBe('Pole: removed');
    const stowed = after(items.changeItemKind(start, 'plan', added?.id ?? '', 'stowed'));
    expect(stowed.plans[0]?.items[1]).toMatchObject({ name: 'Pole: stowed', change: { kind: 'stowed' } });
    const named = after(items.patchItem(stowed, 'plan', added?.id ?? '', { name: 'Pole below' }));
    const again = after(items.changeItemKind(named, 'plan', added?.id ?? '', 'moved'));
    expect(again.plans[0]?.items[1]?.name).toBe('Pole below');
  });

  it('are switched, priced, answered for, copied switched off, ordered and deleted', () => {
    const project = boat({
      plans: [planOf(item('a', 'pole', slim(0.05)), item('b', 'stanchion', slim(0.02)))],
    });
    expect(after(items.switchItem(project, 'plan', 'a', false)).plans[0]?.items[0]?.on).toBe(false);
    const priced = after(
      items.patchItem(project, 'plan', 'a', { cost: 900, massPlace: { xM: 1, yM: 0, zM: 2 } }),
    );
    expect(priced.plans[0]?.items[0]).toMatchObject({ cost: 900, massPlace: { zM: 2 } });
    expect(priced.plans[0]?.items[1]).toBe(project.plans[0]?.items[1]);
    const safetyReason = { person: 'B. Person', reason: 'holds as much' };
    expect(
      after(items.setSafetyReason(project, 'plan', 'b', safetyReason)).plans[0]?.items[1]?.safetyReason,
    ).toEqual(safetyReason);
    const copy = after(items.duplicateItem(project, 'plan', 'a')).plans[0]?.items[1];
    expect(copy).toMatchObject({ name: 'a, copy', on: false, fittingId: 'pole' });
    expect(idsOf(after(items.moveItem(project, 'plan', 'b', 'a')).plans[0]?.items ?? [])).toEqual(['b', 'a']);
    expect(idsOf(after(items.deleteItems(project, 'plan', ['a'])).plans[0]?.items ?? [])).toEqual(['b']);
    expect(items.patchItem(project, 'plan', 'a', { change: slim(0) })).toHaveProperty(
      'refused.path',
      'plans[0].items[0].change.diameter.m',
    );
  });
});

describe('the project as a whole', () => {
  it('changes its name, currency, boat, methods and sources', () => {
    expect(after(whole.patchProject(boat(), { currency: 'EUR' })).currency).toBe('EUR');
    const longer = after(whole.patchBoat(boat(), { mast: { topAboveWaterplaneM: 19 } }));
    expect(longer.boat.mast).toEqual({ aftOfStemM: 5, topAboveWaterplaneM: 19 });
    const uniform = after(whole.patchMethods(boat(), { windLaw: { kind: 'uniform' } }));
    expect(uniform.methods).toEqual({ ...boat().methods, windLaw: { kind: 'uniform' } });
    const sourced = done(whole.addSource(boat(), 'a tape'));
    const [id = ''] = sourced.newIds ?? [];
    expect(after(whole.setSourceText(sourced.project, id, 'a rule')).sources).toEqual([
      { id, text: 'a rule' },
    ]);
    expect(after(whole.deleteSource(sourced.project, id))).toEqual(boat());
  });

  it('takes a deck station in its place and refuses one that goes back', () => {
    const station = { aftOfStemM: 3, freeboardM: 1.3, halfBeamM: 1.2 };
    const added = after(whole.addDeckStation(boat(), station));
    expect(added.boat.deckLine.map(({ aftOfStemM }) => aftOfStemM)).toEqual([0, 3, 6, 12]);
    expect(after(whole.deleteDeckStation(added, 1))).toEqual(boat());
    expect(whole.patchDeckStation(added, 1, { aftOfStemM: 7 })).toHaveProperty(
      'refused.path',
      'boat.deckLine[2].aftOfStemM',
    );
    expect(whole.deleteDeckStation(boat(), 0)).toHaveProperty('refused.path', 'boat.deckLine');
  });
});
