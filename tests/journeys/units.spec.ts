import { expect, test, type Page } from 'playwright/test';
import { openDemo, savedFile } from './openPage';

/** Opens the choice of units, says each, and closes it. */
async function choose(page: Page, ...choices: readonly (readonly [kind: string, unit: string])[]) {
  await page.getByRole('button', { name: 'Units', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Units' });
  for (const [kind, unit] of choices) {
    await dialog.getByRole('group', { name: kind }).getByRole('radio', { name: unit, exact: true }).check();
  }
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
}

const metric = 'hp (metric), 735.499 W';

/** What the ledger, the margin and a field say in metric horsepower and metres per second. */
async function expectMetric(page: Page): Promise<void> {
  const ledger = page.getByRole('region', { name: 'Ledger', exact: true });
  await expect(ledger.getByRole('columnheader', { name: /hp.\(metric\)/ }).first()).toBeVisible();
  await expect(ledger.getByText(/\d.W$/)).toHaveCount(0);
  const margin = page.getByRole('region', { name: 'Condition and plan' });
  await expect(margin.getByRole('table', { name: /Apparent wind/ })).toContainText(/deck.*\d.m\/s/);
  await expect(margin.getByText(/\d.kn\b/)).toHaveCount(0);
  await page.locator('.side-words').getByText('Condition').click();
  await expect(page.getByRole('textbox', { name: 'Boat speed' })).toHaveValue(/^[\d.]+ m\/s$/);
}

test('metric horsepower and m/s, chosen once, stand everywhere and stay; the file knows nothing of it', async ({
  page,
}) => {
  await openDemo(page);
  const usual = await savedFile(page);
  await choose(page, ['Speed', 'm/s'], ['Power', metric]);
  await expectMetric(page);
  await page.locator('.side-words').getByText('Working').click();
  await expect(page.getByText(/The working is in SI; its answers stand in your units too/)).toBeVisible();
  expect(await savedFile(page)).toEqual(usual);
  await page.reload();
  await expectMetric(page);
  await choose(page, ['Speed', 'kn'], ['Power', 'W']);
  await expect(page.getByRole('textbox', { name: 'Boat speed' })).toHaveValue(/^[\d.]+ kn$/);
  expect(await savedFile(page)).toEqual(usual);
});

test('a choice takes nothing from the page: half-typed text, selection, scroll and the open pane stay', async ({
  page,
}) => {
  await openDemo(page);
  await page.locator('.side-words').getByText('Condition').click();
  const boatSpeed = page.getByRole('textbox', { name: 'Boat speed' });
  await boatSpeed.fill('8 k');
  const scroll = page.locator('.ledger-scroll');
  await scroll.evaluate((place) => {
    place.scrollTop = 300;
  });
  const topPx = await scroll.evaluate((place) => place.scrollTop);
  expect(topPx).toBeGreaterThan(100);
  await choose(page, ['Force', 'kgf'], ['Lengths and heights', 'ft']);
  await expect(boatSpeed).toHaveValue('8 k');
  expect(await scroll.evaluate((place) => place.scrollTop)).toBeCloseTo(topPx, -1);
});

test('by keyboard alone, and on a phone without a sideways scroll', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page);
  const units = page.getByRole('button', { name: 'Units', exact: true });
  await expect(units).toBeVisible();
  const overflowPx = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(await overflowPx()).toBeLessThanOrEqual(0);
  await units.focus();
  await page.keyboard.press('Enter');
  const power = page.getByRole('dialog', { name: 'Units' }).getByRole('group', { name: 'Power' });
  await power.getByRole('radio', { name: 'W', exact: true }).focus();
  await page.keyboard.press('ArrowDown');
  await expect(power.getByRole('radio', { name: /mechanical/ })).toBeChecked();
  await page.keyboard.press('Escape');
  await expect(units).toBeFocused();
  await expect(page.getByRole('region', { name: 'Ledger', exact: true })).toContainText(/hp.\(mechanical\)/);
  expect(await overflowPx()).toBeLessThanOrEqual(0);
});
