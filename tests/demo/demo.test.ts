import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { doubtedKeys } from '../../src/physics/fitting/change';
import { outcomeKeys } from '../../src/physics/fitting/outcome';
import type { Result } from '../../src/physics/ledger/ledgerSums';
import { openProject } from '../../src/project/file/openProject';
import { saveProject } from '../../src/project/file/saveProject';
import type { Project } from '../../src/project/file/schema';
import type { LedgerBasis, PlanAccount, ProjectLedger } from '../../src/project/ledger/ledgerTypes';
import { projectLedger } from '../../src/project/ledger/projectLedger';

const text = readFileSync('demo-data/quillamoor.windtoll.json', 'utf8');

function opened(): Project {
  const result = openProject(text);
  if (!result.ok) throw new Error(JSON.stringify(result.errors));
  return result.project;
}

const project = opened();
const profile: LedgerBasis = { kind: 'profile' };
const bases: readonly LedgerBasis[] = [
  ...project.conditions.map(({ id }) => ({ kind: 'condition' as const, conditionId: id })),
  profile,
];
const planIds = project.plans.map(({ id }) => id);
const questions = bases.flatMap((basis) => [null, ...planIds].map((planId) => ({ basis, planId })));

function ledgerOf(basis: LedgerBasis, planId: string | null): ProjectLedger {
  const answer = projectLedger(project, { basis, planId, againstPlanId: null });
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  return answer.ledger;
}

function accountOf(basis: LedgerBasis, planId: string): PlanAccount {
  const { plan } = ledgerOf(basis, planId);
  if (plan === null) throw new Error(`no account of plan ${planId}`);
  return plan;
}

function expectFinite({ outcome, ranges }: Result, what: string): void {
  for (const key of outcomeKeys) expect(outcome[key], `${what}: ${key}`).toSatisfy(Number.isFinite);
  for (const key of doubtedKeys) {
    const { low, high } = ranges.all[key];
    expect(low, `${what}: low of ${key}`).toBeLessThanOrEqual(outcome[key]);
    expect(high, `${what}: high of ${key}`).toBeGreaterThanOrEqual(outcome[key]);
  }
}

function conditionWhere(fits: (condition: Project['conditions'][number]) => boolean): LedgerBasis {
  const found = project.conditions.filter(fits);
  expect(found).toHaveLength(1);
  return { kind: 'condition', conditionId: found[0]?.id ?? '' };
}

describe('the demo file', () => {
  it('is what the app would save, byte for byte', () => {
    const saved = saveProject(project);
    expect(saved.ok && saved.text === text).toBe(true);
  });

  it('has at least 25 fittings that count, in at least 5 zones', () => {
    const counted = project.fittings.filter(({ excluded }) => excluded === null);
    expect(counted.length).toBeGreaterThanOrEqual(25);
    expect(new Set(counted.map(({ zoneId }) => zoneId)).size).toBeGreaterThanOrEqual(5);
  });

  it('uses every shape, both placements, rows, pairs, every kind of basis and every flag', () => {
    const { fittings } = project;
    const kindsOf = (values: readonly string[]): string[] => [...new Set(values)].sort();
    expect(kindsOf(fittings.map(({ shape }) => shape.kind))).toEqual([
      'bluffBody',
      'measuredArea',
      'roundBar',
    ]);
    expect(kindsOf(fittings.map(({ placement }) => placement.kind))).toEqual(['endPoints', 'taped']);
    expect(kindsOf(fittings.map(({ placement }) => placement.basis))).toEqual([
      'drawing',
      'estimated',
      'measured',
    ]);
    expect(fittings.some(({ placement }) => placement.row !== null && placement.pair)).toBe(true);
    for (const flag of ['safetyRequired', 'structural', 'movingPart'] as const) {
      expect(
        fittings.some(({ flags }) => flags[flag]),
        flag,
      ).toBe(true);
    }
    expect(fittings.some(({ flags }) => flags.classRule !== null)).toBe(true);
    expect(fittings.some(({ shelteredByFittingId }) => shelteredByFittingId !== null)).toBe(true);
  });
});

describe('the conditions of the demo', () => {
  it('are four, each with the total resistance, and the profile shares its hours among all', () => {
    expect(project.conditions).toHaveLength(4);
    expect(project.conditions.every(({ totalResistanceN }) => totalResistanceN !== null)).toBe(true);
    expect(ledgerOf(profile, null).parts).toHaveLength(4);
  });

  it('hold a run on which the wind pushes: the total and nearly every row have negative track power', () => {
    const run = conditionWhere(({ wind }) => wind.kind === 'true' && wind.angleFromCourseDeg > 150);
    const { forces, rows } = ledgerOf(run, null);
    expect(forces.before.outcome.trackPowerW).toBeLessThan(0);
    expect(forces.before.outcome.airPowerW).toBeGreaterThan(0);
    const pushed = rows.filter(({ before }) => before.outcome.trackPowerW < 0);
    expect(pushed.length).toBeGreaterThan(40);
  });

  it('hold a lifted hull heeled to windward, with the canoe body out of the water only there', () => {
    const lifted = conditionWhere(({ heelDeg, riseM }) => heelDeg < 0 && riseM > 0);
    const dryIn = bases.filter((basis) => {
      const row = ledgerOf(basis, null).rows.find(({ fittingId }) => fittingId === 'canoe-body');
      return basis.kind === 'condition' && row !== undefined && row.before.outcome.airPowerW > 0;
    });
    expect(dryIn).toEqual([lifted]);
  });

  it('hold one as the instruments read it, on port tack, and one with prices for side force and heel', () => {
    conditionWhere(({ wind, tack }) => wind.kind === 'instrument' && tack === 'port');
    const priced = conditionWhere(({ prices }) => prices.atHeelLimit && prices.hullDragPerSideForce !== null);
    const { before } = ledgerOf(priced, null).forces;
    expect(before.outcome.fullPriceW).toBeGreaterThan(before.outcome.trackPowerW);
  });

  it('make the fittings pay a part of what the boat pays in all, between a twentieth and a third', () => {
    for (const basis of [conditionWhere(({ heelDeg }) => heelDeg < 0), profile]) {
      const { forces, totalPaidW } = ledgerOf(basis, null);
      const share = forces.before.outcome.trackPowerW / (totalPaidW ?? NaN);
      expect(share).toBeGreaterThan(1 / 20);
      expect(share).toBeLessThan(1 / 3);
    }
  });
});

describe('the ledger of the demo', () => {
  it.each(questions)(
    'is finite and inside its ranges everywhere: $basis, plan $planId',
    ({ basis, planId }) => {
      const { rows, zones, forces } = ledgerOf(basis, planId);
      for (const { fitting, before, after } of rows) {
        expectFinite(before, `${fitting.name} before`);
        expectFinite(after, `${fitting.name} after`);
      }
      for (const { zone, before, after } of zones) {
        expectFinite(before, `${zone.name} before`);
        expectFinite(after, `${zone.name} after`);
      }
      expectFinite(forces.before, 'total before');
      expectFinite(forces.after, 'total after');
    },
  );

  it('meets thin wires in the dip, tubes on the plateau and spars in the crisis', () => {
    const members = ledgerOf(
      conditionWhere(({ prices }) => prices.atHeelLimit),
      null,
    ).rows.flatMap((row) => row.before.parts.flatMap(({ trace }) => trace.members));
    const regimes = new Set(members.map(({ regime }) => regime));
    for (const regime of ['dip', 'plateau', 'crisis']) expect(regimes).toContain(regime);
  });
});

describe('the plans of the demo', () => {
  it('are two, without a contradiction in any condition', () => {
    expect(planIds).toHaveLength(2);
    for (const basis of bases) {
      for (const planId of planIds) {
        const contradictions = accountOf(basis, planId).items.filter((item) => item.contradiction !== null);
        expect(contradictions).toEqual([]);
      }
    }
  });

  it('both save over the profile, and cost money', () => {
    for (const planId of planIds) {
      const { forces, plan } = ledgerOf(profile, planId);
      expect(forces.saving.change.trackPowerW).toBeGreaterThan(0);
      expect(plan?.balance.cost).toBeGreaterThan(0);
    }
  });

  it.each(planIds)('plan %s leaves its withheld item out of saving, mass and cost', (planId) => {
    const plan = accountOf(profile, planId);
    const withheld = plan.items.filter(({ status }) => status === 'withheld');
    expect(withheld).toHaveLength(1);
    expect(withheld[0]?.savingAlone?.change.trackPowerW).toBeGreaterThan(1);
    const counted = plan.items.filter(({ status }) => status === 'counted');
    const sum = (numbers: readonly number[]): number => numbers.reduce((total, value) => total + value, 0);
    const { forces } = ledgerOf(profile, planId);
    const steps = sum(counted.map(({ savingInOrder }) => savingInOrder?.change.trackPowerW ?? NaN));
    expect(steps).toBeCloseTo(forces.saving.change.trackPowerW, 6);
    expect(plan.balance.cost).toBeCloseTo(sum(counted.map(({ item }) => item.cost)), 6);
    expect(plan.balance.massChangeKg).toBeCloseTo(sum(counted.map(({ item }) => item.massChangeKg)), 6);
  });

  it('count one safety-required item with the reason of a named person', () => {
    const reasoned = planIds
      .flatMap((planId) => accountOf(profile, planId).items)
      .filter(({ item, fitting }) => item.safetyReason !== null && fitting?.flags.safetyRequired === true);
    expect(reasoned.map(({ status }) => status)).toEqual(['counted']);
  });

  it('hold an item that is off, one that costs power, and items that act on each other', () => {
    const accounts = planIds.map((planId) => accountOf(profile, planId));
    const items = accounts.flatMap((account) => account.items);
    expect(items.some(({ status }) => status === 'off')).toBe(true);
    expect(items.some(({ savingInOrder }) => (savingInOrder?.change.trackPowerW ?? 0) < -1)).toBe(true);
    expect(accounts.some(({ isTogetherNamed }) => isTogetherNamed)).toBe(true);
  });
});
