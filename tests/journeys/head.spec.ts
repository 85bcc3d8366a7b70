import { expect, test } from 'playwright/test';
import { openDemo, saveStatus } from './openPage';

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

test('on a phone the head says that this is a demo, until there is something to say of the storage', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page);
  const demo = page.getByRole('banner').getByText('the demo, an invented boat');
  await expect(demo).toBeInViewport({ ratio: 1 });
  expect(await demo.evaluate(({ scrollWidth, clientWidth }) => scrollWidth <= clientWidth)).toBe(true);
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  await expect(page.locator('.file-name')).toBeHidden();
});

test('on a phone the head says in full that the work is saved', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page);
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser \d\d:\d\d$/);
  const isWhole = await saveStatus(page).evaluate(
    ({ scrollWidth, clientWidth }) => scrollWidth <= clientWidth,
  );
  expect(isWhole).toBe(true);
  await expect(saveStatus(page)).toBeInViewport({ ratio: 1 });
});

test('from a phone to a desk the bars and the savings of the ledger are in sight without scrolling', async ({
  page,
}) => {
  await openDemo(page);
  for (const width of [600, 700, 768, 800, 850, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    const box = await page.locator('.ledger-scroll').boundingBox();
    const rightEdge = (box?.x ?? 0) + (box?.width ?? 0);
    for (const column of ['bar', 'saving']) {
      const head = page.locator(`.ledger-scroll thead .column-${column}`);
      await expect
        .poll(async () => {
          const at = await head.boundingBox();
          return at === null ? Infinity : Math.round(at.x + at.width);
        })
        .toBeLessThanOrEqual(Math.round(rightEdge));
    }
  }
});
