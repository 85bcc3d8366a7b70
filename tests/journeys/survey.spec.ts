import { AxeBuilder } from '@axe-core/playwright';
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from 'playwright/test';
import { fiveThousandRows } from '../data/tables/fiveThousandRows';
import { openDemo, savedFile } from './openPage';

async function openSurvey(page: Page): Promise<void> {
  await openDemo(page);
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Survey' }).click();
  await expect(page).toHaveTitle('Survey – Windtoll');
  await expect(page.getByRole('heading', { name: 'Bring in a table' })).toBeVisible();
}

async function paste(page: Page, text: string): Promise<void> {
  await page.getByRole('textbox', { name: /paste them here/ }).fill(text);
  await page.getByRole('button', { name: 'Read the table' }).click();
}

function data(name: string): string {
  return readFileSync(`tests/data/tables/${name}`, 'utf8');
}

test('a pasted table is mapped, mended, imported, undone, and found in the ledger', async ({ page }) => {
  await openSurvey(page);
  await paste(page, data('no-units.csv'));
  await page.getByRole('combobox', { name: 'Unit of Diameter' }).selectOption('mm');
  await page.getByRole('combobox', { name: 'Unit of Length' }).selectOption('m');
  await page.getByRole('button', { name: 'Put the table away' }).click();

  await paste(page, data('pasted-tabs.txt'));
  await expect(page.getByText('3 rows can go in, 1 row to be mended.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Width or diameter, row 6' }).fill('300');
  await page.getByRole('textbox', { name: 'Thickness, row 6' }).fill('250 mm');
  await page.getByRole('button', { name: 'Import 4 rows' }).click();
  await expect(page.getByText('Imported: 4 rows. Undo takes that back.')).toBeVisible();
  await page.getByRole('button', { name: 'Show the first of them in the ledger' }).click();
  const ledger = page.getByRole('region', { name: 'Ledger', exact: true });
  await expect(ledger.getByRole('button', { name: 'Jackstaff, old', exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(ledger.getByRole('button', { name: 'Jackstaff, old', exact: true })).toBeHidden();
});

test('a bad row is there again after a reload', async ({ page }) => {
  await openSurvey(page);
  await paste(page, data('pasted-tabs.txt'));
  await page.getByRole('textbox', { name: 'Note, row 6' }).fill('by eye');
  await page.getByRole('button', { name: 'Import 3 rows' }).click();
  await expect(page.locator('.save-status')).toContainText(/saved/i);
  await page.reload();
  await expect(page).toHaveTitle('Survey – Windtoll');
  await expect(page.getByText('1 row to be mended.')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Note, row 6' })).toHaveValue('by eye');
});

test('the template goes out, and comes back filled from a file', async ({ page }) => {
  await openSurvey(page);
  const template = await savedFile(page, () =>
    page.getByRole('button', { name: 'Save the CSV template' }).click(),
  );
  expect(template.name).toMatch(/, survey\.csv$/);
  expect(template.text).toContain('Item,Zone,Shape,Width or diameter (mm)');
  const filled = template.text.replace(/^(Bobstay,[^,]*,[^,]*),,,/m, '$1,9,1.4,');
  expect(filled).not.toBe(template.text);
  await page
    .getByLabel('Choose a CSV file')
    .setInputFiles({ name: 'filled.csv', mimeType: 'text/csv', buffer: Buffer.from(filled) });
  await expect(page.getByText(/^1 row can go in, \d+ rows of the template, not filled\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Import 1 row' }).click();
  await expect(page.getByText('Imported: 1 row.')).toBeVisible();
});

test('the fittings go out as a survey and change nothing when they come back', async ({ page }) => {
  await openSurvey(page);
  const survey = await savedFile(page, () =>
    page.getByRole('button', { name: 'Save the fittings as a survey' }).click(),
  );
  await paste(page, survey.text);
  await page
    .getByRole('combobox', { name: /with a name that the ledger has are/ })
    .selectOption('replace the one in the ledger');
  await page.getByRole('button', { name: /^Import \d+ rows$/ }).click();
  await expect(page.getByText('Nothing changed: 50 rows say what the ledger has.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toHaveAttribute(
    'aria-disabled',
    'true',
  );
});

test('the ledger goes out as CSV, a row for each fitting', async ({ page }) => {
  await openDemo(page);
  const ledger = await savedFile(page, () => page.getByRole('button', { name: 'Save as CSV' }).click());
  expect(ledger.name).toMatch(/, ledger\.csv$/);
  const [head = '', ...rows] = ledger.text.trim().split('\r\n');
  expect(head).toContain('"track power, before (W)"');
  const cells = rows.map((row) => Number(row.split(',')[0]));
  expect(cells).toEqual(Array.from({ length: 50 }, (_, i) => i + 1));
});

test('a survey of 5000 rows is read and paged within seconds', async ({ page }) => {
  test.slow();
  await openSurvey(page);
  const started = Date.now();
  await page.getByRole('textbox', { name: /paste them here/ }).evaluate((field, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', text);
    field.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, fiveThousandRows());
  await expect(page.getByText('1 to 100 of 5000 rows')).toBeVisible();
  const readMs = Date.now() - started;
  const paged = Date.now();
  await page.getByRole('button', { name: 'Rows after' }).click();
  await expect(page.getByText('101 to 200 of 5000 rows')).toBeVisible();
  const pagedMs = Date.now() - paged;
  await page.getByRole('checkbox', { name: 'Show only rows that need a hand' }).check();
  const typed = Date.now();
  await page.getByRole('textbox', { name: 'Width or diameter, row 51' }).fill('9');
  await expect(page.getByText('4901 rows can go in, 99 rows to be mended.')).toBeVisible();
  const typedMs = Date.now() - typed;
  test.info().annotations.push({ type: 'times', description: JSON.stringify({ readMs, pagedMs, typedMs }) });
  expect(readMs).toBeLessThan(15_000);
  expect(pagedMs).toBeLessThan(5_000);
  expect(typedMs).toBeLessThan(5_000);
});

test('the sheet alone is printed', async ({ page }) => {
  await openSurvey(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('heading', { name: 'Survey of Quillamoor' })).toBeVisible();
  await expect(page.getByText('Bring in a table')).toBeHidden();
  await expect(page.getByRole('navigation', { name: 'Places' })).toBeHidden();
  await expect(page.getByRole('cell', { name: 'Stanchions', exact: true })).toBeVisible();
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 390]) {
    test(`axe finds nothing in the survey: ${colorScheme}, ${width} px`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 844 });
      await openSurvey(page);
      const axe = () => new AxeBuilder({ page }).options({ rules: { 'target-size': { enabled: true } } });
      await page.getByRole('button', { name: 'Show the sheet' }).click();
      expect((await axe().analyze()).violations).toEqual([]);
      await paste(page, data('pasted-tabs.txt'));
      await expect(page.getByText(/1 row to be mended/)).toBeVisible();
      expect((await axe().analyze()).violations).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
    });
  }
}
