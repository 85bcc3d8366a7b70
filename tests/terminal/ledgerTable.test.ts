import { describe, expect, it } from 'vitest';
import { between, point } from '../../src/project/file/blankParts';
import type { Project } from '../../src/project/file/schema';
import { projectLedger } from '../../src/project/ledger/projectLedger';
import type { LedgerQuestion } from '../../src/project/ledger/ledgerTypes';
import { ledgerTable } from '../../src/terminal/ledgerTable';
import { testProject } from './testProject';

function table(question: Partial<LedgerQuestion>, project: Project = testProject): string[] {
  const answer = projectLedger(project, {
    basis: { kind: 'condition', conditionId: 'up' },
    planId: null,
    againstPlanId: null,
    ...question,
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  // Units hang on their numbers by no-break spaces.
  return ledgerTable(project, answer.ledger).map((line) => line.replaceAll('\u00a0', ' '));
}

/** Index of the first line that holds the text. */
function lineOf(lines: readonly string[], text: string): number {
  const place = lines.findIndex((line) => line.includes(text));
  expect(`${text}: ${place >= 0 ? 'found' : 'missing'}`).toBe(`${text}: found`);
  return place;
}

const upwind = table({});
const run = { kind: 'condition', conditionId: 'run' } as const;

function withPrices(project: Project): Project {
  const prices = { hullDragPerSideForce: 0.1, driveLostPerHeelingMomentPerM: null, atHeelLimit: false };
  return { ...project, conditions: project.conditions.map((condition) => ({ ...condition, prices })) };
}

describe('the ledger as a table', () => {
  it('groups by zone and puts the dearest first', () => {
    const places = [' Bow ', '  Pole ', '  Pulpit ', ' Stern ', '  Aerial ', ' Total '];
    const found = places.map((text) => lineOf(upwind, text));
    expect(found).toEqual([...found].sort((a, b) => a - b));
    expect(upwind[lineOf(upwind, 'Left out of the sums')]).toBe(
      'Left out of the sums: 4 Deckhouse (counted with the hull)',
    );
  });

  it('puts rows that push the boat along in a group of their own, with a true minus', () => {
    const lines = table({ basis: run });
    expect(lineOf(lines, 'Pushing the boat along')).toBeLessThan(lineOf(lines, '  Pole '));
    expect(lines.some((line) => line.startsWith('     Bow'))).toBe(false);
    expect(lines[lineOf(lines, '  Pole ')]).toMatch(/ −\d/);
    expect(lines.join('\n')).not.toMatch(/[ (]-\d|10⁻/);
  });

  it('groups add up to the total as printed', () => {
    const watts = (name: string): number => {
      const words = (upwind[lineOf(upwind, name)] ?? '').trim().split(/ {2,}/);
      return Number(words[2]);
    };
    expect(watts(' Total ')).toBeGreaterThan(0);
    expect(Math.abs(watts(' Bow ') + watts(' Stern ') - watts(' Total '))).toBeLessThanOrEqual(0.11);
  });

  it('shows after and saving only when two states are compared, and blanks what nothing changed', () => {
    expect(upwind.join('\n')).not.toContain('saving');
    const lines = table({ planId: 'first' });
    expect(lines).toContain('Before: as sailed. After: plan First plan.');
    const head = lines[lineOf(lines, 'track, W')] ?? '';
    const savingEnd = head.indexOf('saving, W') + 'saving, W'.length;
    expect(head).toContain('after, W');
    expect((lines[lineOf(lines, '  Aerial ')] ?? '').slice(savingEnd - 5, savingEnd)).toMatch(/\d$/);
    expect((lines[lineOf(lines, '  Pole ')] ?? '').slice(savingEnd - 5, savingEnd).trim()).toBe('');
    expect(table({ againstPlanId: 'second' })).toContain('Before: plan Second plan. After: as sailed.');
  });

  it('shows the full price only when a price is given, and says so otherwise', () => {
    expect(upwind.join('\n')).not.toContain('full price');
    expect(upwind).toContain('Side force and heel carry no price here: both prices are zero.');
    const priced = table({}, withPrices(testProject)).join('\n');
    expect(priced).toContain('full price, W');
    expect(priced).not.toContain('carry no price');
  });

  it('lists the items with status, cost and the reasons behind them', () => {
    const text = table({ planId: 'first' }).join('\n');
    expect(text).toMatch(/1 {2}Thinner aerial {2}Aerial: slimmer +counted .* −0\.500 +120/);
    expect(text).toMatch(/2 {2}No pulpit +Pulpit: removed +waits for a reason/);
    expect(text).toMatch(/3 {2}No aerial +Aerial: removed +off/);
    expect(text).toContain('Item 2: Safety-required: shown, but outside every total until');
    expect(text).toContain('Item 4: The new diameter is not smaller than the one Pole has by then.');
    expect(text).toMatch(/Counted items +−0\.500 +120\n/);
  });

  it('says the defaults it rests on and ends with the cautions', () => {
    const text = upwind.join('\n');
    expect(text).toContain('Out of use 50.0 % of the time; stowed it is counted with no drag area. (No. 2)');
    expect(text).toContain('Safety-required. (No. 3)');
    expect(text).toContain('no centre of lateral resistance');
    expect(text).toContain('of the 8000 W that the boat pays in all.');
    expect(lineOf(upwind, 'Preliminary estimate.')).toBeGreaterThan(lineOf(upwind, '[1] '));
    expect(upwind.at(-1)).toBe('Moving parts can jam.');
  });
});

it('in a course profile a note says in which conditions it holds', () => {
  // Heeled to port, the low end of this bar on the port side is under water; upright it is not.
  const [aerial] = testProject.fittings;
  const [up, run] = testProject.conditions;
  if (aerial === undefined || up === undefined || run === undefined) throw new Error('test project changed');
  const low = { ...aerial, placement: between(point(0, 1.8, 0.2), point(0, 1.8, 1.2)) };
  const lines = table(
    { basis: { kind: 'profile' } },
    { ...testProject, fittings: [low], conditions: [{ ...up, heelDeg: 25 }, run], plans: [] },
  );
  expect(lines.join('\n')).toContain(
    'Upwind: 1 member reaches below the water; what is under water is left out. (No. 1)',
  );
});
