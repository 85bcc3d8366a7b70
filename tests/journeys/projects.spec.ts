import { expect, test, type Page } from 'playwright/test';
import { chooseFile, goodFile, openDemo, renameRow, saveStatus } from './openPage';

function dialog(page: Page) {
  return page.getByRole('dialog');
}

test('a newcomer makes a project and has its ledger with two choices', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('button', { name: 'New project' }).click();
  await dialog(page).getByLabel('Name').fill('Marlow trial');
  await dialog(page).getByLabel('Length of the hull').fill('11,4');
  await dialog(page).getByLabel('Largest beam').fill('3600 mm');
  await dialog(page).getByLabel('Mast top above the water').fill('nonsense');
  await dialog(page).getByRole('button', { name: 'Make the project' }).click();
  await expect(dialog(page).getByLabel('Mast top above the water')).toBeFocused();
  await dialog(page).getByLabel('Mast top above the water').fill('56 ft');
  await dialog(page).getByRole('button', { name: 'Make the project' }).click();
  await expect(page).toHaveTitle('Marlow trial – drag ledger – Windtoll');
  await expect(page.getByRole('heading', { name: 'Nothing stands in the wind yet' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Add these 15 to the ledger' })).toBeFocused();
  await page.getByLabel('Boom').uncheck();
  await page.getByRole('button', { name: 'Add these 14 to the ledger' }).click();
  await expect(page.locator('.ledger-row')).toHaveCount(14);
  await expect(page.locator('.ledger-row.selected .row-pick')).toBeFocused();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('heading', { name: 'Nothing stands in the wind yet' })).toBeVisible();
  await page.keyboard.press('Control+Shift+Z');
  await expect(page.locator('.ledger-row')).toHaveCount(14);
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  await page.goto('/');
  await expect(page).toHaveTitle('Marlow trial – drag ledger – Windtoll');
});

test('on a phone a new project opens on its first step, whatever pane was up', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page);
  await page.locator('.pane-swap').getByText('Condition', { exact: true }).click();
  await page.getByRole('button', { name: 'Projects' }).click();
  await dialog(page).getByRole('button', { name: 'New project' }).click();
  await dialog(page).getByRole('button', { name: 'Make the project' }).click();
  await expect(page.getByRole('heading', { name: 'Nothing stands in the wind yet' })).toBeVisible();
});

test('an empty ledger leads to the catalogue', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('button', { name: 'New project' }).click();
  await dialog(page).getByRole('button', { name: 'Make the project' }).click();
  await page.getByRole('button', { name: 'Add a fitting from the catalogue' }).click();
  await expect(dialog(page).getByRole('heading', { name: 'Add a fitting' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog(page)).toHaveCount(0);
});

test('several projects: listed, duplicated, opened, removed after a question', async ({ page }) => {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  await chooseFile(page, goodFile());
  await expect(page).toHaveTitle(/Test hull/);
  await page.getByRole('button', { name: 'Projects' }).click();
  const items = dialog(page).getByRole('listitem');
  await expect(items).toHaveCount(2);
  await expect(items.filter({ hasText: '(open)' })).toHaveCount(1);
  const demo = items.filter({ hasNotText: '(open)' });
  await expect(demo).toContainText(/\d{4}-\d\d-\d\d \d\d:\d\d/);
  await demo.getByRole('button', { name: /^Duplicate/ }).click();
  await expect(items).toHaveCount(3);
  const copy = items.filter({ hasText: '(copy)' });
  await copy.getByRole('button', { name: /^Remove/ }).click();
  await copy.getByRole('button', { name: /^Keep/ }).click();
  await expect(items).toHaveCount(3);
  await copy.getByRole('button', { name: /^Remove/ }).click();
  await copy.getByRole('button', { name: /^Remove/ }).click();
  await expect(items).toHaveCount(2);
  await demo.getByRole('button', { name: /^Open/ }).click();
  await expect(page).toHaveTitle(/Quillamoor/);
  await expect(page.getByRole('button', { name: 'Carbon boom', exact: true })).toBeVisible();
});

test('the open project can be removed; the demo takes its place and the removed one stays away', async ({
  page,
}) => {
  await openDemo(page);
  await chooseFile(page, goodFile());
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  await page.getByRole('button', { name: 'Projects' }).click();
  await dialog(page)
    .getByRole('button', { name: /^Remove/ })
    .click();
  await dialog(page)
    .getByRole('button', { name: /^Remove/ })
    .click();
  await expect(dialog(page).getByRole('listitem')).toHaveCount(0);
  await expect(page).toHaveTitle(/Quillamoor/);
  await page.goto('/');
  await expect(page).toHaveTitle(/Quillamoor/);
});
