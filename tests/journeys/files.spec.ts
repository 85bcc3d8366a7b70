import { expect, test, type Page } from 'playwright/test';
import { badFile, chooseFile, goodFile, openDemo, type TextFile } from './openPage';

/** Drops files on the page the way a browser does. */
async function drop(page: Page, files: readonly TextFile[]): Promise<void> {
  const transfer = await page.evaluateHandle((each) => {
    const data = new DataTransfer();
    for (const { name, text } of each) data.items.add(new File([text], name, { type: 'application/json' }));
    return data;
  }, files);
  await page.dispatchEvent('body', 'dragover', { dataTransfer: transfer });
  await expect(page.getByText('Let go to open the project file.')).toBeVisible();
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
  await expect(page.getByText('Let go to open the project file.')).toBeHidden();
}

test('opens a file from disk and the demo again', async ({ page }) => {
  await openDemo(page);
  await chooseFile(page, goodFile());
  await expect(page).toHaveTitle('Test hull – drag ledger – Windtoll');
  await page.getByRole('button', { name: 'Projects' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Open the demo' }).click();
  await expect(page).toHaveTitle('Quillamoor – drag ledger – Windtoll');
});

test('a bad file shows its errors, one line each, and keeps what was open', async ({ page }) => {
  await openDemo(page);
  await chooseFile(page, badFile());
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('bad.json did not open: 2 errors. What was open stays.');
  await alert.getByText('did not open').click();
  await expect(alert.getByRole('listitem')).toHaveCount(2);
  await expect(alert.getByRole('listitem').first()).toBeVisible();
  await expect(page).toHaveTitle('Quillamoor – drag ledger – Windtoll');
  await chooseFile(page, goodFile());
  await expect(page).toHaveTitle('Test hull – drag ledger – Windtoll');
  await expect(alert).toBeEmpty();
});

test('opens a file that is dropped on the page, and refuses two', async ({ page }) => {
  await openDemo(page);
  await drop(page, [goodFile()]);
  await expect(page).toHaveTitle('Test hull – drag ledger – Windtoll');
  await drop(page, [goodFile(), badFile()]);
  await expect(page.getByRole('alert')).toContainText('did not open: 1 error');
  await expect(page).toHaveTitle('Test hull – drag ledger – Windtoll');
});
