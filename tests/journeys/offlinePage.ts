import { expect, type Page } from 'playwright/test';

export async function expectDemo(page: Page): Promise<void> {
  await expect(page).toHaveTitle('Quillamoor – drag ledger – Windtoll');
  await expect(page.getByRole('table', { name: /What each fitting costs/ })).toBeAttached();
}

/** Opens the page and waits until it says that it needs no network any more. */
export async function openStored(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expectDemo(page);
  await page.getByRole('button', { name: 'Projects' }).click();
  await expect(page.getByRole('dialog')).toContainText('Works without a network');
  await page.keyboard.press('Escape');
}
