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

test('many columns lie across the paper, as large as it allows, and no text of theirs is cut', async ({
  page,
}) => {
  await openDemo(page);
  const upright = await page.pdf(a4);
  await page.getByText('Columns', { exact: true }).click();
  await page.getByLabel('largest doubts, by source').check();
  const across = await page.pdf(a4);
  expect([upright, across].map(firstPagePt)).toEqual([
    [595, 842],
    [842, 595],
  ]);

  await page.emulateMedia({ media: 'print' });
  for (const widthPx of [718, 1047]) {
    await page.setViewportSize({ width: widthPx, height: 700 });
    const { sheetPx, tablePx, cut } = await page.locator('.ledger-sheet').evaluate((sheet) => {
      const cells = [...sheet.querySelectorAll('tbody :is(.row-pick, .column-doubts)')];
      return {
        sheetPx: sheet.getBoundingClientRect().width,
        tablePx: sheet.querySelector('.ledger-table')?.getBoundingClientRect().width,
        cut: cells.filter((cell) => cell.scrollWidth > cell.clientWidth + 1).map((cell) => cell.textContent),
      };
    });
    expect(tablePx).toBeCloseTo(sheetPx, 0);
    expect(cut).toEqual([]);
  }
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

const margin = '10mm';
const a4 = {
  format: 'A4',
  preferCSSPageSize: true,
  margin: { top: margin, right: margin, bottom: margin, left: margin },
} as const;

/** Width and height of the first page, whole points. */
function firstPagePt(pdf: Buffer): number[] {
  const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf.toString('latin1'));
  return [box?.[1], box?.[2]].map((side) => Math.floor(Number(side)));
}
