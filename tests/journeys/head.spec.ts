import { expect, test } from 'playwright/test';
import { openDemo } from './openPage';

for (const width of [320, 390, 600, 700, 768, 850, 960, 1024, 1280]) {
  test(`at ${width} px the head keeps to the page, every action of it in sight`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await openDemo(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    for (const action of await page.getByRole('banner').locator('button, a, .file-choice').all()) {
      if (!(await action.isVisible())) continue;
      const box = await action.boundingBox();
      expect((box?.x ?? Infinity) + (box?.width ?? 0), await action.innerText()).toBeLessThanOrEqual(width);
    }
  });
}
