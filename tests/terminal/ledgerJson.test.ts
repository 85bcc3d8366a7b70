import { combinedEnds } from '../../src/physics/doubt/combinedEnds';
import { doubtChange } from '../../src/physics/doubt/doubtChange';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outcomeKeys } from '../../src/physics/fitting/outcome';
import type { Project } from '../../src/project/file/schema';
import { projectLedger } from '../../src/project/ledger/projectLedger';
import type { LedgerQuestion, ProjectLedger } from '../../src/project/ledger/ledgerTypes';
import { ledgerJson } from '../../src/terminal/ledgerJson';
import { ledgerTable } from '../../src/terminal/ledgerTable';
import { safeJson } from '../../src/terminal/safeText';
import { arbitraryProject } from '../project/file/arbitraryProject';
import { testProject } from './testProject';

function ledgerOf(project: Project, question: LedgerQuestion): ProjectLedger {
  const answer = projectLedger(project, question);
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  return answer.ledger;
}

const basis = { kind: 'condition', conditionId: 'up' } as const;
const ledger = ledgerOf(testProject, { basis, planId: 'first', againstPlanId: null });
const json = ledgerJson(testProject, ledger);

/** Every key below a value, and whether its numbers are finite. */
function numbersIn(value: unknown, path: string): { path: string; value: number }[] {
  if (typeof value === 'number') return [{ path, value }];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}.${key}`));
}

describe('the ledger as JSON', () => {
  it('carries the numbers of the ledger bit for bit', () => {
    const read = JSON.parse(safeJson(json)) as typeof json;
    const pole = ledger.rows.find(({ fittingId }) => fittingId === 'pole');
    const row = read.rows.find(({ fittingId }) => fittingId === 'pole');
    for (const key of outcomeKeys) expect(row?.before[key]).toBe((pole?.before.outcome[key] ?? NaN) + 0);
    expect(read.totals.before.trackPowerW).toBe(ledger.forces.before.outcome.trackPowerW);
    expect(read.totals.saving.ranges).toEqual(ledger.forces.saving.ranges);
  });

  it('shows for each row the wind at its place, Reynolds number, coefficient and deployed newtons', () => {
    const [part] = json.rows[1]?.before.conditions ?? [];
    const [member] = part?.members ?? [];
    expect(member?.apparentSpeedMs).toBeGreaterThan(10);
    expect(member?.reynolds).toBeCloseTo(
      ((member?.crossSpeedMs ?? 0) * 0.1) / (json.conditions[0]?.kinematicViscosityM2S ?? 1),
      6,
    );
    expect(member?.coefficientLow).toBeLessThan(member?.coefficientBest ?? 0);
    expect(member?.coefficientHigh).toBeGreaterThan(member?.coefficientBest ?? 9);
    expect(member?.regime).toBe('plateau');
    expect(part?.dutyFraction).toBe(0.5);
    expect(part?.mean.dragAgainstTrackN).toBeCloseTo(0.5 * (part?.deployed.dragAgainstTrackN ?? 0), 12);
  });

  it('gives every doubt with its two changes, its scope and its group', () => {
    const doubts = json.totals.before.doubts;
    expect(doubts.find(({ id }) => id === 'wind-speed')).toMatchObject({ scope: 'shared', group: 'air' });
    expect(doubts.find(({ id }) => id === 'own:pole:diameter')).toMatchObject({
      label: 'diameter, Pole',
      scope: 'own',
      group: 'item',
    });
    // The ranges follow from what is printed.
    const told = doubts.map(({ id, up, down }) => doubtChange(id, up, down));
    expect(json.totals.before.ranges.all.trackPowerW.high).toBeCloseTo(
      json.totals.before.trackPowerW + combinedEnds(told, 'trackPowerW').high,
      9,
    );
  });

  it('keeps the status, the reasons and the saving of every item', () => {
    expect(json.plan?.items.map(({ itemId, status }) => [itemId, status])).toEqual([
      ['thin', 'counted'],
      ['off', 'withheld'],
      ['gone', 'off'],
      ['thick', 'contradiction'],
    ]);
    const withheld = json.plan?.items[1];
    expect(withheld?.savingAlone?.trackPowerW).toBeGreaterThan(0);
    expect(withheld?.reasons[0]).toContain('outside every total');
    expect(json.totals.saving.trackPowerW).toBeCloseTo(
      json.plan?.items[0]?.savingInOrder?.trackPowerW ?? 0,
      12,
    );
    expect(json.plan?.balance).toMatchObject({ massChangeKg: -0.5, cost: 120 });
  });

  it('keeps what is left out of the sums apart and says the default centre of lateral resistance', () => {
    expect(json.rows[3]).toMatchObject({
      excludedReason: 'counted with the hull',
      rank: null,
      isRemovedAfter: false,
    });
    expect(json.centreOfLateralResistance).toMatchObject({
      isDefault: true,
      zM: -0.4 * testProject.boat.draughtM,
    });
    expect(json.losses.losses).toEqual([]);
  });

  it('holds finite numbers only, and a table without control characters, for any project', () => {
    fc.assert(
      fc.property(arbitraryProject, fc.boolean(), fc.boolean(), (project, byProfile, hasPlan) => {
        const [first] = project.conditions;
        const question: LedgerQuestion = {
          basis:
            byProfile && project.profile !== null
              ? { kind: 'profile' }
              : { kind: 'condition', conditionId: first?.id ?? '' },
          planId: hasPlan ? 'p0' : null,
          againstPlanId: hasPlan ? 'p1' : null,
        };
        const any = ledgerOf(project, question);
        const bad = numbersIn(ledgerJson(project, any), '').filter(({ value }) => !Number.isFinite(value));
        expect(bad).toEqual([]);
        for (const line of ledgerTable(project, any))
          expect(line).not.toMatch(/[\p{C}\p{Zl}\p{Zp}]|NaN|undefined/u);
      }),
      { numRuns: 60 },
    );
  });
});
