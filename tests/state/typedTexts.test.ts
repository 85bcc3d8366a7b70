import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { deleteFittings } from '../../src/project/edit/deleteFittings';
import { patchFitting } from '../../src/project/edit/fittingEdits';
import { useAppStore } from '../../src/state/appStore';
import {
  dropTyped,
  keepTyped,
  ownedTexts,
  ownerOf,
  restIn,
  showField,
  typeIn,
  useTypedTexts,
} from '../../src/state/typedTexts';

const demo = readFileSync(new URL('../../demo-data/quillamoor.windtoll.json', import.meta.url), 'utf8');

function openDemo(): void {
  useAppStore.getState().openText('demo.json', demo, 'demo');
}

function project() {
  const open = useAppStore.getState().project;
  if (open === null) throw new Error('Nothing is open.');
  return open;
}

const half = { text: '12 qu', label: 'Diameter', refusal: null };

function pathOfFirst(): string {
  return `fitting/${project().fittings[0]?.id ?? ''}.shape.diameter`;
}

beforeEach(openDemo);

describe('half-typed text', () => {
  it('outlives undo and redo', () => {
    const id = project().fittings[0]?.id ?? '';
    useAppStore.getState().edit('Rename', (before) => patchFitting(before, id, { name: 'Other' }));
    keepTyped(pathOfFirst(), half);
    useAppStore.getState().undo();
    expect(useTypedTexts.getState().texts.get(pathOfFirst())).toEqual(half);
    useAppStore.getState().redo();
    expect(useTypedTexts.getState().texts.get(pathOfFirst())).toEqual(half);
  });

  it('does not come along into another project', () => {
    keepTyped(pathOfFirst(), half);
    openDemo();
    expect(useTypedTexts.getState().texts.size).toBe(0);
  });

  it('comes with the project that it was kept with', () => {
    const typed = new Map([[pathOfFirst(), half]]);
    const header = { id: 'a', name: 'Tern', savedAt: '2026-03-01T09:05:00Z', revision: 1, tab: 't' };
    useAppStore
      .getState()
      .openStored({ header, text: demo, project: project(), reading: null, typed, isSaved: true });
    expect(useTypedTexts.getState().texts).toBe(typed);
    expect(useTypedTexts.getState().elsewhere).toEqual([pathOfFirst()]);
  });

  it('waits elsewhere while its field is not on the page, however often it stood there', () => {
    const path = pathOfFirst();
    keepTyped(path, half);
    expect(useTypedTexts.getState().elsewhere).toEqual([path]);
    const hideOne = showField(path);
    const hideOther = showField(path);
    expect(useTypedTexts.getState().elsewhere).toEqual([]);
    hideOne();
    expect(useTypedTexts.getState().elsewhere).toEqual([]);
    hideOther();
    expect(useTypedTexts.getState().elsewhere).toEqual([path]);
    dropTyped(path);
    expect(useTypedTexts.getState().elsewhere).toEqual([]);
  });

  it('knows where somebody is typing until they rest there', () => {
    typeIn('fitting/f1.name');
    restIn('fitting/f2.name');
    expect(useTypedTexts.getState().typingIn).toBe('fitting/f1.name');
    restIn('fitting/f1.name');
    expect(useTypedTexts.getState().typingIn).toBeNull();
  });
});

describe('the owner of a text', () => {
  it('is found for every kind of place', () => {
    const { fittings, zones, conditions, plans } = project();
    const plan = plans[0];
    const item = plan?.items[0];
    const names = [
      `fitting/${fittings[0]?.id ?? ''}.name`,
      `zone/${zones[0]?.id ?? ''}.name`,
      `condition/${conditions[0]?.id ?? ''}.true.wind.speedMs`,
      `plan/${plan?.id ?? ''}.note`,
      `plan/${plan?.id ?? ''}/${item?.id ?? ''}.change.diameter`,
      'condition/profile.name',
      'methods/windLaw.charnock',
    ].map((path) => ownerOf(project(), path));
    expect(names).toEqual([
      { kind: 'fitting', id: fittings[0]?.id, name: fittings[0]?.name },
      { kind: 'zone', id: zones[0]?.id, name: zones[0]?.name },
      { kind: 'condition', id: conditions[0]?.id, name: conditions[0]?.name },
      { kind: 'plan', id: plan?.id, name: plan?.name },
      { kind: 'item', id: item?.id, planId: plan?.id, name: item?.name },
      { kind: 'course' },
      { kind: 'methods' },
    ]);
  });

  it('is nobody for what the project does not have', () => {
    const paths = [
      'fitting/none.name',
      'plan/none/none.name',
      'elsewhere/f1.name',
      '',
      'fitting',
      '__proto__/x.y',
    ];
    expect(paths.map((path) => ownerOf(project(), path))).toEqual(paths.map(() => null));
  });

  it('takes the text along when it is deleted, and brings it back when that is undone', () => {
    const path = pathOfFirst();
    const id = project().fittings[0]?.id ?? '';
    keepTyped(path, half);
    const { texts } = useTypedTexts.getState();
    expect(ownedTexts(texts, project())).toBe(texts);
    useAppStore.getState().edit('Delete', (before) => deleteFittings(before, [id]));
    expect(ownedTexts(texts, project()).size).toBe(0);
    useAppStore.getState().undo();
    expect(ownedTexts(texts, project()).size).toBe(1);
  });
});
