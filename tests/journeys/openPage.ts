import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page } from 'playwright/test';

/** Opens the page and waits until the demo stands in it. */
export async function openDemo(page: Page, hash = ''): Promise<void> {
  await page.goto(`/${hash}`);
  await expect(page).toHaveTitle('Quillamoor – drag ledger – Windtoll');
  await expect(page.getByRole('table', { name: /What each fitting costs/ })).toBeAttached();
}

export interface TextFile {
  readonly name: string;
  readonly text: string;
}

export function goodFile(): TextFile {
  return { name: 'hull.json', text: readFileSync('tests/data/projects/every-kind.json', 'utf8') };
}

/** Two fields of the good file are wrong. */
export function badFile(): TextFile {
  const project = JSON.parse(goodFile().text) as Record<string, unknown>;
  return { name: 'bad.json', text: JSON.stringify({ ...project, name: 3, currency: null }) };
}

/** Chooses a file in the page's file field. */
export async function chooseFile(page: Page, { name, text }: TextFile): Promise<void> {
  await page
    .getByLabel('Open a file')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** How the open project stands with the storage, in the running head. */
export function saveStatus(page: Page): Locator {
  return page.locator('.save-status');
}

/** The first field of the pane in which a row is edited. */
export function nameField(page: Page): Locator {
  return page.getByRole('region', { name: 'Edit', exact: true }).getByLabel('Name', { exact: true });
}

/** Types another name for a row, in the pane beside the ledger. */
export async function renameRow(page: Page, name: string, newName: string): Promise<void> {
  const ledger = page.getByRole('region', { name: 'Ledger', exact: true });
  await ledger.getByRole('button', { name, exact: true }).click();
  await page.locator('.side-words').getByText('Edit').click();
  await expect(nameField(page)).toHaveValue(name);
  await nameField(page).fill(newName);
}

/** Saves to a file and reads what the browser was handed. */
export async function savedFile(
  page: Page,
  save: () => Promise<void> = () => page.getByRole('button', { name: 'Save to a file' }).first().click(),
): Promise<TextFile> {
  const downloading = page.waitForEvent('download');
  await save();
  const download = await downloading;
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}
