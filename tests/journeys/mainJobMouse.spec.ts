import { expect, test, type Locator, type Page } from 'playwright/test';
import {
  expectJustOpened,
  expectLeftOut,
  expectRowsAsSailed,
  expectSaving,
  expectSecondRoute,
  expectTotals,
  expectTyped,
  expectWorking,
  ledgerPlace,
  pane,
  rowOf,
  undoUntilNoPlan,
  wanted,
  workedOut,
  zoneHeads,
} from './mainJob';
import { openDemo, savedFile, saveStatus } from './openPage';

/** Types over what stands in a field. */
async function retype(field: Locator, text: string): Promise<void> {
  await field.click({ clickCount: 3 });
  await field.fill(text);
}

async function makeProject(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'New project' }).click();
  const dialog = page.getByRole('dialog', { name: 'New project' });
  await retype(dialog.getByLabel('Name'), wanted.boat.name);
  await retype(dialog.getByLabel('Length of the hull'), wanted.boat.length);
  await retype(dialog.getByLabel('Largest beam'), wanted.boat.beam);
  await retype(dialog.getByLabel('Mast top above the water'), wanted.boat.mastTop);
  await dialog.getByRole('button', { name: 'Make the project' }).click();
  await expect(page.getByRole('heading', { name: 'Nothing stands in the wind yet' })).toBeVisible();
}

async function setCondition(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^True wind: 16/ }).click();
  await retype(page.getByRole('textbox', { name: 'True wind speed' }), wanted.trueWind);
  await retype(page.getByRole('textbox', { name: 'Boat speed' }), wanted.boatSpeed);
  await expect(page.getByRole('button', { name: /^True wind: 18.5/ })).toBeVisible();
}

async function addFittings(page: Page): Promise<void> {
  for (const [index, { search, name }] of wanted.fittings.entries()) {
    // The first from the empty ledger, which leads to the catalogue.
    const way = index === 0 ? 'Add a fitting from the catalogue' : 'Add a fitting';
    await page.getByRole('button', { name: way, exact: true }).click();
    const dialog = page.getByRole('dialog', { name: 'Add a fitting' });
    await dialog.getByRole('searchbox', { name: 'Search' }).fill(search);
    await dialog.getByRole('button', { name: new RegExp(`^${name} `) }).click();
    await expect(rowOf(page, name)).toBeVisible();
  }
  await expect(zoneHeads(page)).toHaveText([/^Side decks/, /^Mast and rigging/]);
}

async function pick(page: Page, name: string): Promise<void> {
  await ledgerPlace(page).getByRole('button', { name, exact: true }).click();
}

async function bringPane(page: Page, name: string): Promise<void> {
  await page.locator('.side-words').getByText(name, { exact: true }).click();
}

async function editStanchions(page: Page): Promise<void> {
  await pick(page, 'Stanchions');
  const edit = pane(page, 'Edit');
  await retype(edit.getByRole('textbox', { name: 'Diameter', exact: true }), wanted.stanchions.diameter);
  await retype(edit.getByRole('textbox', { name: 'How many in a row' }), String(wanted.stanchions.count));
  await retype(edit.getByRole('textbox', { name: 'Length, foot to head' }), wanted.stanchions.length);
  await edit.getByRole('heading', { name: /Stanchions/ }).click();
}

async function makePlan(page: Page): Promise<void> {
  await pick(page, 'Running backstays');
  await bringPane(page, 'Plan');
  const plan = pane(page, 'Plan');
  await plan.getByRole('button', { name: 'Make a plan' }).click();
  await retype(plan.getByRole('textbox', { name: 'Name of the plan' }), wanted.plan);
  await plan.getByRole('combobox', { name: /^New item about Running backstays/ }).selectOption('slimmer');
  await plan.getByRole('button', { name: 'Add the item' }).click();
  await retype(plan.getByRole('textbox', { name: 'New diameter', exact: true }), wanted.backstays.diameter);
  await plan.locator('.plans-chart').getByText('as a table').click();
}

async function leaveOutTheFlag(page: Page): Promise<void> {
  await pick(page, 'Flag below the spreader');
  await page.getByRole('group', { name: 'Rows' }).getByRole('button', { name: 'Exclude' }).click();
  await bringPane(page, 'Edit');
  await retype(page.getByRole('textbox', { name: 'Reason for leaving it out' }), wanted.reason);
  await expect(ledgerPlace(page).getByText(wanted.reason)).toBeVisible();
}

/** Takes back plan and exclusion, step by step, and does them again. */
async function undoAndRedo(page: Page): Promise<void> {
  const steps = await undoUntilNoPlan(page, () => page.getByRole('button', { name: 'Undo' }).click());
  for (let step = 0; step < steps; step += 1) await page.getByRole('button', { name: 'Redo' }).click();
  await page.getByRole('radio', { name: wanted.plan }).click();
}

test('the whole job by mouse: every figure agrees with one worked out outside the page, and the file comes back byte for byte', async ({
  page,
}) => {
  await openDemo(page);
  await makeProject(page);
  await setCondition(page);
  await addFittings(page);
  await editStanchions(page);

  const asSailed = workedOut((await savedFile(page)).text, false);
  expectTyped(asSailed);
  await expectRowsAsSailed(page, asSailed.ledger);
  expectSecondRoute(asSailed, 'Flag below the spreader');
  await pick(page, 'Stanchions');
  await bringPane(page, 'Working');
  await expectWorking(page, 'Stanchions', asSailed.ledger);

  await makePlan(page);
  await expectSaving(page, workedOut((await savedFile(page)).text, true).ledger);
  await leaveOutTheFlag(page);
  const file = await savedFile(page);
  const refitted = workedOut(file.text, true);
  await expectTotals(page, refitted.ledger);

  await expectLeftOut(page, refitted.ledger);

  await undoAndRedo(page);
  await expectTotals(page, refitted.ledger);
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);

  await page.reload();
  await expect(page).toHaveTitle(`${wanted.boat.name} – drag ledger – Windtoll`);
  await expectTotals(page, refitted.ledger);
  await expectLeftOut(page, refitted.ledger);
  expect(await savedFile(page)).toEqual(file);

  // Something that the file knows nothing of.
  await pick(page, 'Stanchions');
  await page.getByRole('group', { name: 'Rows' }).getByRole('button', { name: 'Delete' }).click();
  await expect(rowOf(page, 'Stanchions')).toHaveCount(0);
  const choosing = page.waitForEvent('filechooser');
  await page.getByText('Open a file', { exact: true }).click();
  await (
    await choosing
  ).setFiles({ name: file.name, mimeType: 'application/json', buffer: Buffer.from(file.text) });
  await expectJustOpened(page);
  expect(await savedFile(page)).toEqual(file);
});
