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

test('on A4 the columns keep the order of a desk, in ink on white also where the screen is dark', async ({
  page,
}) => {
  await openDemo(page);
  const heads = () => page.locator('.ledger-table thead').first().locator('th, td').allTextContents();
  const onScreen = await heads();
  await page.setViewportSize({ width: a4WidthPx, height: 1123 });
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await expect.poll(heads).toEqual(onScreen);
  const ink = await page.locator('.ledger-totals').evaluate((element) => getComputedStyle(element).color);
  expect(ink).toBe('rgb(0, 0, 0)');
});

test('what is chosen is printed as chosen, by browsers that leave grounds out too', async ({ page }) => {
  await openDemo(page);
  await page.emulateMedia({ media: 'print' });
  const chosen = page.getByRole('radio', { name: 'Upwind, one reef' });
  await expect(chosen).toBeChecked();
  await expect(chosen).toHaveCSS('background-color', 'rgb(0, 0, 0)');
  await expect(chosen).toHaveCSS('print-color-adjust', 'exact');
});

test('no chart of the bench is cut by the edge of the paper', async ({ page }) => {
  await page.goto('/#place=fairing&member=stern-pole');
  const charts = page.locator('.curve-chart');
  await expect(charts.first()).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  // Measured before the script can draw anew: paper does not wait for it.
  const rights = await page.evaluate((widthPx) => {
    document.body.style.width = `${widthPx}px`;
    const drawn = [...document.querySelectorAll('.curve-chart')];
    return drawn.map((chart) => chart.getBoundingClientRect().right);
  }, a4WidthPx);
  expect(rights.length).toBeGreaterThan(0);
  expect(Math.max(...rights)).toBeLessThanOrEqual(a4WidthPx);
});

/** 210 mm at 96 dots an inch. */
const a4WidthPx = 794;
