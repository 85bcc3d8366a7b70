import { readFileSync } from 'node:fs';
import { expect, test, type Page } from 'playwright/test';
import {
  badFile,
  chooseFile,
  goodFile,
  nameField,
  openDemo,
  renameRow,
  savedFile,
  saveStatus,
} from './openPage';

/** The boom's name in the ledger says what the page holds. */
async function expectBoomIs(page: Page, name: string): Promise<void> {
  await expect(
    page.getByRole('region', { name: 'Ledger', exact: true }).getByRole('button', { name, exact: true }),
  ).toBeVisible();
}

test('a reload keeps the edits and the place', async ({ page }) => {
  await openDemo(page);
  await page.getByText('Fast reach, port tack').click();
  await renameRow(page, 'Boom', 'Carbon boom');
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser \d\d:\d\d$/);
  await page.goto('/');
  await expectBoomIs(page, 'Carbon boom');
  await expect(page.getByRole('radio', { name: 'Fast reach, port tack' })).toBeChecked();
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
});

test('a page that is killed in the middle of typing loses nothing', async ({ page, context }) => {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  await nameField(page).press('End');
  await nameField(page).pressSequentially(' with a claw');
  // At once: the quiet time before a write has not passed.
  await page.close();
  const next = await context.newPage();
  // Where the closed page's last write is late, the second look at the storage finds it.
  await next.goto('/');
  await expectBoomIs(next, 'Carbon boom with a claw');
});

test('what is edited before the storage answers is kept', async ({ page }) => {
  let letThrough = (): void => undefined;
  const isWanted = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  await page.route(/keeper-[^/]*\.js$/, async (route) => {
    await isWanted;
    await route.continue();
  });
  await openDemo(page);
  await renameRow(page, 'Boom', 'Early boom');
  await expect(saveStatus(page)).toHaveText('');
  letThrough();
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  await expectBoomIs(page, 'Early boom');
  await page.goto('/');
  await expectBoomIs(page, 'Early boom');
});

test('a file goes out and in, and the second is the same bytes', async ({ page }) => {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  const first = await savedFile(page);
  expect(first.name).toMatch(/\.windtoll\.json$/);
  await chooseFile(page, goodFile());
  await expect(page).toHaveTitle(/Test hull/);
  await chooseFile(page, first);
  await expectBoomIs(page, 'Carbon boom');
  const second = await savedFile(page);
  expect(second).toEqual(first);
});

test('a bad file is refused and the work stays', async ({ page }) => {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  await chooseFile(page, badFile());
  await expect(page.getByRole('alert')).toContainText('did not open');
  await expectBoomIs(page, 'Carbon boom');
  await page.keyboard.press('Control+z');
  await expectBoomIs(page, 'Boom');
});

/** Two tabs with the same project; the second has saved over what the first opened. */
async function twoTabs(page: Page): Promise<Page> {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Boom of both');
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  const other = await page.context().newPage();
  await other.goto('/');
  await expectBoomIs(other, 'Boom of both');
  await renameRow(other, 'Boom of both', 'Boom of theirs');
  await expect(saveStatus(other)).toHaveText(/^Saved in this browser/);
  await expect(page.getByText(/Another tab saved this project at \d\d:\d\d/).first()).toBeVisible();
  return other;
}

test('a second tab: mine is kept as a copy', async ({ page }) => {
  await twoTabs(page);
  await renameRow(page, 'Boom of both', 'Boom of mine');
  await page.getByRole('button', { name: 'Keep mine as a copy' }).click();
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  await expectBoomIs(page, 'Boom of mine');
  await page.getByRole('button', { name: 'Projects' }).click();
  await expect(page.getByRole('dialog').getByRole('listitem')).toHaveCount(2);
  await expect(page.getByRole('dialog')).toContainText('changed in two tabs, mine of');
});

test('a second tab: theirs is taken', async ({ page }) => {
  const other = await twoTabs(page);
  await page.getByRole('button', { name: 'Take theirs' }).click();
  await expectBoomIs(page, 'Boom of theirs');
  await expectBoomIs(other, 'Boom of theirs');
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
});

test('what is unsaved in an open tab is offered to another only when it has gone', async ({ page }) => {
  const other = await twoTabs(page);
  await other.close();
  await renameRow(page, 'Boom of both', 'Boom of mine');
  await expect.poll(() => page.evaluate(countDrafts)).toBe(1);
  const third = await page.context().newPage();
  await third.goto('/');
  await expectBoomIs(third, 'Boom of theirs');
  const word = third.getByRole('status', { name: 'Storage' });
  // Longer than the second look waits.
  await third.waitForTimeout(1500);
  await expect(word).toBeEmpty();
  await page.close();
  await expect(word).toContainText(/Work that an earlier page left unsaved is kept as “.*unsaved work of/);
  await word.getByRole('button', { name: 'Open it' }).click();
  await expectBoomIs(third, 'Boom of mine');
});

test('a forbidden storage is said aloud, and the download works', async ({ page }) => {
  await page.addInitScript(() => {
    indexedDB.open = () => {
      throw new DOMException('', 'SecurityError');
    };
  });
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  await expect(page.getByRole('status', { name: 'Storage' })).toContainText(
    'This browser keeps nothing: save to a file.',
  );
  expect((await savedFile(page)).text).toContain('"Carbon boom"');
});

test('a full storage is said aloud, and the download works', async ({ page }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('', 'QuotaExceededError');
    };
  });
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  await expect(page.getByRole('status', { name: 'Storage' })).toContainText(
    "Not saved: this browser's storage is full. Save to a file.",
  );
  expect((await savedFile(page)).text).toContain('"Carbon boom"');
});

test('a broken saved state is set aside, downloadable, and the page opens', async ({ page }) => {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  await page.evaluate(breakEveryText);
  await page.goto('/');
  await expect(page).toHaveTitle(/Quillamoor/);
  const word = page.getByRole('status', { name: 'Storage' });
  await expect(word).toContainText('It is set aside, not lost.');
  const downloading = page.waitForEvent('download');
  await word.getByRole('button', { name: 'Download it' }).click();
  expect(readFileSync(await (await downloading).path(), 'utf8')).toBe('{"broken');
  await word.getByRole('button', { name: 'Dismiss' }).click();
  await expect(word).toBeEmpty();
  await page.getByRole('button', { name: 'Projects' }).click();
  await expect(page.getByRole('dialog')).toContainText('Set aside because they did not open');
});

/** How many drafts stand in the browser's storage. */
async function countDrafts(): Promise<number> {
  let count = 0;
  for (const { name } of await indexedDB.databases()) {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open(name ?? '');
      opening.onsuccess = () => {
        resolve(opening.result);
      };
    });
    for (const storeName of database.objectStoreNames) {
      const store = database.transaction(storeName).objectStore(storeName);
      const keys = await new Promise<IDBValidKey[]>((resolve) => {
        const reading = store.getAllKeys();
        reading.onsuccess = () => {
          resolve(reading.result);
        };
      });
      count += keys.filter((key) => typeof key === 'string' && key.startsWith('draft/')).length;
    }
    database.close();
  }
  return count;
}

/** Cuts off the text of every stored project, whatever the database is called. */
async function breakEveryText(): Promise<void> {
  const settled = <Result>(request: IDBRequest<Result>): Promise<Result> =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => {
        resolve(request.result);
      };
      request.onerror = () => {
        reject(new Error('The database refused.'));
      };
    });
  for (const { name } of await indexedDB.databases()) {
    const database = await settled(indexedDB.open(name ?? ''));
    for (const storeName of database.objectStoreNames) {
      const store = database.transaction(storeName, 'readwrite').objectStore(storeName);
      for (const key of await settled(store.getAllKeys())) {
        if (typeof key === 'string' && key.startsWith('text/')) await settled(store.put('{"broken', key));
      }
    }
    database.close();
  }
}
