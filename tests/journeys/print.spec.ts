import { expect, test } from 'playwright/test';
import { openDemo } from './openPage';

test('prints the sum, every note and every row, and no control', async ({ page }) => {
  await openDemo(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('Open a file')).toBeHidden();
  await expect(page.getByRole('button', { name: /more$/ })).toBeHidden();
  await expect(page.locator('.ledger-totals')).toBeVisible();
  await expect(page.locator('.footnotes li').last()).toBeVisible();
  const cut = await page
    .locator('.ledger-scroll')
    .evaluate((element) => element.scrollHeight - element.clientHeight);
  expect(cut).toBe(0);
  const sum = await page.locator('.ledger-totals').boundingBox();
  const firstRow = await page.locator('.ledger-row').first().boundingBox();
  expect(sum?.y ?? Infinity).toBeLessThan(firstRow?.y ?? 0);
});
