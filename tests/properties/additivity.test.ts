import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DoubtChange } from '../../src/physics/doubt/doubtChange';
import { doubtedKeys } from '../../src/physics/fitting/change';
import { outcomeKeys, type Outcome } from '../../src/physics/fitting/outcome';
import type { Result } from '../../src/physics/ledger/ledgerSums';
import { blankItem, blankPlan } from '../../src/project/file/blankParts';
import type { Project } from '../../src/project/file/schema';
import type { ProjectLedger } from '../../src/project/ledger/ledgerTypes';
import { arbitraryProject } from '../project/file/arbitraryProject';
import { basesOf, basisName, demoPath, everyKindPath, ledgerOf, projectAt } from './projects';

/** Sum of the rows against their total, measured by the sum of the sizes, which rounding follows. */
function expectSum(total: Outcome, parts: readonly Outcome[]): void {
  for (const key of outcomeKeys) {
    const sum = parts.reduce((all, part) => all + part[key], 0);
    const size = parts.reduce((all, part) => all + Math.abs(part[key]), 0);
    expect(Math.abs(total[key] - sum), key).toBeLessThanOrEqual(1e-12 * size + 1e-9);
  }
}

function doubtSum(
  parts: readonly Result[],
  id: string,
  side: 'up' | 'down',
  key: (typeof doubtedKeys)[number],
) {
  const values = parts
    .flatMap(({ doubts }) => doubts.filter((doubt) => doubt.id === id))
    .map((d) => d[side][key]);
  return { sum: values.reduce((a, b) => a + b, 0), size: values.reduce((a, b) => a + Math.abs(b), 0) };
}

function expectDoubtSum(total: readonly DoubtChange[], parts: readonly Result[]): void {
  const ids = new Set(parts.flatMap(({ doubts }) => doubts.map(({ id }) => id)));
  expect(new Set(total.map(({ id }) => id))).toEqual(ids);
  for (const doubt of total) {
    for (const key of doubtedKeys) {
      for (const side of ['up', 'down'] as const) {
        const { sum, size } = doubtSum(parts, doubt.id, side, key);
        expect(Math.abs(doubt[side][key] - sum), `${doubt.id} ${side} ${key}`).toBeLessThanOrEqual(
          1e-12 * size + 1e-9,
        );
      }
    }
  }
}

/** Rows to zones to the total, before and after, in outcomes and doubts. */
function expectPartsAddUp(ledger: ProjectLedger): void {
  for (const side of ['before', 'after'] as const) {
    const rows = ledger.rows.map((row) => row[side]);
    expectSum(
      ledger.forces[side].outcome,
      rows.map(({ outcome }) => outcome),
    );
    expectDoubtSum(ledger.forces[side].doubts, rows);
    const zones = ledger.zones.map((zone) => zone[side]);
    expectSum(
      ledger.forces[side].outcome,
      zones.map(({ outcome }) => outcome),
    );
    for (const zone of ledger.zones) {
      const own = ledger.rows
        .filter(({ fittingId }) => zone.fittingIds.includes(fittingId))
        .map((row) => row[side]);
      expectSum(
        zone[side].outcome,
        own.map(({ outcome }) => outcome),
      );
      expectDoubtSum(zone[side].doubts, own);
    }
  }
  for (const row of ledger.rows) {
    for (const side of ['before', 'after'] as const) {
      const weighted = row[side].parts.map(({ weight, trace }) =>
        Object.fromEntries(outcomeKeys.map((key) => [key, weight * trace.mean[key]])),
      ) as unknown as Outcome[];
      expectSum(row[side].outcome, weighted);
    }
    for (const key of doubtedKeys) {
      expect(row.saving.change[key]).toBeCloseTo(row.before.outcome[key] - row.after.outcome[key], 9);
    }
  }
}

/** An object's own entries, and the changes of a doubt, which it answers when they are read. */
function entriesOf(value: object): [string, unknown][] {
  const own = Object.entries(value) as [string, unknown][];
  return value instanceof DoubtChange ? [...own, ['up', value.up], ['down', value.down]] : own;
}

function allNumbersFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  return entriesOf(value).every(([, entry]) => allNumbersFinite(entry));
}

/** What a person or the file has given, beside what is worked out. */
const givenKeys = new Set(['fitting', 'fittingBefore', 'fittingAfter', 'item', 'zone']);

/** Where a computed number is minus zero, which a table would print with a sign. */
function minusZeros(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Object.is(value, -0) ? [path] : [];
  if (typeof value !== 'object' || value === null) return [];
  return entriesOf(value).flatMap(([key, entry]) =>
    givenKeys.has(key) ? [] : minusZeros(entry, `${path}.${key}`),
  );
}

/** Everything the plan reaches is as it was. */
function expectUnchanged(ledger: ProjectLedger): void {
  for (const row of ledger.rows) {
    expect(row.after.outcome).toEqual(row.before.outcome);
    expect(row.isChanged).toBe(false);
  }
  for (const key of doubtedKeys) {
    expect(ledger.forces.saving.change[key]).toBe(0);
    expect(ledger.forces.saving.ranges.all[key]).toEqual({ low: 0, high: 0 });
  }
}

const shipped = [demoPath, everyKindPath].flatMap((path) => {
  const project = projectAt(path);
  return basesOf(project).map((basis) => [path, basisName(basis), project, basis] as const);
});

describe('a ledger', () => {
  it.each(shipped)(
    '%s, %s: members, fittings, zones and total add up in every component',
    (_p, _n, project, basis) => {
      for (const plan of [null, ...project.plans.map(({ id }) => id)])
        expectPartsAddUp(ledgerOf(project, basis, plan));
    },
  );

  it.each(shipped)('%s, %s: has no minus zero', (_p, _n, project, basis) => {
    const plans = [null, ...project.plans.map(({ id }) => id)];
    for (const plan of plans) expect(minusZeros(ledgerOf(project, basis, plan))).toEqual([]);
  });

  it('of any valid project adds up, holds finite numbers only, and no minus zero', () => {
    fc.assert(
      fc.property(arbitraryProject, (project: Project) => {
        for (const basis of basesOf(project)) {
          for (const plan of [null, ...project.plans.map(({ id }) => id)]) {
            const ledger = ledgerOf(project, basis, plan);
            expectPartsAddUp(ledger);
            expect(allNumbersFinite(ledger)).toBe(true);
            expect(minusZeros(ledger)).toEqual([]);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it.each(shipped)('%s, %s: an empty plan changes nothing', (_p, _n, project, basis) => {
    const empty = blankPlan({ id: 'nothing', name: 'Nothing' });
    const ledger = ledgerOf({ ...project, plans: [empty] }, basis, 'nothing');
    expectUnchanged(ledger);
    expect(ledger.plan?.items).toEqual([]);
    expect(ledger.plan?.balance.massChangeKg).toBe(0);
  });

  it.each(shipped)('%s, %s: a plan whose items are all off changes nothing', (_p, _n, project, basis) => {
    const off = project.plans.map((plan) => ({
      ...plan,
      items: plan.items.map((item) => ({ ...item, on: false })),
    }));
    for (const { id } of off) expectUnchanged(ledgerOf({ ...project, plans: off }, basis, id));
  });

  it.each(shipped)(
    '%s, %s: the order of the fittings in the file changes no row and no total',
    (_p, _n, project, basis) => {
      const one = ledgerOf(project, basis);
      const other = ledgerOf({ ...project, fittings: [...project.fittings].reverse() }, basis);
      for (const row of one.rows) {
        const same = other.rows.find(({ fittingId }) => fittingId === row.fittingId);
        expect(same?.before.outcome).toEqual(row.before.outcome);
        // Fittings that pay the same to the last digit keep the file's order; all others keep their rank.
        const ties = one.rows.filter(
          ({ before }) => before.outcome.trackPowerW === row.before.outcome.trackPowerW,
        );
        if (ties.length === 1) expect(same?.rank).toBe(row.rank);
      }
      const size = one.rows.reduce((sum, row) => sum + Math.abs(row.before.outcome.trackPowerW), 0);
      const apart = one.forces.before.outcome.trackPowerW - other.forces.before.outcome.trackPowerW;
      expect(Math.abs(apart)).toBeLessThanOrEqual(1e-12 * size);
    },
  );

  it.each(shipped)(
    '%s, %s: removing every fitting saves the whole total and leaves no doubt',
    (_p, _n, project, basis) => {
      const items = project.fittings
        .filter(({ excluded }) => excluded === null)
        .map(({ id }) =>
          blankItem({
            id,
            name: id,
            fittingId: id,
            change: { kind: 'removed' },
            safetyReason: { person: 'A. Person', reason: 'for this check' },
          }),
        );
      const plan = blankPlan({ id: 'bare', name: 'Bare', items });
      const { forces } = ledgerOf({ ...project, plans: [plan] }, basis, 'bare');
      for (const key of outcomeKeys) expect(forces.after.outcome[key]).toBe(0);
      expect(forces.saving.change.trackPowerW).toBe(forces.before.outcome.trackPowerW);
      expect(forces.saving.ranges.all.trackPowerW).toEqual(forces.before.ranges.all.trackPowerW);
    },
  );
});
