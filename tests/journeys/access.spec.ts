import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import { badFile, chooseFile, goodFile, openDemo } from './openPage';

const sizes = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];

for (const colorScheme of ['light', 'dark'] as const) {
  for (const viewport of sizes) {
    test(`axe finds nothing: ${colorScheme}, ${viewport.width} x ${viewport.height}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize(viewport);
      await openDemo(page);
      await chooseFile(page, badFile());
      await page.getByRole('alert').getByText('did not open').click();
      const isPhone = viewport.width < 600;
      if (isPhone) await page.getByRole('button', { name: /Upwind, one reef/ }).click();
      const ledger = await new AxeBuilder({ page }).analyze();
      expect(ledger.violations).toEqual([]);
      if (!isPhone) return;
      await page.locator('.pane-swap').getByText('Working').click();
      const working = await new AxeBuilder({ page }).analyze();
      expect(working.violations).toEqual([]);
    });
  }
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in any pane: ${colorScheme}`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme });
    await openDemo(page);
    await chooseFile(page, goodFile());
    await expect(page).toHaveTitle(/Test hull/);
    for (const pane of ['Edit', 'Plan', 'Condition', 'Methods']) {
      await page.locator('.side-words').getByText(pane, { exact: true }).click();
      const region = page.getByRole('region', { name: pane, exact: true });
      await expect(region.getByRole('heading').first()).toBeVisible();
      const { violations } = await new AxeBuilder({ page }).include('.working-place').analyze();
      expect(violations, pane).toEqual([]);
    }
  });

  test(`axe finds nothing in any dialog and in an empty ledger: ${colorScheme}`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme });
    await openDemo(page);
    await chooseFile(page, goodFile());
    const dialog = page.getByRole('dialog');
    for (const name of ['Projects', 'Keys', 'New project']) {
      await page.getByRole('button', { name }).click();
      await expect(dialog).toBeVisible();
      if (name === 'Projects') await expect(dialog.getByRole('listitem')).toHaveCount(1);
      const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
      expect(violations, name).toEqual([]);
      if (name !== 'New project') await page.keyboard.press('Escape');
    }
    await dialog.getByRole('button', { name: 'Make the project' }).click();
    await expect(page.getByRole('heading', { name: 'Nothing stands in the wind yet' })).toBeVisible();
    const empty = await new AxeBuilder({ page }).analyze();
    expect(empty.violations).toEqual([]);
  });
}
