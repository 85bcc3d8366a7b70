import { readFileSync } from 'node:fs';
import { expect, type Page } from 'playwright/test';

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
