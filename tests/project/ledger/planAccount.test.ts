import { describe, expect, it } from 'vitest';
import { doubtedKeys } from '../../../src/physics/fitting/change';
import { between, blankPlan, point } from '../../../src/project/file/blankParts';
import type { PlanAccount } from '../../../src/project/ledger/ledgerTypes';
import {
  item,
  ledgerOf,
  planOf,
  projectWith,
  reason,
  removed,
  rowOf,
  slim,
  stowedAway,
} from '../refit/support';

const likeThin = { kind: 'shapeOf', fittingId: 'thin' } as const;
const plan = planOf(
  item('slim-tube', 'thin', slim(0.02), { massChangeKg: -1.5, massPlace: point(2, 0, 1.7), cost: 400 }),
  item('pole-like-tube', 'pole', likeThin, { massChangeKg: 2, massPlace: point(-1, 0.5, 3), cost: 900 }),
  item('no-box', 'box', removed, { massChangeKg: -20, cost: -100 }),
  item('no-stanchion', 'stanchion', removed, { massChangeKg: -2, massPlace: point(-3, -1.8, 1.5), cost: 50 }),
  item('slim-box', 'box', slim(0.1), { massChangeKg: 7, cost: 7 }),
  item('later', 'hidden', removed, { on: false, massChangeKg: 9, cost: 9 }),
);
const ledger = ledgerOf(projectWith(plan));

function account(): PlanAccount {
  if (ledger.plan === null) throw new Error('no plan');
  return ledger.plan;
}

function itemOf(id: string): PlanAccount['items'][number] {
  const found = account().items.find((each) => each.item.id === id);
  if (found === undefined) throw new Error(`no item ${id}`);
  return found;
}

const counted = ['slim-tube', 'pole-like-tube', 'no-box'];

describe('savings of a plan', () => {
  it('in order add up to the saving of the whole plan, in every entry', () => {
    for (const key of doubtedKeys) {
      const sum = counted.reduce((all, id) => all + (itemOf(id).savingInOrder?.change[key] ?? NaN), 0);
      expect(sum).toBeCloseTo(ledger.forces.saving.change[key], 9);
    }
  });

  it('alone and "together" add up to the saving of the whole plan, in every entry', () => {
    for (const key of doubtedKeys) {
      const sum = counted.reduce((all, id) => all + (itemOf(id).savingAlone?.change[key] ?? NaN), 0);
      expect(sum + account().together.change[key]).toBeCloseTo(ledger.forces.saving.change[key], 9);
    }
  });

  it('name "together" where items act on each other, and not where they do not', () => {
    // The pole takes the tube's shape after the tube was slimmed: more than it saves alone.
    expect(account().isTogetherNamed).toBe(true);
    expect(account().together.change.trackPowerW).toBeGreaterThan(0);
    const apart = planOf(item('a', 'thin', slim(0.02)), item('b', 'box', removed));
    const other = ledgerOf(projectWith(apart)).plan;
    expect(other?.isTogetherNamed).toBe(false);
    expect(other?.together.change.trackPowerW).toBeCloseTo(0, 9);
  });

  it('step the total down item by item, each from where the one before left it', () => {
    const steps = counted.map(itemOf);
    expect(steps[0]?.totalBefore?.outcome.trackPowerW).toBeCloseTo(
      ledger.forces.before.outcome.trackPowerW,
      9,
    );
    expect(steps[2]?.totalAfter?.outcome.trackPowerW).toBeCloseTo(ledger.forces.after.outcome.trackPowerW, 9);
    for (const [i, step] of steps.entries()) {
      const next = steps[i + 1];
      if (next !== undefined) expect(next.totalBefore).toBe(step.totalAfter);
      const fall =
        (step.totalBefore?.outcome.trackPowerW ?? NaN) - (step.totalAfter?.outcome.trackPowerW ?? NaN);
      expect(fall).toBeCloseTo(step.savingInOrder?.change.trackPowerW ?? NaN, 9);
    }
  });

  it('a doubt that before and after share cancels: the removed part takes its doubt along, the rest none', () => {
    const off = ledgerOf(projectWith(planOf(item('a', 'box', removed))));
    for (const { id, up } of off.forces.saving.doubts) {
      if (id.startsWith('own:') && !id.startsWith('own:box:')) expect(up.trackPowerW).toBeCloseTo(0, 9);
    }
    const row = rowOf(off, 'box');
    const { low, high } = off.forces.saving.ranges.all.trackPowerW;
    expect(low).toBeCloseTo(row.before.ranges.all.trackPowerW.low, 9);
    expect(high).toBeCloseTo(row.before.ranges.all.trackPowerW.high, 9);
  });
});

describe('a withheld item', () => {
  it('shows its saving and stays out of every total, mass and cost', () => {
    const withheld = itemOf('no-stanchion');
    expect(withheld.status).toBe('withheld');
    expect(withheld.savingInOrder?.change.trackPowerW).toBeGreaterThan(0);
    expect(withheld.totalAfter).toBeNull();
    const row = rowOf(ledger, 'stanchion');
    expect(row.after.outcome).toEqual(row.before.outcome);
    expect(row.withheldItemIds).toEqual(['no-stanchion']);
    expect(row.isChanged).toBe(false);
    expect(row.fittingAfter).not.toBeNull();
  });

  it('counts once a named person gave a reason', () => {
    const items = plan.items.map((each) =>
      each.id === 'no-stanchion' ? { ...each, safetyReason: reason } : each,
    );
    const given = ledgerOf(projectWith({ ...plan, items }));
    const row = rowOf(given, 'stanchion');
    expect(row.after.outcome.trackPowerW).toBe(0);
    expect(row.withheldItemIds).toEqual([]);
    const more = given.forces.saving.change.trackPowerW - ledger.forces.saving.change.trackPowerW;
    expect(more).toBeCloseTo(itemOf('no-stanchion').savingInOrder?.change.trackPowerW ?? NaN, 9);
    expect(given.plan?.balance.massChangeKg).toBeCloseTo(-21.5, 12);
  });

  it('is left out although the fitting was moved, and the move counts', () => {
    const both = planOf(
      item('move', 'stanchion', { kind: 'moved', placement: between(point(-3, 0, 3), point(-3, 0, 3.65)) }),
      item('remove', 'stanchion', removed),
    );
    const moved = ledgerOf(projectWith(both));
    expect(moved.plan?.items.map(({ status }) => status)).toEqual(['counted', 'withheld']);
    const row = rowOf(moved, 'stanchion');
    expect(row.after.outcome.trackPowerW).toBeGreaterThan(0);
    expect(row.after.outcome.trackPowerW).not.toBeCloseTo(row.before.outcome.trackPowerW, 6);
  });
});

describe('mass and cost', () => {
  it('are those of the counted items, with mass moments about the boat’s origin', () => {
    const { balance } = account();
    expect(balance.massChangeKg).toBeCloseTo(-1.5 + 2 - 20, 12);
    expect(balance.cost).toBe(400 + 900 - 100);
    expect(balance.momentXKgM).toBeCloseTo(-1.5 * 2 + 2 * -1, 12);
    expect(balance.momentYKgM).toBeCloseTo(2 * 0.5, 12);
    expect(balance.momentZKgM).toBeCloseTo(-1.5 * 1.7 + 2 * 3, 12);
  });

  it('mass without a place is in the mass, not in the moments, and said so', () => {
    expect(account().balance.massWithoutPlaceKg).toBe(-20);
  });
});

describe('a plan against a plan', () => {
  const bare = blankPlan({
    id: 'bare',
    name: 'Bare',
    items: [item('x', 'pole', removed), item('y', 'box', removed)],
  });
  const project = projectWith(plan, { plans: [plan, bare] });
  const both = ledgerOf(project, 'bare', 'plan');

  it('has the one as before and the other as after', () => {
    const { forces } = both;
    expect(forces.before.outcome.trackPowerW).toBeCloseTo(
      ledgerOf(project, 'plan').forces.after.outcome.trackPowerW,
      9,
    );
    expect(forces.after.outcome.trackPowerW).toBeCloseTo(
      ledgerOf(project, 'bare').forces.after.outcome.trackPowerW,
      9,
    );
    expect(both.against?.planId).toBe('plan');
    expect(both.plan?.planId).toBe('bare');
  });

  it('says where the two differ, and only there', () => {
    expect(rowOf(both, 'pole').isChanged).toBe(true);
    expect(rowOf(both, 'thin').isChanged).toBe(true);
    expect(rowOf(both, 'hidden').isChanged).toBe(false);
    // Both remove the box.
    expect(rowOf(both, 'box').saving.change.trackPowerW).toBe(0);
    expect(rowOf(both, 'box').before.outcome.trackPowerW).toBe(0);
  });

  it('of itself saves nothing and doubts nothing', () => {
    const { saving } = ledgerOf(project, 'plan', 'plan').forces;
    for (const key of doubtedKeys) {
      expect(saving.change[key]).toBeCloseTo(0, 12);
      expect(saving.ranges.all[key].high - saving.ranges.all[key].low).toBeCloseTo(0, 9);
    }
  });

  it('turned round turns the saving round, range and all', () => {
    const back = ledgerOf(project, 'plan', 'bare').forces.saving;
    expect(back.change.trackPowerW).toBeCloseTo(-both.forces.saving.change.trackPowerW, 9);
    expect(back.ranges.all.trackPowerW.low).toBeCloseTo(-both.forces.saving.ranges.all.trackPowerW.high, 9);
  });
});

describe('what an item shelters', () => {
  it.each([
    ['removed', removed],
    ['stowed', stowedAway],
    ['moved', { kind: 'moved', placement: between(point(-4, 0, 1.2), point(-4, 0, 1.2)) }],
    ['retracted', { kind: 'retracted', dutyFraction: { default: 0.1, byCondition: [] }, stowed: null }],
  ] as const)('is in doubt when the shelter is %s', (_what, change) => {
    const lost = ledgerOf(projectWith(planOf(item('a', 'box', change))));
    expect(rowOf(lost, 'hidden').notices.map(({ code }) => code)).toContain('shelter-removed');
    expect(rowOf(lost, 'pole').notices.map(({ code }) => code)).not.toContain('shelter-removed');
  });

  it('is not in doubt when the shelter stays, or when the sheltered fitting goes too', () => {
    const codes = (...items: Parameters<typeof planOf>) =>
      rowOf(ledgerOf(projectWith(planOf(...items))), 'hidden').notices.map(({ code }) => code);
    expect(codes(item('a', 'pole', removed))).not.toContain('shelter-removed');
    expect(codes(item('a', 'box', removed, { on: false }))).not.toContain('shelter-removed');
    expect(codes(item('a', 'box', removed), item('b', 'hidden', removed))).not.toContain('shelter-removed');
  });
});
