import { describe, expect, it } from 'vitest';
import { ledgerOf } from '../../../src/state/ledgerOf';
import { useAppStore } from '../../../src/state/appStore';
import { savesBothText } from '../../../src/views/plans/planWords';
import { demo, openInStore } from '../ledger/openProjects';

/** The demo with one item alone in its plan: a bar a fifth slimmer. */
function slimmed(fittingId: string, massChangeKg = 0) {
  const project = demo();
  const [plan] = project.plans;
  const [item] = plan?.items ?? [];
  if (plan === undefined || item === undefined) throw new Error('the demo has no plan');
  const fitting = project.fittings.find(({ id }) => id === fittingId);
  if (fitting?.shape.kind !== 'roundBar') throw new Error(`${fittingId} is no round bar`);
  const diameter = { ...fitting.shape.diameter, m: 0.8 * fitting.shape.diameter.m };
  const change = { kind: 'slimmer' as const, diameter };
  openInStore({
    ...project,
    plans: [{ ...plan, items: [{ ...item, fittingId, change, massChangeKg, cost: 0 }] }],
  });
  const state = useAppStore.getState();
  if (state.project === null) throw new Error('not open');
  state.choosePlan(plan.id);
  const account = ledgerOf(state.project, useAppStore.getState().question)?.plan?.items[0];
  if (account === undefined) throw new Error('no account of the item');
  return account;
}

describe('what is said of an item that gives twice', () => {
  it('promises no power where the range of its saving holds zero', () => {
    const open = slimmed('staysail');
    expect(open.savingInOrder?.ranges.item.trackPowerW.low).toBeLessThan(0);
    expect(savesBothText(open)).toBe('Perhaps saves power, and is free.');
    expect(savesBothText(slimmed('staysail', -2))).toBe('Saves 2.00\u00a0kg of mass, and perhaps power.');
  });

  it('says that it saves where the whole range is above zero', () => {
    const sure = slimmed('stern-pole');
    expect(sure.savingInOrder?.ranges.item.trackPowerW.low).toBeGreaterThan(0);
    expect(savesBothText(sure)).toBe('Saves power and is free.');
  });
});
