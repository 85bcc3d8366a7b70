import { expect, test, type Page } from 'playwright/test';
import { serveBuilt, type BuiltServer } from './builtServer';
import { expectDemo, openStored } from './offlinePage';
import { nameField, saveStatus } from './openPage';

let server: BuiltServer;

test.beforeEach(async () => {
  server = await serveBuilt();
});

test.afterEach(async () => {
  await server.stop();
});

test.use({ serviceWorkers: 'allow', viewport: { width: 390, height: 844 } });

/** Which build a page runs: the name of the script that it started with. */
async function expectBuild(page: Page, which: 'first' | 'second'): Promise<void> {
  const source = expect(page.locator('script[type=module]'));
  if (which === 'second') await source.toHaveAttribute('src', /index-second00\.js$/);
  else await source.not.toHaveAttribute('src', /second00/);
}

function offer(page: Page) {
  return page.getByRole('status', { name: 'Storage' });
}

/** As a visit to the page does: the browser looks whether the worker is still the newest. */
async function lookForNewVersion(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration())?.update();
  });
}

async function openPane(page: Page, name: string): Promise<void> {
  await page.locator('.pane-swap').getByText(name, { exact: true }).click();
}

async function renameBoom(page: Page): Promise<void> {
  await page
    .getByRole('region', { name: 'Ledger', exact: true })
    .getByRole('button', { name: 'Boom', exact: true })
    .click();
  await openPane(page, 'Edit');
  await nameField(page).fill('Carbon boom');
}

test('after the first visit the page opens with no network, and so do panes that were never opened', async ({
  page,
  context,
}) => {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  await openStored(page, server.address);
  await server.stop();
  await context.setOffline(true);
  await page.reload();
  await expectDemo(page);
  await openPane(page, 'Plan');
  await expect(
    page.getByRole('region', { name: 'Plan', exact: true }).getByRole('heading').first(),
  ).toBeVisible();
  await renameBoomOffline(page);
  await page.reload();
  await openPane(page, 'Ledger');
  await expect(page.getByRole('button', { name: 'Carbon boom', exact: true })).toBeVisible();
  expect(complaints).toEqual([]);
});

async function renameBoomOffline(page: Page): Promise<void> {
  await openPane(page, 'Ledger');
  await renameBoom(page);
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
}

test('the first page needs no reload before it can lose the network', async ({ page }) => {
  await openStored(page, server.address);
  await server.stop();
  await openPane(page, 'Methods');
  await expect(
    page.getByRole('region', { name: 'Methods', exact: true }).getByRole('heading').first(),
  ).toBeVisible();
});

test('a new version is offered, not forced, and comes when it is asked for; the edits are there', async ({
  page,
}) => {
  await openStored(page, server.address);
  await renameBoom(page);
  server.renew();
  await lookForNewVersion(page);
  await expect(offer(page)).toContainText('A new version of Windtoll is ready.');
  // Whoever reloads for another reason keeps the version they have, and is asked again.
  await page.reload();
  await expect(offer(page)).toContainText('A new version of Windtoll is ready.');
  await expectBuild(page, 'first');
  await offer(page).getByRole('button', { name: 'Later' }).click();
  await expect(offer(page)).toBeEmpty();
  await page.reload();
  await offer(page).getByRole('button', { name: 'Reload into it' }).click();
  await expectBuild(page, 'second');
  await expect(offer(page)).toBeEmpty();
  await openPane(page, 'Ledger');
  await expect(page.getByRole('button', { name: 'Carbon boom', exact: true })).toBeVisible();
});

test('another tab goes on with the old version, and still opens parts that only the old version had', async ({
  page,
  context,
}) => {
  await openStored(page, server.address);
  const other = await context.newPage();
  await other.goto(server.address);
  await expectDemo(other);
  server.renew();
  await lookForNewVersion(page);
  await offer(page).getByRole('button', { name: 'Reload into it' }).click();
  await expectBuild(page, 'second');
  await expectDemo(page);
  await expectBuild(other, 'first');
  // Its script stands neither on the server nor among the new version's files.
  await other.getByRole('button', { name: 'Units' }).click();
  await expect(other.getByRole('dialog').getByRole('heading').first()).toHaveText('Units');
  await other.keyboard.press('Escape');
  const cacheCount = () => page.evaluate(async () => (await caches.keys()).length);
  expect(await cacheCount()).toBe(2);
  // With the last tab of the old version its files go.
  await offer(other).getByRole('button', { name: 'Reload into it' }).click();
  await expectBuild(other, 'second');
  await expect.poll(cacheCount).toBe(1);
});

test('where the storage refuses the work, the offer says to save it to a file first', async ({ page }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('', 'QuotaExceededError');
    };
  });
  await openStored(page, server.address);
  await renameBoom(page);
  server.renew();
  await lookForNewVersion(page);
  await expect(offer(page)).toContainText('save it to a file before you reload');
  await expect(offer(page).getByRole('button', { name: 'Reload into it' })).toHaveCount(0);
  await expect(offer(page).getByRole('button', { name: 'Save to a file' }).first()).toBeVisible();
  await expectBuild(page, 'first');
});
