import { expect, test, type Locator, type Page } from 'playwright/test';
import { chooseFile, goodFile, nameField, openDemo, renameRow } from './openPage';

/** Lets the files whose names begin so fail until told otherwise. */
async function cutOff(page: Page, names: RegExp): Promise<() => void> {
  let isCut = true;
  await page.route(names, (route) => (isCut ? route.abort() : route.continue()));
  return () => {
    isCut = false;
  };
}

function pane(page: Page, name: string): Locator {
  return page.getByRole('region', { name, exact: true });
}

function said(page: Page): Locator {
  return page.getByRole('status', { name: 'What was done' });
}

for (const [what, files] of [
  ['script', /assets\/PlanPane-.*\.js$/],
  ['style sheet', /assets\/PlanPane-.*\.css$/],
] as const) {
  test(`a pane whose ${what} does not come says so, loses nothing and comes when asked again`, async ({
    page,
  }) => {
    const restore = await cutOff(page, files);
    await openDemo(page);
    await renameRow(page, 'Boom', 'Carbon boom');
    await page.locator('.side-words').getByText('Plan').click();
    const failure = pane(page, 'Plan').getByRole('alert');
    await expect(failure).toContainText('Plan did not load');
    await expect(failure).toContainText('Nothing of your work is lost');
    const again = pane(page, 'Plan').getByRole('button', { name: 'Try again' });
    await again.click();
    await expect(failure).toContainText('Plan did not load');
    await expect(again).toBeFocused();
    restore();
    await again.click();
    await expect(pane(page, 'Plan').getByLabel('Name of the plan')).toBeVisible();
    // The focus of the button that is gone is the pane's.
    await expect(pane(page, 'Plan')).toBeFocused();
    await expect(pane(page, 'Plan').locator('.plans')).toHaveCSS('display', 'grid');
    await page.locator('.side-words').getByText('Edit').click();
    await expect(nameField(page)).toHaveValue('Carbon boom');
  });
}

test('a dialog that does not come can be closed, and comes when asked again', async ({ page }) => {
  const restore = await cutOff(page, /assets\/(ProjectsDialog|AddFitting)-.*\.js$/);
  await openDemo(page);
  const dialog = page.getByRole('dialog');
  const projects = page.getByRole('button', { name: 'Projects' });
  await projects.click();
  await expect(dialog.getByRole('alert')).toContainText('The list of projects did not load');
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(dialog).toHaveCount(0);
  await expect(projects).toBeFocused();
  await page.getByRole('button', { name: 'Add a fitting', exact: true }).click();
  await expect(dialog.getByRole('alert')).toContainText('The list of fittings did not load');
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await projects.click();
  await expect(dialog.getByRole('alert')).toBeVisible();
  restore();
  await dialog.getByRole('button', { name: 'Try again' }).click();
  await expect(dialog.getByRole('heading', { name: 'Projects in this browser' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
});

test('undo, redo, conditions, plans and panes by key are told to those who listen', async ({ page }) => {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  // What is typed tells itself.
  await expect(said(page)).toBeEmpty();
  await page.keyboard.press('Control+z');
  await expect(said(page)).toHaveText(/^Undone: .*name/i);
  await page.keyboard.press('Control+y');
  await expect(said(page)).toHaveText(/^Redone: .*name/i);
  await page.keyboard.press('Control+y');
  await expect(said(page)).toHaveText('Nothing to redo.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(said(page)).toHaveText(/^Undone: .*name/i);
  for (const [key, words] of [
    [']', 'Condition: Fast reach, port tack'],
    ['[', 'Condition: Upwind, one reef'],
    ['[', 'Course profile: Vennick Round, as routed'],
    ['p', 'Plan: Slimmer tubes'],
    ['p', 'As sailed'],
    ['4', 'Pane: Plan'],
  ] as const) {
    await page.keyboard.press(key);
    await expect(said(page)).toHaveText(words);
  }
});

test('keys go to the ledger’s row and back to the pane from anywhere', async ({ page }) => {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  const row = page.getByRole('button', { name: 'Carbon boom', exact: true });
  await page.keyboard.press('F6');
  await expect(row).toBeFocused();
  await page.keyboard.press('F6');
  await expect(pane(page, 'Edit')).toBeFocused();
  await page.getByRole('button', { name: 'Keys' }).focus();
  await page.keyboard.press('l');
  await expect(row).toBeFocused();
  await page.keyboard.press('b');
  await expect(pane(page, 'Edit')).toBeFocused();
  // In a field the letters are letters.
  await nameField(page).press('End');
  await nameField(page).pressSequentially(' lb');
  await expect(nameField(page)).toHaveValue('Carbon boom lb');
  await nameField(page).press('F6');
  await expect(page.getByRole('button', { name: 'Carbon boom lb', exact: true })).toBeFocused();
});

test('where ledger and pane swap, the keys bring up what they go to', async ({ page }) => {
  await page.setViewportSize({ width: 700, height: 800 });
  await openDemo(page);
  await page.keyboard.press('b');
  await expect(pane(page, 'Working of the selected row')).toBeFocused();
  await page.keyboard.press('l');
  await expect(page.locator('.ledger-table .row-pick:focus')).toBeVisible();
});

test('Back to a question asked at another row lets go of the rows picked out', async ({ page }) => {
  await openDemo(page);
  const ledger = pane(page, 'Ledger');
  await ledger.getByRole('button', { name: 'Boom', exact: true }).click();
  await page.getByRole('button', { name: 'Keys' }).focus();
  await page.keyboard.press(']');
  await ledger.getByRole('button', { name: 'Stanchions', exact: true }).click();
  await page.keyboard.press('Shift+ArrowDown');
  await expect(ledger.getByText('2 rows picked')).toBeVisible();
  await page.goBack();
  await expect(ledger.getByRole('button', { name: 'Boom', exact: true })).toHaveAttribute(
    'aria-current',
    'true',
  );
  await expect(ledger.getByText('rows picked')).toHaveCount(0);
});

/** What reaches past the right edge of the page, but for tables, which scroll in their own place. */
function cutOffWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const root = document.querySelector('dialog[open]') ?? document.body;
    return [...root.querySelectorAll('*')]
      .filter((element) => {
        if (element.closest('svg, .visually-hidden, .ledger-scroll, table') !== null) return false;
        return element.getBoundingClientRect().right > window.innerWidth + 1;
      })
      .map((element) => `${element.className}: ${element.textContent.slice(0, 40)}`);
  });
}

async function expectNoSideways(page: Page, what: string): Promise<void> {
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width, what).toBe(390);
  expect(await cutOffWords(page), what).toEqual([]);
}

test('on a phone no pane and no dialog is wider than the page', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page);
  await chooseFile(page, goodFile());
  await expect(page).toHaveTitle(/Test hull/);
  const swap = page.locator('.pane-swap');
  for (const name of ['Working', 'Edit', 'Plan', 'Condition', 'Methods', 'Ledger']) {
    await swap.getByText(name, { exact: true }).click();
    const region = name === 'Working' ? 'Working of the selected row' : name;
    await expect(pane(page, region).locator('h2, h3, table').first()).toBeVisible();
    await expectNoSideways(page, name);
  }
  const dialog = page.getByRole('dialog');
  for (const name of ['Projects', 'Units', 'Add a fitting']) {
    await page.getByRole('button', { name, exact: true }).first().click();
    await expect(dialog).toBeVisible();
    await expectNoSideways(page, name);
    await page.keyboard.press('Escape');
    await expect(dialog).toHaveCount(0);
  }
  await page.getByRole('button', { name: 'Projects' }).click();
  await dialog.getByRole('button', { name: 'New project' }).click();
  await expect(dialog.getByLabel('Draught')).toBeVisible();
  await expectNoSideways(page, 'New project');
});

for (const viewport of [
  { width: 1440, height: 900 },
  { width: 1280, height: 720 },
]) {
  test(`panes scroll and the page does not, at ${viewport.width} × ${viewport.height}`, async ({ page }) => {
    await page.setViewportSize(viewport);
    await openDemo(page);
    const pageHeight = () => page.evaluate(() => document.documentElement.scrollHeight);
    for (const name of ['Picture', 'Edit', 'Plan', 'Condition', 'Methods', 'Working']) {
      await page.locator('.side-words').getByText(name, { exact: true }).click();
      await expect(page.locator('.working-place').getByRole('heading').first()).toBeVisible();
      expect(await pageHeight(), name).toBe(viewport.height);
    }
    for (const name of ['Fairing bench', 'Envelope check', 'Survey']) {
      await page.getByRole('link', { name, exact: true }).click();
      await expect(page.locator('.other-place').getByRole('heading').first()).toBeVisible();
      expect(await pageHeight(), name).toBe(viewport.height);
    }
  });
}
