import { expect, test, type Page } from 'playwright/test';
import { openDemo } from './openPage';

function working(page: Page) {
  return page.getByRole('region', { name: 'Working of the selected row' });
}

function ledger(page: Page) {
  return page.getByRole('region', { name: 'Ledger', exact: true });
}

function totals(page: Page) {
  return page.locator('.ledger-totals');
}

/** The head and the total stand over the rows that scroll; what has the focus lies between them. */
async function expectFocusUncovered(page: Page): Promise<void> {
  const focused = page.locator(':focus');
  await expect(focused).toBeInViewport({ ratio: 1 });
  const row = await focused.boundingBox();
  const foot = await page.locator('.ledger-foot').boundingBox();
  const head = await page.locator('.ledger-table thead').first().boundingBox();
  if (row === null || foot === null || head === null) throw new Error('nothing to measure');
  expect(row.y + row.height).toBeLessThanOrEqual(foot.y);
  expect(row.y).toBeGreaterThanOrEqual(head.y + head.height - 1);
}

/** Past the condition's values and what is done with rows, into the rows; far fewer stops than this lie between. */
async function tabToRows(page: Page): Promise<void> {
  const isInRows = () => page.evaluate(() => document.activeElement?.matches('[data-fitting-id]') === true);
  for (let stop = 0; stop < 30 && !(await isInRows()); stop += 1) await page.keyboard.press('Tab');
  expect(await isInRows()).toBe(true);
}

test('opens on the demo and follows condition, plan and row', async ({ page }) => {
  await openDemo(page);
  const first = await totals(page).textContent();
  await page.getByText('Fast reach, port tack').click();
  await expect(totals(page)).not.toHaveText(first ?? '');
  await page.getByText('Slimmer tubes').first().click();
  await expect(totals(page)).toContainText('after (Slimmer tubes)');
  await ledger(page).getByRole('button', { name: 'Boom', exact: true }).click();
  await expect(working(page).getByRole('heading', { name: /Boom/ })).toBeVisible();
  await expect(working(page)).toContainText('W');
});

test('shows a course profile and a plan against another', async ({ page }) => {
  await openDemo(page);
  await page.getByText('Vennick Round, as routed').click();
  await expect(page.getByRole('table', { name: 'Hours and wind of the course' })).toBeVisible();
  await page.getByRole('combobox', { name: 'against' }).selectOption('Slimmer tubes');
  await expect(totals(page)).toContainText('before (Slimmer tubes)');
});

test('keeps the reading in the address, and the back button undoes a question', async ({ page }) => {
  await openDemo(page, '#over=condition:run&plan=slim&row=boom');
  await expect(page.getByRole('radio', { name: 'Run in a big sea' })).toBeChecked();
  await expect(working(page).getByRole('heading', { name: /Boom/ })).toBeVisible();
  await page.getByText('Upwind, one reef').click();
  await expect(page).toHaveURL(/over=condition:upwind/);
  await page.goBack();
  await expect(page.getByRole('radio', { name: 'Run in a big sea' })).toBeChecked();
  await page.goto('/#over=condition:nowhere&plan=nothing&row=nobody');
  await page.reload();
  await expect(page.getByRole('radio', { name: 'Upwind, one reef' })).toBeChecked();
});

test('is done by keyboard alone', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('radio', { name: 'Upwind, one reef' }).focus();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: 'Fast reach, port tack' })).toBeChecked();
  await page.keyboard.press('Tab');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: /Slimmer tubes/ })).toBeChecked();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('combobox', { name: 'against' })).toBeFocused();
  await tabToRows(page);
  await page.keyboard.press('Home');
  const name = await page.evaluate(() => document.activeElement?.textContent ?? '');
  await expect(working(page).getByRole('heading', { name: new RegExp(name) })).toBeVisible();
  await page.keyboard.press('End');
  await expectFocusUncovered(page);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Home');
  await expectFocusUncovered(page);
});

test('the total stays where it is while the rows scroll', async ({ page }) => {
  await openDemo(page);
  const total = page.locator('.total-row');
  const before = await total.boundingBox();
  await page.locator('.ledger-scroll').evaluate((element) => {
    element.scrollTop = element.scrollHeight;
  });
  expect(await total.boundingBox()).toEqual(before);
  await expect(total).toBeInViewport({ ratio: 1 });
});

test('the ledger keeps two thirds of a small laptop', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await openDemo(page);
  const box = await ledger(page).boundingBox();
  expect(box?.width ?? 0).toBeGreaterThanOrEqual((1280 * 2) / 3 - 1);
  const isWiderThanPage = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
  expect(isWiderThanPage).toBe(false);
});

test('on a phone the margin is a line that opens, and picking a row brings up its working', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page);
  await page.getByRole('button', { name: /Upwind, one reef/ }).click();
  await page.getByRole('combobox', { name: 'Condition' }).selectOption('Fast reach, port tack');
  await page.getByRole('button', { name: /Fast reach, port tack/ }).click();
  await expect(working(page)).toBeHidden();
  await ledger(page).getByRole('button', { name: 'Staysail, rolled' }).click();
  await expect(working(page).getByRole('heading', { name: /Staysail, rolled/ })).toBeVisible();
  await expect(ledger(page)).toBeHidden();
  await page.locator('.pane-swap').getByText('Ledger').click();
  await expect(ledger(page)).toBeVisible();
  const isWiderThanPage = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
  expect(isWiderThanPage).toBe(false);
});

test('the total stands under its columns, however wide the page is and however far it is scrolled', async ({
  page,
}) => {
  await openDemo(page);
  const edges = (table: string) =>
    page
      .locator(`${table} tr`)
      .first()
      .locator('> *')
      .evaluateAll((cells) => cells.map((cell) => Math.round(cell.getBoundingClientRect().right)));
  for (const width of [1280, 820, 812, 700]) {
    await page.setViewportSize({ width, height: 900 });
    await page.locator('.ledger-scroll').evaluate((box) => {
      box.scrollLeft = box.scrollWidth;
    });
    await expect
      .poll(() => edges('.total-table'), `${width} px`)
      .toEqual(await edges('.ledger-table:not(.total-table) thead'));
  }
});

test('on a phone a name too long for its row ends in dots on the second line, uncut', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page);
  await page.getByRole('button', { name: 'Add a fitting', exact: true }).click();
  await page.getByRole('searchbox', { name: 'Search' }).fill('cap shroud');
  await page.keyboard.press('Enter');
  const long = 'A shroud with a name that nobody would write on a dock, not even on a dry one';
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill(long);
  const name = page.locator('.row-pick', { hasText: long });
  await page.locator('.pane-swap').getByText('Ledger').click();
  await expect(name).toBeVisible();
  const cut = await name.evaluate((button) => {
    const words = button.firstElementChild?.getBoundingClientRect();
    const box = button.getBoundingClientRect();
    return words === undefined ? NaN : Math.max(box.top - words.top, words.bottom - box.bottom);
  });
  expect(cut).toBeLessThanOrEqual(0);
});

test('what the totals say in words stays off the axis of their bar, however long the plan’s name is', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await openDemo(page);
  await page.locator('.side-words').getByText('Plan').click();
  await page
    .getByRole('textbox', { name: 'Name of the plan' })
    .fill('Everything that can go below goes below');
  await expect(totals(page)).toContainText('after (Everything that can go');
  const ticks = await page.locator('.total-table .column-bar svg').last().boundingBox();
  const words = await page.locator('.total-facts > *').first().boundingBox();
  expect(words?.y ?? NaN).toBeGreaterThanOrEqual((ticks?.y ?? NaN) + (ticks?.height ?? NaN) - 1);
});
