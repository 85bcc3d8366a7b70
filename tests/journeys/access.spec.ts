import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import { badFile, chooseFile, openDemo } from './openPage';

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
