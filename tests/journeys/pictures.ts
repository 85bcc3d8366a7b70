import { expect, test, type Locator, type Page } from 'playwright/test';
import { openDemo } from './openPage';

/** Not tests: `npm run screenshots` renews the pictures of the documents with these. */
const wholePages = [
  { name: 'ledger-light', colorScheme: 'light', width: 1440, height: 900 },
  { name: 'ledger-dark', colorScheme: 'dark', width: 1440, height: 900 },
  { name: 'ledger-phone', colorScheme: 'light', width: 390, height: 844 },
] as const;

for (const { name, colorScheme, width, height } of wholePages) {
  test(name, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height });
    await openDemo(page, '#row=code-sail');
    await picture(page, name);
  });
}

async function picture(page: Page, name: string, clip?: Clip): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  // No field blinks, no row is lit by the mouse.
  await page.mouse.move(0, 0);
  await page.screenshot({
    path: `docs/pictures/${name}.png`,
    caret: 'hide',
    ...(clip === undefined ? {} : { clip }),
  });
}

interface Clip {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A part of the page with some paper around it. */
async function around(place: Locator, aroundPx = 8): Promise<Clip> {
  const box = await place.boundingBox();
  if (box === null) throw new Error('nothing to take a picture of');
  return {
    x: Math.max(0, box.x - aroundPx),
    y: Math.max(0, box.y - aroundPx),
    width: box.width + 2 * aroundPx,
    height: box.height + 2 * aroundPx,
  };
}

/** So high that a pane need not scroll. */
const tall = { width: 1440, height: 2400 };

async function showPane(page: Page, name: string): Promise<Locator> {
  await page.locator('.side-words').getByText(name, { exact: true }).click();
  const region = page.locator('.working-place');
  await expect(region.getByRole('heading').first()).toBeVisible();
  return region;
}

test('row-editor', async ({ page }) => {
  await openDemo(page, '#row=stanchions');
  await picture(page, 'row-editor', await around(await showPane(page, 'Edit'), 0));
});

test('working-chart', async ({ page }) => {
  await page.setViewportSize(tall);
  await openDemo(page, '#row=code-sail');
  const chart = page.locator('.coefficient-chart').first();
  await expect(chart).toBeVisible();
  const from = await around(page.getByText('area and force', { exact: true }).first(), 4);
  const to = await around(chart);
  const pane = await around(page.locator('.working-place'), 0);
  await picture(page, 'working-chart', { ...pane, y: from.y, height: to.y + to.height - from.y });
});

test('condition', async ({ page }) => {
  await openDemo(page, '#row=code-sail');
  await picture(page, 'condition', await around(page.locator('.margin-place'), 0));
});

test('plan', async ({ page }) => {
  await openDemo(page, '#row=code-sail');
  await picture(page, 'plan', await around(await showPane(page, 'Plan'), 0));
});

test('waterfall', async ({ page }) => {
  await page.setViewportSize(tall);
  await openDemo(page, '#row=code-sail');
  const pane = await showPane(page, 'Plan');
  await picture(page, 'waterfall', await around(pane.locator('.plans-chart').first()));
});

test('catalogue', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('button', { name: 'Add a fitting', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Add a fitting' });
  await dialog.getByRole('searchbox', { name: 'Search' }).fill('aerial');
  await expect(dialog.getByText(/found; Enter adds/)).toBeVisible();
  await picture(page, 'catalogue', await around(dialog, 0));
});

test('methods', async ({ page }) => {
  await openDemo(page);
  await picture(page, 'methods', await around(await showPane(page, 'Methods'), 0));
});

test('working-phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page);
  await page.getByRole('button', { name: 'Code sail, rolled' }).click();
  await expect(page.getByRole('heading', { name: /Code sail/ })).toBeVisible();
  await picture(page, 'working-phone');
});

test('picture', async ({ page }) => {
  await page.setViewportSize(tall);
  await openDemo(page, '#row=code-sail');
  const pane = await showPane(page, 'Picture');
  await expect(pane.locator('.picture-callout')).not.toHaveCount(0);
  await picture(page, 'picture', await around(pane.locator('.picture figure').first()));
});

test('envelope-phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/#place=envelope');
  await page
    .getByLabel('The scribble in one go')
    .fill('14 tubes 25 mm 610 mm, Cd 0.6, 24 kn apparent, 1063 W');
  await page.getByRole('button', { name: 'Read it into the fields' }).click();
  await expect(page.getByRole('region', { name: 'How it stands' })).toContainText('knots');
  await picture(page, 'envelope-phone');
});

test('fairing-bench', async ({ page }) => {
  await page.goto('/#place=fairing');
  await expect(page.getByRole('heading', { name: 'Fairing bench', level: 2 })).toBeVisible();
  await expect(page.getByText('apparent wind angle from the bow').first()).toBeVisible();
  await picture(page, 'fairing-bench');
});

test('quick-add', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/#place=survey');
  await expect(page.getByRole('heading', { name: 'Quick add' })).toBeVisible();
  await picture(page, 'quick-add');
});
