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
import { openDemo, savedFile, saveStatus, type TextFile } from './openPage';

/** More stops than lie between any two places of this journey. */
const mostStops = 70;

/** Walks with the tabulator key until the focus is there. */
async function tabTo(page: Page, place: Locator): Promise<void> {
  for (let stop = 0; stop < mostStops; stop += 1) {
    if ((await place.count()) === 1 && (await place.evaluate((each) => each === document.activeElement)))
      return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`The tabulator key does not reach ${String(place)}.`);
}

async function retype(page: Page, field: Locator, text: string): Promise<void> {
  await tabTo(page, field);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
}

async function press(page: Page, button: Locator): Promise<void> {
  await tabTo(page, button);
  await page.keyboard.press('Enter');
}

/** From the pane, or wherever the focus is, to the ledger's row. */
async function toRow(page: Page, name: string): Promise<void> {
  const wantedRow = rowOf(page, name).getByRole('button', { name, exact: true });
  const isInLedger = page.locator('.ledger-place :focus');
  if ((await isInLedger.count()) === 0) await page.keyboard.press('F6');
  await page.keyboard.press('Home');
  for (let row = 0; row < 5; row += 1) {
    if (await wantedRow.evaluate((each) => each === document.activeElement)) return;
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`The arrow keys do not reach ${name}.`);
}

async function save(page: Page): Promise<TextFile> {
  return savedFile(page, () => page.keyboard.press('Control+s'));
}

async function makeProject(page: Page): Promise<void> {
  await press(page, page.getByRole('button', { name: 'New project' }));
  const dialog = page.getByRole('dialog', { name: 'New project' });
  await retype(page, dialog.getByLabel('Name'), wanted.boat.name);
  await retype(page, dialog.getByLabel('Length of the hull'), wanted.boat.length);
  await retype(page, dialog.getByLabel('Largest beam'), wanted.boat.beam);
  await retype(page, dialog.getByLabel('Mast top above the water'), wanted.boat.mastTop);
  await press(page, dialog.getByRole('button', { name: 'Make the project' }));
  await expect(page.getByRole('heading', { name: 'Nothing stands in the wind yet' })).toBeVisible();
}

async function setCondition(page: Page): Promise<void> {
  await page.keyboard.press('5');
  await expect(pane(page, 'Condition').getByRole('heading').first()).toBeVisible();
  await page.keyboard.press('b');
  await retype(page, page.getByRole('textbox', { name: 'True wind speed' }), wanted.trueWind);
  await retype(page, page.getByRole('textbox', { name: 'Boat speed' }), wanted.boatSpeed);
  await expect(page.getByRole('button', { name: /^True wind: 18.5/ })).toBeVisible();
}

async function addFittings(page: Page): Promise<void> {
  for (const [index, { search, name }] of wanted.fittings.entries()) {
    // Into the ledger; before there is a row, its words lead to the catalogue.
    await page.keyboard.press('F6');
    if (index === 0)
      await press(page, page.getByRole('button', { name: 'Add a fitting from the catalogue' }));
    else await page.keyboard.press('n');
    await expect(page.getByRole('searchbox', { name: 'Search' })).toBeFocused();
    await page.keyboard.type(search);
    await page.keyboard.press('Enter');
    await expect(rowOf(page, name)).toBeVisible();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toBeFocused();
  }
  await expect(zoneHeads(page)).toHaveText([/^Side decks/, /^Mast and rigging/]);
}

async function editStanchions(page: Page): Promise<void> {
  await toRow(page, 'Stanchions');
  await page.keyboard.press('Enter');
  const edit = pane(page, 'Edit');
  await retype(
    page,
    edit.getByRole('textbox', { name: 'Diameter', exact: true }),
    wanted.stanchions.diameter,
  );
  await retype(
    page,
    edit.getByRole('textbox', { name: 'How many in a row' }),
    String(wanted.stanchions.count),
  );
  await retype(page, edit.getByRole('textbox', { name: 'Length, foot to head' }), wanted.stanchions.length);
  await page.keyboard.press('Enter');
}

async function makePlan(page: Page): Promise<void> {
  await toRow(page, 'Running backstays');
  await page.keyboard.press('4');
  const plan = pane(page, 'Plan');
  await expect(plan.getByRole('heading').first()).toBeVisible();
  await page.keyboard.press('F6');
  await press(page, plan.getByRole('button', { name: 'Make a plan' }));
  // Its name waits to be typed over.
  await expect(plan.getByRole('textbox', { name: 'Name of the plan' })).toBeFocused();
  await page.keyboard.type(wanted.plan);
  await tabTo(page, plan.getByRole('combobox', { name: /^New item about Running backstays/ }));
  await page.keyboard.type('slim');
  await press(page, plan.getByRole('button', { name: 'Add the item' }));
  await expect(plan.getByRole('button', { name: 'Running backstays: slimmer' })).toBeFocused();
  const diameter = plan.getByRole('textbox', { name: 'New diameter', exact: true });
  await retype(page, diameter, wanted.backstays.diameter);
  await press(page, plan.locator('.plans-chart summary'));
}

async function leaveOutTheFlag(page: Page): Promise<void> {
  await toRow(page, 'Flag below the spreader');
  await page.keyboard.press('x');
  await expect(ledgerPlace(page).getByText('left out of the sum: no reason given yet')).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toBeFocused();
  await tabTo(page, page.getByRole('textbox', { name: 'Reason for leaving it out' }));
  await page.keyboard.type(wanted.reason);
  await expect(ledgerPlace(page).getByText(wanted.reason)).toBeVisible();
}

/** Takes back plan and exclusion, step by step, and does them again; which plan is looked at is no step. */
async function undoAndRedo(page: Page): Promise<void> {
  const steps = await undoUntilNoPlan(page, () => page.keyboard.press('Control+z'));
  // The plan that comes back is chosen again.
  for (let step = 0; step < steps; step += 1) await page.keyboard.press('Control+Shift+z');
}

test('the whole job by keyboard alone: every figure agrees with one worked out outside the page, and the file comes back byte for byte', async ({
  page,
}) => {
  await openDemo(page);
  await makeProject(page);
  await setCondition(page);
  await addFittings(page);
  await editStanchions(page);

  const asSailed = workedOut((await save(page)).text, false);
  expectTyped(asSailed);
  await expectRowsAsSailed(page, asSailed.ledger);
  expectSecondRoute(asSailed, 'Flag below the spreader');
  await toRow(page, 'Stanchions');
  await page.keyboard.press('1');
  await expectWorking(page, 'Stanchions', asSailed.ledger);

  await makePlan(page);
  await expectSaving(page, workedOut((await save(page)).text, true).ledger);
  await leaveOutTheFlag(page);
  const file = await save(page);
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
  expect(await save(page)).toEqual(file);

  // Something that the file knows nothing of.
  await toRow(page, 'Stanchions');
  await page.keyboard.press('Delete');
  await expect(rowOf(page, 'Stanchions')).toHaveCount(0);
  const choosing = page.waitForEvent('filechooser');
  await page.keyboard.press('Control+o');
  await (
    await choosing
  ).setFiles({ name: file.name, mimeType: 'application/json', buffer: Buffer.from(file.text) });
  await expectJustOpened(page);
  expect(await save(page)).toEqual(file);
});
