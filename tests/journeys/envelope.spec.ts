import { expect, test, type Page } from 'playwright/test';

const phone = { width: 390, height: 844 };

function field(page: Page, name: string) {
  return page.getByRole('textbox', { name, exact: true });
}

function verdict(page: Page) {
  return page.getByRole('region', { name: 'How it stands' });
}

async function readScribble(page: Page, text: string): Promise<void> {
  await page.getByLabel('The scribble in one go').fill(text);
  await page.getByRole('button', { name: 'Read it into the fields' }).click();
}

test('checks an envelope on a phone and sends it by its address', async ({ page, context }) => {
  await page.setViewportSize(phone);
  await page.goto('/#place=envelope');
  await expect(page).toHaveTitle('Envelope check – Windtoll');
  await readScribble(page, '14 tubes 25 mm 610 mm, Cd 0.6, 24 kn apparent, 1.2 kg/m3, 1063 W');
  await expect(field(page, 'Wind speed')).toHaveValue('24 kn');
  await expect(field(page, 'Drag coefficient')).toHaveValue('0.6');
  await expect(verdict(page)).toContainText('knots');
  await expect(verdict(page)).toContainText('145 W');
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overflow).toBeLessThanOrEqual(0);

  const other = await context.newPage();
  await other.setViewportSize(phone);
  await other.goto(page.url());
  await expect(field(other, 'Wind speed')).toHaveValue('24 kn');
  await expect(verdict(other)).toContainText('knots');
  await field(other, 'Power, all together').fill('145 W');
  await expect(verdict(other)).not.toContainText('knots');
  await other.goto('/');
  await expect(other).toHaveTitle('Quillamoor – drag ledger – Windtoll');
  await other.getByRole('link', { name: 'Envelope check' }).click();
  await expect(field(other, 'Power, all together')).toHaveValue('145 W');
});

test('draws a claim in horsepower beside the others, too', async ({ page }) => {
  await page.goto('/#place=envelope');
  await readScribble(page, '20 stanchions 1" dia x 24", 20 knots, Cd 1.2, 0.5 hp');
  const bars = page.getByRole('region', { name: 'What a handbook uses' }).getByRole('figure');
  await expect(bars).toContainText('373 W claimed');
});

test('makes an envelope a fitting of the ledger, and one undo takes it back', async ({ page }) => {
  await page.goto('/#place=envelope');
  await readScribble(page, '16 posts 25 mm 0.7 m, 12 m/s');
  await page.getByLabel('in the zone').selectOption({ label: 'Side decks' });
  await page.getByRole('button', { name: 'Make it a fitting' }).click();
  await expect(page.getByRole('table', { name: /What each fitting costs/ })).toBeAttached();
  await expect(page.getByText('All 50 fittings')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('All 49 fittings')).toBeVisible();
  await page.goBack();
  await expect(field(page, 'Length')).toHaveValue('0.7 m');
});

test('keeps text that it cannot read, beside its complaint, through a reload', async ({ page }) => {
  await page.goto('/#place=envelope');
  await field(page, 'Wind speed').fill('<img src=x onerror=alert(1)> fast');
  await expect(page.getByText(/does not start with a number/)).toBeVisible();
  await page.reload();
  await expect(field(page, 'Wind speed')).toHaveValue('<img src=x onerror=alert(1)> fast');
  await expect(page.locator('img')).toHaveCount(0);
});

test('copies the check as text and its address', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/#place=envelope&speed=12+m%2Fs&shape=roundBar&count=16&width=25+mm&length=0.7+m');
  await page.getByRole('button', { name: 'Copy the check as text' }).click();
  await expect(page.getByText('Copied.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('12 m/s');
  await page.getByRole('button', { name: 'Copy the address' }).click();
  await expect
    .poll(() => page.evaluate(() => navigator.clipboard.readText()))
    .toContain('#place=envelope&speed=12+m%2Fs');
});

test('is worked by keyboard alone, to the fitting', async ({ page }) => {
  await page.goto('/#place=envelope');
  await page.getByLabel('The scribble in one go').focus();
  await page.keyboard.type('3 poles 100 mm 3 m, 10 m/s, Cd 0.5');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(field(page, 'Length')).toHaveValue('3 m');
  await expect(verdict(page).getByText(/^Cd 0.50 is low by/)).toBeVisible();
  await expect(page.getByText(/Cd 0.50 is low by/)).toHaveCount(1);
  const make = page.getByRole('button', { name: 'Make it a fitting' });
  for (let i = 0; i < 60 && !(await make.evaluate((button) => button === document.activeElement)); i += 1)
    await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByText('All 50 fittings')).toBeVisible();
});
