import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from 'playwright/test';
import { serveBuilt, type BuiltServer } from './builtServer';
import { openStored } from './offlinePage';
import { saveStatus } from './openPage';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, serviceWorkers: 'allow' });

let server: BuiltServer;

test.beforeEach(async () => {
  server = await serveBuilt();
});

test.afterEach(async () => {
  await server.stop();
});

function form(page: Page): Locator {
  return page.getByRole('region', { name: 'Quick add' });
}

async function goToSurvey(page: Page): Promise<void> {
  await page.getByRole('navigation', { name: 'Places' }).getByText('Survey').tap();
  await expect(form(page)).toBeVisible();
}

async function fill(page: Page, label: string, text: string): Promise<void> {
  const field = form(page).getByLabel(label, { exact: true });
  await field.tap();
  await field.fill(text);
}

test('on a dock without a network: fittings are added by touch, half-typed text waits, and all is there after a reload', async ({
  page,
  context,
}) => {
  await openStored(page, server.address);
  await server.stop();
  await context.setOffline(true);
  await goToSurvey(page);
  await fill(page, 'Name', 'Backstay blade');
  await form(page).getByLabel('Shape').selectOption('flat or square bar');
  await fill(page, 'Width, fore and aft, mm', '60');
  await fill(page, 'Thickness, across the boat, mm', '12');
  await fill(page, 'Length, m', '0,8');
  await form(page).getByLabel('Zone').selectOption('Cockpit and stern');
  await fill(page, 'Count', '2');
  await form(page).getByRole('button', { name: 'Add', exact: true }).tap();
  await expect(form(page).getByRole('status')).toHaveText(
    /^Added: Backstay blade, 2\s×\s60\.0\s×\s12\.0\smm\s×\s0\.800\sm, Cockpit and stern\.$/,
  );
  await expect(form(page).getByLabel('Name', { exact: true })).toBeFocused();
  await fill(page, 'Name', 'Half a thing');
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  await page.reload();
  await expect(form(page).getByLabel('Name', { exact: true })).toHaveValue('Half a thing');
  await expect(form(page).getByLabel('Shape')).toHaveValue('flat');
  await page.getByRole('navigation', { name: 'Places' }).getByText('Ledger').tap();
  await expect(page.getByRole('button', { name: 'Backstay blade', exact: true })).toBeVisible();
  // What is half-typed is told elsewhere, and the way back to it.
  const waiting = page.getByRole('status', { name: 'Storage' });
  await expect(waiting).toContainText('1 field is half-typed: Name, “Half a thing”.');
  await waiting.getByRole('button', { name: 'Open it' }).tap();
  await expect(form(page).getByLabel('Name', { exact: true })).toBeFocused();
  await fill(page, 'Count', '2 of');
  await page.getByRole('navigation', { name: 'Places' }).getByText('Ledger').tap();
  await expect(waiting).toContainText('2 fields are half-typed: Name, “Half a thing”, and 1 more.');
});

test('everything to be touched is 44 px high, nothing reaches past the side, and Add is in the thumb’s reach', async ({
  page,
}) => {
  await page.goto(`${server.address}#place=survey`);
  await fill(page, 'Name', 'Post');
  await fill(page, 'Diameter, mm', '30');
  await fill(page, 'Length, m', '1');
  await form(page).getByRole('button', { name: 'Add', exact: true }).tap();
  await expect(form(page).getByRole('listitem')).toHaveCount(1);
  for (const touched of await form(page).locator('input, select, button').all()) {
    expect((await touched.boundingBox())?.height, await touched.innerText()).toBeGreaterThanOrEqual(44);
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  const add = form(page).getByRole('button', { name: 'Add', exact: true });
  await add.scrollIntoViewIfNeeded();
  expect((await add.boundingBox())?.y).toBeGreaterThan(844 / 2);
  const inputModes = await form(page)
    .locator('input')
    .evaluateAll((inputs) => inputs.map((input) => input.getAttribute('inputmode')));
  expect(inputModes).toEqual(['text', 'decimal', 'decimal', 'numeric', 'decimal']);
});

test('on a low screen the head scrolls away above the quick add, and all of the form can be reached', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto(`${server.address}#place=survey`);
  const add = form(page).getByRole('button', { name: 'Add', exact: true });
  await add.evaluate((button) => {
    button.scrollIntoView({ block: 'end' });
  });
  const head = await page.getByRole('banner').boundingBox();
  expect((head?.y ?? 0) + (head?.height ?? 0)).toBeLessThan(40);
  const name = await form(page).getByLabel('Name', { exact: true }).boundingBox();
  expect(name?.y).toBeGreaterThanOrEqual(0);
  await page.getByRole('button', { name: 'Print the sheet' }).scrollIntoViewIfNeeded();
  await expect(page.getByRole('button', { name: 'Print the sheet' })).toBeInViewport();
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in the quick add, with complaints in it: ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.goto(`${server.address}#place=survey`);
    await fill(page, 'Diameter, mm', 'thick');
    await form(page).getByRole('button', { name: 'Add', exact: true }).tap();
    await expect(form(page).getByText('Type a name.')).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  });
}
