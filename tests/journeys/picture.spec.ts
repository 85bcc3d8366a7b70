import { readFileSync } from 'node:fs';
import { expect, test, type Page } from 'playwright/test';
import { openDemo } from './openPage';

function picture(page: Page) {
  return page.getByRole('article', { name: 'The boat as the apparent wind sees her' });
}

function said(page: Page) {
  return page.getByRole('status', { name: 'In the picture' });
}

async function openPicture(page: Page): Promise<void> {
  await openDemo(page);
  await page.keyboard.press('v');
  await expect(picture(page)).toBeVisible();
}

/** The name of what is said, without its number and value. */
async function nameSaid(page: Page): Promise<string> {
  const text = (await said(page).textContent()) ?? '';
  return text.replace(/^\d+ /, '').replace(/: .*$/, '');
}

test('picks the row of what is pressed, and shows the row that is picked', async ({ page }) => {
  await openPicture(page);
  const plane = page.locator('.picture-plane');
  // The hull is the largest thing on every boat: its callout's dot lies on it.
  const callout = page.locator('.picture-callout', { hasText: 'Hull topsides' });
  const dot = await callout.locator('circle').boundingBox();
  const box = await plane.boundingBox();
  if (dot === null || box === null) throw new Error('the hull has no callout');
  await plane.click({ position: { x: dot.x + dot.width / 2 - box.x, y: dot.y + dot.height / 2 - box.y } });
  const name = await nameSaid(page);
  const selected = page.locator('.ledger-row.selected');
  await expect(selected).toContainText(name);
  const ledger = page.getByRole('region', { name: 'Ledger', exact: true });
  await ledger.getByRole('button', { name: 'Staysail, rolled', exact: true }).click();
  await expect(said(page)).toContainText('Staysail, rolled');
});

test('is walked by keyboard in the order of the ledger, and one key goes back to the working', async ({
  page,
}) => {
  await openPicture(page);
  const list = page.getByRole('listbox', { name: 'Fittings in the picture' });
  await list.focus();
  await page.keyboard.press('Home');
  const first = await nameSaid(page);
  await page.keyboard.press('ArrowDown');
  await expect(said(page)).not.toContainText(first);
  await expect(page.locator('.ledger-row.selected')).toContainText(await nameSaid(page));
  await page.keyboard.press('v');
  await expect(page.getByRole('region', { name: 'Working of the selected row' })).toBeVisible();
});

test('follows the plan, the condition and before or after', async ({ page }) => {
  await openPicture(page);
  const words = picture(page).getByText('The picture in words');
  await words.click();
  const text = picture(page).locator('.picture-words p').first();
  await expect(text).toContainText('Upwind, one reef');
  await page.locator('.margin').getByText('before', { exact: true }).click();
  await expect(text).toContainText('Code sail, rolled 499 W');
  await page.locator('.margin').getByText('after', { exact: true }).click();
  await expect(text).not.toContainText('Code sail, rolled 499 W');
  await page.locator('.margin').getByText('Slimmer tubes').first().click();
  await expect(text).toContainText('Code sail, rolled 499 W');
  await page.getByText('Run in a big sea').click();
  await expect(text).toContainText('Run in a big sea');
});

test('turns under the hand and back, and looks from above', async ({ page }) => {
  await openPicture(page);
  const box = await page.locator('.picture-plane').boundingBox();
  if (box === null) throw new Error('no picture');
  await page.mouse.move(box.x + 60, box.y + 60);
  await page.mouse.down();
  await page.mouse.move(box.x + 160, box.y + 60, { steps: 5 });
  await page.mouse.up();
  await expect(page.getByText(/further round$/)).toBeVisible();
  await page.getByRole('button', { name: 'Turn her back' }).click();
  await expect(page.getByText(/further round$/)).toHaveCount(0);
  await page.getByText('From above', { exact: true }).click();
  await expect(page.getByRole('figure', { name: /^Seen from above/ })).toBeVisible();
});

test('is saved as SVG and as PNG at twice its size', async ({ page }) => {
  await openPicture(page);
  const save = async (name: string): Promise<Buffer> => {
    const downloading = page.waitForEvent('download');
    await picture(page).getByRole('button', { name }).click();
    const download = await downloading;
    return readFileSync(await download.path());
  };
  const svg = (await save('Save as SVG')).toString('utf8');
  expect(svg).toContain('Quillamoor, after Stow and strike');
  expect(svg).toContain('Upwind, one reef');
  const [, width = '', height = ''] = /width="(\d+)" height="(\d+)"/.exec(svg) ?? [];
  const png = await save('Save as PNG');
  expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2 * Number(width), 2 * Number(height)]);
});
