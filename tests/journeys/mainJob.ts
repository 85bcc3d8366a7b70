import { expect, type Locator, type Page } from 'playwright/test';
import { openProject } from '../../src/project/file/openProject';
import type { Project } from '../../src/project/file/schema';
import { projectLedger } from '../../src/project/ledger/projectLedger';
import type { LedgerRow, ProjectLedger } from '../../src/project/ledger/ledgerTypes';
import { secondRoute } from '../properties/secondRoute';

/** What the newcomer of the two journeys through the whole job wants; one does it by mouse, one by keyboard. */
export const wanted = {
  boat: { name: 'Marlow trial', length: '11,4', beam: '3600 mm', mastTop: '56 ft' },
  boatLengthM: 11.4,
  trueWind: '18,5 kn',
  trueWindMs: (18.5 * 1852) / 3600,
  boatSpeed: '3.9 m/s',
  boatSpeedMs: 3.9,
  fittings: [
    { search: 'stanchions', name: 'Stanchions', zone: 'Side decks' },
    { search: 'running back', name: 'Running backstays', zone: 'Mast and rigging' },
    { search: 'flag below', name: 'Flag below the spreader', zone: 'Mast and rigging' },
  ],
  stanchions: { diameter: '28 mm', diameterM: 0.028, length: '0,65 m', lengthM: 0.65, count: 7 },
  plan: 'Thinner stays',
  backstays: { diameter: '6,5 mm', diameterM: 0.0065 },
  reason: 'The flag is struck before the start.',
} as const;

export function ledgerPlace(page: Page): Locator {
  return page.getByRole('region', { name: 'Ledger', exact: true });
}

export function pane(page: Page, name: string): Locator {
  return page.getByRole('region', { name, exact: true });
}

export function rowOf(page: Page, name: string): Locator {
  return page.locator('.ledger-row').filter({ has: page.getByRole('button', { name, exact: true }) });
}

function totals(page: Page): Locator {
  return page.locator('.ledger-totals');
}

/** The zones that the ledger shows, in its order. */
export function zoneHeads(page: Page): Locator {
  return page.locator('.group-head').getByRole('rowheader');
}

/** The project of a saved file, and its ledger worked out here, outside the browser. */
export function workedOut(text: string, hasPlan: boolean): { project: Project; ledger: ProjectLedger } {
  const opened = openProject(text);
  if (!opened.ok) throw new Error(`The saved file does not open: ${opened.errors[0]?.message ?? ''}`);
  const { project } = opened;
  const answer = projectLedger(project, {
    basis: { kind: 'condition', conditionId: project.conditions[0]?.id ?? '' },
    planId: hasPlan ? (project.plans[0]?.id ?? '') : null,
    againstPlanId: null,
  });
  if (!answer.ok) throw new Error('The saved file has no ledger.');
  return { project, ledger: answer.ledger };
}

function rowNamed({ rows }: ProjectLedger, name: string): LedgerRow {
  const row = rows.find(({ fitting }) => fitting.name === name);
  if (row === undefined) throw new Error(`The file has no ${name}.`);
  return row;
}

/** Numbers as the page prints them: "−1.5", "12.0–14.5". */
function numbersIn(text: string): { readonly value: number; readonly halfDigit: number }[] {
  return [...text.replaceAll('−', '-').matchAll(/(?<![\d.])-?\d+(?:\.(\d+))?/g)].map(
    ([digits, decimals]) => ({
      value: Number(digits),
      halfDigit: 0.5 * 10 ** -(decimals?.length ?? 0),
    }),
  );
}

/** A printed text begins with these numbers, each rounded to the digits that it shows and no further off. */
function expectPrinted(text: string, ...values: readonly number[]): void {
  const printed = numbersIn(text);
  expect(printed.length, text).toBeGreaterThanOrEqual(values.length);
  values.forEach((value, i) => {
    const { value: shown = NaN, halfDigit = NaN } = printed[i] ?? {};
    expect(Math.abs(shown - value), `"${text}" for ${value}`).toBeLessThanOrEqual(halfDigit * (1 + 1e-9));
  });
}

async function cell(page: Page, name: string, column: string): Promise<string> {
  return (await rowOf(page, name).locator(`.column-${column}`).textContent()) ?? '';
}

/** Drag, watts and spread of every row, as the page shows the boat as sailed, against the file. */
export async function expectRowsAsSailed(page: Page, ledger: ProjectLedger): Promise<void> {
  for (const { fitting, before } of ledger.rows) {
    const { dragAgainstTrackN, trackPowerW } = before.outcome;
    const { low, high } = before.ranges.item.trackPowerW;
    expectPrinted(await cell(page, fitting.name, 'drag'), dragAgainstTrackN);
    expectPrinted(await cell(page, fitting.name, 'before'), trackPowerW);
    expectPrinted(await cell(page, fitting.name, 'spread'), low, high);
  }
}

/** The measured area once more by the second route, which shares no code with the page. */
export function expectSecondRoute({ project, ledger }: ReturnType<typeof workedOut>, name: string): void {
  const [condition] = project.conditions;
  const { fitting, before } = rowNamed(ledger, name);
  if (condition === undefined || fitting.shape.kind !== 'measuredArea') throw new Error('nothing to check');
  const { windLaw } = project.methods;
  const once = secondRoute({ ...fitting, shape: fitting.shape }, project.boat, condition, windLaw);
  expect(before.outcome.trackPowerW / once.trackPowerW).toBeCloseTo(1, 6);
}

/** What was typed with units and a decimal comma is what the file holds. */
export function expectTyped({ project, ledger }: ReturnType<typeof workedOut>): void {
  const { boat, conditions } = project;
  expect(boat).toMatchObject({ name: wanted.boat.name, lengthM: 11.4, beamM: 3.6 });
  expect(boat.mast.topAboveWaterplaneM).toBeCloseTo(56 * 0.3048, 9);
  expect(conditions[0]?.wind.speedMs).toBeCloseTo(wanted.trueWindMs, 9);
  expect(conditions[0]?.boatSpeedMs).toBeCloseTo(wanted.boatSpeedMs, 9);
  const { fitting } = rowNamed(ledger, 'Stanchions');
  const { diameterM, lengthM, count } = wanted.stanchions;
  expect(fitting.shape).toMatchObject({ kind: 'roundBar', diameter: { m: diameterM } });
  expect(fitting.placement).toMatchObject({ kind: 'taped', lengthM, row: { count } });
}

/** The working ends with the row's own watts and newtons, and says how many members there are. */
export async function expectWorking(page: Page, name: string, ledger: ProjectLedger): Promise<void> {
  const working = pane(page, 'Working of the selected row');
  await expect(working.getByRole('heading', { name: new RegExp(name) })).toBeVisible();
  const power = working.getByRole('table', { name: 'From the force to the watts' });
  const { before } = rowNamed(ledger, name);
  const line = power.getByRole('row').filter({ hasText: /^track power/ });
  expectPrinted((await line.locator('td').first().textContent()) ?? '', before.outcome.trackPowerW);
}

/** Before, after and the saving of the thinner stays: in the row, in the waterfall's table and in its picture. */
export async function expectSaving(page: Page, ledger: ProjectLedger): Promise<void> {
  const { before, after, saving } = rowNamed(ledger, 'Running backstays');
  const savedW = saving.change.trackPowerW;
  expect(savedW).toBeGreaterThan(0);
  expectPrinted(await cell(page, 'Running backstays', 'before'), before.outcome.trackPowerW);
  expectPrinted(await cell(page, 'Running backstays', 'after'), after.outcome.trackPowerW);
  expectPrinted(await cell(page, 'Running backstays', 'saving'), savedW);
  const plan = pane(page, 'Plan');
  const picture = plan.getByRole('img', { name: /^Track power from before to after/ });
  const [, said = ''] =
    /Running backstays: slimmer: saves (.*)/.exec((await picture.getAttribute('aria-label')) ?? '') ?? [];
  expectPrinted(said, savedW);
  const line = plan.locator('.plans-chart').getByRole('row', { name: /^Running backstays: slimmer, saves/ });
  const { low, high } = saving.ranges.item.trackPowerW;
  expectPrinted((await line.getByRole('cell').nth(0).textContent()) ?? '', savedW);
  expectPrinted((await line.getByRole('cell').nth(1).textContent()) ?? '', low, high);
}

/** The row is out of the sums, and its reason stands in the file and in the ledger. */
export async function expectLeftOut(page: Page, ledger: ProjectLedger): Promise<void> {
  expect(rowNamed(ledger, 'Flag below the spreader')).toMatchObject({ excludedReason: wanted.reason });
  await expect(rowOf(page, 'Flag below the spreader')).toContainText(wanted.reason);
}

/** The totals at the ledger's foot: before, after, saving. */
export async function expectTotals(page: Page, { forces }: ProjectLedger): Promise<void> {
  const figures = totals(page).locator('.total-figure');
  await expect(figures).toHaveCount(3);
  const sides = [forces.before.outcome, forces.after.outcome, forces.saving.change];
  for (const [i, { trackPowerW }] of sides.entries()) {
    await expect(async () => {
      expectPrinted((await figures.nth(i).locator('.total-value').textContent()) ?? '', trackPowerW);
    }).toPass();
  }
}

/** Takes back what was done last until the plan is not made yet; the reason is not typed then either. Answers with the steps. */
export async function undoUntilNoPlan(page: Page, undo: () => Promise<void>): Promise<number> {
  const whole = (await totals(page).textContent()) ?? '';
  const plan = page.getByRole('radio', { name: wanted.plan });
  const anyPlan = page.getByRole('group', { name: 'Refit plan, number of items' });
  await expect(plan).toBeChecked();
  let steps = 0;
  while ((await anyPlan.count()) > 0 && steps < mostSteps) {
    await undo();
    steps += 1;
  }
  await expect(anyPlan).toHaveCount(0);
  await expect(ledgerPlace(page).getByText(wanted.reason)).toHaveCount(0);
  await expect(totals(page)).not.toHaveText(whole);
  return steps;
}

/** More steps than the plan and the exclusion take, even where each word typed slowly is a step. */
const mostSteps = 40;

/** What was opened has not been edited yet. */
export async function expectJustOpened(page: Page): Promise<void> {
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveAttribute('title', 'Nothing to undo');
  await expect(rowOf(page, 'Stanchions')).toBeVisible();
}
