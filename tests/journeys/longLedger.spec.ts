import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from 'playwright/test';
import { benchProjectText, fittingCount } from '../bench/ui/benchProject';
import { chooseFile, openDemo } from './openPage';

/** A project of 200 rows, of which only those in sight are drawn. */
async function openLong(page: Page): Promise<void> {
  await openDemo(page);
  await chooseFile(page, { name: 'long.json', text: benchProjectText() });
  await expect(page).toHaveTitle(/^Bench/);
}

function table(page: Page): Locator {
  return page.getByRole('table', { name: /What each fitting costs/ });
}

function drawnRows(page: Page): Locator {
  return table(page).locator('.ledger-row');
}

/** The places of the drawn rows among all rows, as a screen reader is told them. */
function rowIndexes(page: Page): Promise<number[]> {
  return table(page)
    .locator('tr[role="row"]')
    .evaluateAll((rows) => rows.map((row) => Number(row.getAttribute('aria-rowindex'))));
}

/** True when no part of the rows' box is empty: what is seen lies on a drawn line. */
function isFilled(page: Page): Promise<boolean> {
  return page.locator('.ledger-scroll').evaluate((box) => {
    const { left, top, height } = box.getBoundingClientRect();
    const heights = Array.from({ length: 20 }, (_, i) => top + ((i + 0.5) / 20) * height);
    return heights.every((y) => document.elementFromPoint(left + 200, y)?.closest('.gap-line') === null);
  });
}

test('a long ledger draws the rows in sight and tells the place of each among all', async ({ page }) => {
  await openLong(page);
  expect(await drawnRows(page).count()).toBeLessThan(60);
  const count = Number(await table(page).getAttribute('aria-rowcount'));
  expect(count).toBeGreaterThan(fittingCount);
  const indexes = await rowIndexes(page);
  expect(indexes[0]).toBe(1);
  expect(indexes).toEqual([...indexes].sort((a, b) => a - b));
  await page.locator('.ledger-scroll').hover();
  for (let turn = 0; turn < 12; turn += 1) {
    await page.mouse.wheel(0, 400);
    await expect.poll(() => isFilled(page)).toBe(true);
  }
  expect((await rowIndexes(page)).at(-1)).toBeGreaterThan(100);
});

test('axe finds nothing in a long ledger', async ({ page }) => {
  await openLong(page);
  await page.locator('.ledger-scroll').evaluate((box) => {
    box.scrollTop = 2000;
  });
  await expect.poll(() => isFilled(page)).toBe(true);
  const { violations } = await new AxeBuilder({ page }).include('.ledger-place').analyze();
  expect(violations).toEqual([]);
});

test('gaps are as high as the rows that are not drawn', async ({ page }) => {
  await openLong(page);
  const height = () => table(page).evaluate((element) => element.getBoundingClientRect().height);
  const windowed = await height();
  const rows = await drawnRows(page).count();
  await page.setViewportSize({ width: 1440, height: 9000 });
  await expect(drawnRows(page)).toHaveCount(fittingCount);
  expect(rows).toBeLessThan(fittingCount);
  expect(await height()).toBeCloseTo(windowed, 0);
});

test('the keys reach rows that are not drawn yet, and what has the focus stays', async ({ page }) => {
  await openLong(page);
  await page.getByRole('radio', { name: /Refit/ }).focus();
  await page.keyboard.press('l');
  await page.keyboard.press('Home');
  const first = await page.locator(':focus').textContent();
  await page.keyboard.press('End');
  const last = page.locator(':focus');
  await expect(last).toBeInViewport({ ratio: 1 });
  await expect(last).toHaveAttribute('aria-current', 'true');
  const lastRow = table(page).locator('tr', { has: last });
  await expect(lastRow).toHaveAttribute(
    'aria-rowindex',
    (await table(page).getAttribute('aria-rowcount')) ?? '',
  );
  for (let press = 0; press < 40; press += 1) await page.keyboard.press('ArrowUp');
  await expect(page.locator(':focus')).toBeInViewport({ ratio: 1 });
  const focused = await page.locator(':focus').textContent();
  await page.locator('.ledger-scroll').evaluate((box) => {
    box.scrollTop = 0;
  });
  await expect(table(page).getByRole('button', { name: first ?? '', exact: true })).toBeInViewport();
  await expect(page.locator(':focus')).toHaveText(focused ?? '');
  await page.keyboard.press('ArrowDown');
  await expect(page.locator(':focus')).toBeInViewport({ ratio: 1 });
});

test('a row that is selected elsewhere comes into sight', async ({ page }) => {
  await openLong(page);
  await expect(table(page).locator('[data-fitting-id="row-200"]')).toHaveCount(0);
  await page.evaluate(() => {
    window.location.hash = window.location.hash.replace(/row=[^&]*/, 'row=row-200');
  });
  await expect(table(page).locator('[data-fitting-id="row-200"]')).toBeInViewport({ ratio: 1 });
  expect(await isFilled(page)).toBe(true);
});

test('all rows are printed', async ({ page }) => {
  await openLong(page);
  await page.evaluate(() => {
    window.addEventListener('beforeprint', () => {
      document.body.dataset['rows'] = String(document.querySelectorAll('.ledger-row').length);
    });
  });
  const pdf = await page.pdf();
  expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length).toBeGreaterThan(5);
  expect(await page.evaluate(() => document.body.dataset['rows'])).toBe(String(fittingCount));
  await page.emulateMedia({ media: 'print' });
  await expect(drawnRows(page)).toHaveCount(fittingCount);
  await page.emulateMedia({ media: 'screen' });
  await expect.poll(() => drawnRows(page).count()).toBeLessThan(60);
});

test('a long ledger on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openLong(page);
  await expect.poll(() => drawnRows(page).count()).toBeLessThan(60);
  await page.locator('.ledger-scroll').evaluate((box) => {
    box.scrollTop = 4000;
  });
  await expect.poll(() => isFilled(page)).toBe(true);
});
