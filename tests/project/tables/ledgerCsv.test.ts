import { describe, expect, it } from 'vitest';
import { doubtedKeys } from '../../../src/physics/fitting/change';
import type { Project } from '../../../src/project/file/schema';
import type { ProjectLedger } from '../../../src/project/ledger/ledgerTypes';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import { ledgerCsv } from '../../../src/project/tables/ledgerCsv';
import { unguarded } from '../../../src/project/tables/textGuard';
import { cellsThatRun } from './hostileTexts';
import { demo, tableIn } from './support';

function ledgerFor(project: Project): ProjectLedger {
  const planId = project.plans[0]?.id ?? null;
  const answer = projectLedger(project, { basis: { kind: 'profile' }, planId, againstPlanId: null });
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  return answer.ledger;
}

const project = demo();
const ledger = ledgerFor(project);
const [heads, ...rows] = tableIn(ledgerCsv(project, ledger)).records.map(({ cells }) => cells);

function column(head: string): readonly string[] {
  const at = (heads ?? []).indexOf(head);
  if (at === -1) throw new Error(`no column ${head}`);
  return rows.map((cells) => cells[at] ?? '');
}

describe("the ledger's CSV", () => {
  it('has a row for each fitting, in the order of the file', () => {
    expect(column('Fitting').map(unguarded)).toEqual(project.fittings.map(({ name }) => name));
  });

  it('has best, low and high of every quantity before, after and saved, each with its unit', () => {
    const quantities = (heads ?? []).filter((head) => /, (?:before|after|saving)/.test(head));
    const counted = doubtedKeys.filter((key) => key !== 'fullPriceW' || ledger.hasFullPrice);
    expect(quantities).toHaveLength(9 * counted.length);
    expect(quantities.filter((head) => !/\((?:N|W|N m)\)$/.test(head))).toEqual([]);
  });

  it('keeps every number to the last digit, negative ones too', () => {
    const inFull = (values: readonly (number | null)[]): readonly string[] =>
      values.map((value) => (value === null ? '' : String(value + 0)));
    const counted = <Value>(of: (row: ProjectLedger['rows'][number]) => Value) =>
      ledger.rows.map((row) => (row.excludedReason === null ? of(row) : null));
    expect(column('track power, before (W)')).toEqual(
      inFull(counted((row) => row.before.outcome.trackPowerW)),
    );
    expect(column('track power, after, low (W)')).toEqual(
      inFull(counted((row) => row.after.ranges.item.trackPowerW.low)),
    );
    expect(column('air power, saving, high (W)')).toEqual(
      inFull(counted((row) => row.saving.ranges.item.airPowerW.high)),
    );
    expect(ledger.rows.some((row) => row.before.outcome.trackPowerW < 0)).toBe(true);
    expect(column('track power, before (W)').some((text) => text.startsWith('-'))).toBe(true);
    expect(ledger.rows.some(({ excludedReason }) => excludedReason !== null)).toBe(true);
  });

  it('has no cell that a spreadsheet would run, whatever the names', () => {
    const hostile = ['=1+1', '+1', '-1', '@x', 'a;=cmd', 'two"\'=1', '\uff1d1', 'x,@y'];
    const named = {
      ...project,
      zones: project.zones.map((zone, i) => ({ ...zone, name: hostile[i % 8] ?? '' })),
      fittings: project.fittings.map((fitting, i) => ({ ...fitting, name: hostile[i % 8] ?? '' })),
      plans: project.plans.map((plan) => ({ ...plan, name: "=cmd|' /C calc'!A0" })),
    };
    const csv = ledgerCsv(named, ledgerFor(named));
    expect(cellsThatRun(csv)).toEqual([]);
    expect(csv).toContain("'=1+1");
  });
});
