import { test } from 'playwright/test';
import { openDemo } from './openPage';

/** Not tests: `npm run screenshots` renews the pictures of the documents with these. */
const pictures = [
  { name: 'ledger-light', colorScheme: 'light', width: 1440, height: 900 },
  { name: 'ledger-dark', colorScheme: 'dark', width: 1440, height: 900 },
  { name: 'ledger-phone', colorScheme: 'light', width: 390, height: 844 },
] as const;

for (const { name, colorScheme, width, height } of pictures) {
  test(name, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height });
    await openDemo(page, '#row=code-sail');
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path: `docs/pictures/${name}.png` });
  });
}
