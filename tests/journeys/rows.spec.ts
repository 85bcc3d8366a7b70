import { expect, test, type Page } from 'playwright/test';
import { openDemo } from './openPage';

function totals(page: Page) {
  return page.locator('.ledger-totals');
}

function rows(page: Page) {
  return page.locator('.row-pick');
}

test('adds a fitting, edits a size, duplicates, undoes all and redoes, by keyboard alone', async ({
  page,
}) => {
  await openDemo(page);
  const first = (await totals(page).textContent()) ?? '';
  const count = await rows(page).count();

  await page.locator('.row-pick[tabindex="0"]').focus();
  await page.keyboard.press('n');
  await expect(page.getByRole('dialog', { name: 'Add a fitting' })).toBeVisible();
  await expect(page.getByRole('searchbox', { name: 'Search' })).toBeFocused();
  await page.keyboard.type('cap shroud');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toBeFocused();
  await expect(rows(page)).toHaveCount(count + 1);
  await expect(totals(page)).not.toHaveText(first);
  const added = (await totals(page).textContent()) ?? '';

  const diameter = page.getByRole('textbox', { name: 'Diameter', exact: true });
  for (let press = 0; press < 12; press += 1) {
    if (await diameter.evaluate((field) => field === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await expect(diameter).toBeFocused();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('80 mm');
  await expect(totals(page)).not.toHaveText(added);
  await page.keyboard.press('Enter');
  const thick = (await totals(page).textContent()) ?? '';

  await page.keyboard.press('Escape');
  if (!(await page.locator('.row-pick:focus').count())) await page.keyboard.press('Escape');
  await expect(page.locator('.row-pick:focus')).toHaveCount(1);
  await page.keyboard.press('d');
  await expect(rows(page)).toHaveCount(count + 2);
  await expect(page.locator('.row-pick:focus')).toContainText(', copy');
  await expect(totals(page)).not.toHaveText(thick);
  const last = (await totals(page).textContent()) ?? '';

  for (let press = 0; press < 12; press += 1) await page.keyboard.press('Control+z');
  await expect(rows(page)).toHaveCount(count);
  await expect(totals(page)).toHaveText(first);
  for (let press = 0; press < 12; press += 1) await page.keyboard.press('Control+Shift+z');
  await expect(rows(page)).toHaveCount(count + 2);
  await expect(totals(page)).toHaveText(last);
});

test('by keyboard: a zone is named, moved and deleted from the row’s zone, and no fitting is lost', async ({
  page,
}) => {
  await openDemo(page, '#row=stanchions');
  const first = (await totals(page).textContent()) ?? '';
  const count = await rows(page).count();
  await page.keyboard.press('3');
  const summary = page.getByText('Name, order or delete the zones');
  await summary.focus();
  await page.keyboard.press('Enter');
  const bow = page.getByRole('textbox', { name: 'Name of zone 1' });
  await bow.focus();
  await page.keyboard.press('End');
  await page.keyboard.type(' and pulpit');
  const heads = page.getByRole('rowheader', { name: /^(?:Bow and pulpit|Side decks)/ });
  await expect(heads.first()).toContainText('Bow and pulpit');
  await page.keyboard.press('Alt+ArrowDown');
  await expect(heads.first()).toContainText('Side decks');
  await expect(page.getByRole('textbox', { name: 'Name of zone 2' })).toBeFocused();
  await page.getByRole('button', { name: 'Delete Bow and pulpit' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('combobox', { name: /^Move its 7 fittings to/ })).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Moved to Side decks: 7 fittings.')).toBeVisible();
  await expect(heads).toHaveCount(1);
  await expect(rows(page)).toHaveCount(count);
  await expect(totals(page)).toHaveText(first);
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+z');
  await expect(page.getByRole('rowheader', { name: /^Bow/ }).first()).toBeVisible();
});
