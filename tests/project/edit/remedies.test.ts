import { describe, expect, it } from 'vitest';
import { changeShapeKind } from '../../../src/project/edit/changeShapeKind';
import { addItem } from '../../../src/project/edit/itemEdits';
import { changeItemFitting } from '../../../src/project/edit/itemPartEdits';
import type { Project, ProjectShape, RefitItem } from '../../../src/project/file/schema';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import type { ItemStart } from '../../../src/project/wording/itemText';
import { after, boat, done, fittingOf } from './support';

function added(project: Project, fittingId: string, start: ItemStart): RefitItem {
  const answer = done(addItem(project, 'plan', fittingId, start));
  const item = answer.project.plans[0]?.items.find(({ id }) => id === answer.newIds?.[0]);
  if (item === undefined) throw new Error('no item was added');
  return item;
}

function shapeAfter({ change }: RefitItem): ProjectShape {
  if (change.kind !== 'typed') throw new Error('the item types no shape in');
  return change.shape;
}

describe('a remedy of shape', () => {
  it('fairs the pole of 100 mm with 3 mm on each side, four times as long as thick, turning, and says it can jam', () => {
    const item = added(boat(), 'pole', 'fairedTurning');
    expect(shapeAfter(item)).toMatchObject({
      kind: 'fairing',
      thickness: { m: 0.106, basis: 'estimated' },
      chord: { m: 0.424, basis: 'estimated' },
      direction: { kind: 'turning', residualDeg: 5, pieces: 1 },
    });
    expect(item.name).toBe('Pole: faired, turning');
    expect(item.flags).toEqual({ movingPart: true, structural: false, classRule: null });
  });

  it('fairs it fixed with the nose forward, and nothing moves', () => {
    const item = added(boat(), 'pole', 'fairedFixed');
    expect(shapeAfter(item)).toMatchObject({ direction: { kind: 'fixed', angleDeg: 0 } });
    expect(item.flags.movingPart).toBe(false);
  });

  it('flags another section as structural', () => {
    const item = added(boat(), 'pole', 'otherSection');
    expect(shapeAfter(item)).toMatchObject({
      kind: 'ellipticalBar',
      thickness: { m: 0.065 },
      chord: { m: 0.13 },
    });
    expect(item.flags.structural).toBe(true);
  });

  it('rounds the edges of a box to a fifth of its smallest side, which takes drag off', () => {
    const withItem = done(
      addItem(boat({ plans: [{ id: 'plan', name: 'Plan', note: '', items: [] }] }), 'plan', 'box', 'rounded'),
    );
    const item = withItem.project.plans[0]?.items[0];
    if (item === undefined) throw new Error('no item');
    expect(shapeAfter(item)).toMatchObject({ kind: 'bluffBody', cornerRadiusM: 0.1 });
    const answer = projectLedger(withItem.project, {
      basis: { kind: 'condition', conditionId: withItem.project.conditions[0]?.id ?? '' },
      planId: 'plan',
      againstPlanId: null,
    });
    if (!answer.ok) throw new Error('no ledger');
    const row = answer.ledger.rows.find(({ fittingId }) => fittingId === 'box');
    expect(row?.after.outcome.airPowerW).toBeLessThan(0.9 * (row?.before.outcome.airPowerW ?? 0));
  });

  it('is refused where it cannot be, in words', () => {
    expect(addItem(boat(), 'plan', 'box', 'fairedTurning')).toHaveProperty(
      'refused.message',
      'Box is no bar or wire: no other section can take its place',
    );
    expect(addItem(boat(), 'plan', 'pole', 'rounded')).toHaveProperty(
      'refused.message',
      'Pole has no edges to round',
    );
  });

  it('starts anew about another fitting, with its name', () => {
    const { project, newIds } = done(addItem(boat(), 'plan', 'pole', 'fairedFixed'));
    const id = newIds?.[0] ?? '';
    const moved = after(changeItemFitting(project, 'plan', id, 'stanchion'));
    const item = moved.plans[0]?.items.find((each) => each.id === id);
    expect(item?.name).toBe('Stanchion: faired, fixed');
    expect(item === undefined ? null : shapeAfter(item)).toMatchObject({ thickness: { m: 0.036 } });
  });
});

describe('the kinds of shape', () => {
  const kinds = [
    'roundBar',
    'wire',
    'ellipticalBar',
    'rectangularBar',
    'fairing',
    'sphere',
    'net',
    'bluffBody',
    'measuredArea',
  ] as const;

  it.each(kinds)('%s comes from every other kind, and the outcome opens', (to) => {
    for (const from of kinds) {
      const project = after(changeShapeKind(boat(), 'box', from));
      const { shape } = fittingOf(after(changeShapeKind(project, 'box', to)), 'box');
      expect(shape.kind).toBe(to);
    }
  });

  it('a fairing stays as thick as the tube was, and a tube as the fairing', () => {
    const faired = after(changeShapeKind(boat(), 'pole', 'fairing'));
    expect(fittingOf(faired, 'pole').shape).toMatchObject({ thickness: { m: 0.1 }, chord: { m: 0.4 } });
    const back = after(changeShapeKind(faired, 'pole', 'roundBar'));
    expect(fittingOf(back, 'pole').shape).toMatchObject({ diameter: { m: 0.1 } });
  });

  it('a sphere has the face that the box showed ahead', () => {
    // 0.6 m wide, 0.5 m high
    const { shape } = fittingOf(after(changeShapeKind(boat(), 'box', 'sphere')), 'box');
    const diameterM = shape.kind === 'sphere' ? shape.diameter.m : NaN;
    expect((Math.PI / 4) * diameterM ** 2).toBeCloseTo(0.3, 4);
  });
});
