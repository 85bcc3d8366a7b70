import { expect, test, type Locator, type Page } from 'playwright/test';
import { openDemo } from './openPage';

const phone = { width: 390, height: 844 };

function candidate(page: Page, name: string): Locator {
  return page.getByRole('radio', { name, exact: true });
}

/** Walks with the tabulator key until the focus is there. */
async function tabTo(page: Page, place: Locator): Promise<void> {
  for (let stop = 0; stop < 120; stop += 1) {
    if ((await place.count()) === 1 && (await place.evaluate((each) => each === document.activeElement)))
      return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`The tabulator key does not reach ${String(place)}.`);
}

test('a journey by keyboard from a ledger row to a refit item', async ({ page }) => {
  await openDemo(page);
  const row = page.locator('.row-pick').first();
  await row.focus();
  const name = (await row.textContent()) ?? '';
  await page.keyboard.press('Enter');
  // The words above the ledger stand before its rows.
  const link = page.getByRole('link', { name: 'Put on the bench' });
  for (let stop = 0; stop < 30; stop += 1) {
    if (await link.evaluate((each) => each === document.activeElement)) break;
    await page.keyboard.press('Shift+Tab');
  }
  await page.keyboard.press('Enter');
  await expect(page).toHaveTitle('Fairing bench – Windtoll');
  await expect(page.locator('.bench-member option:checked')).toContainText(name.trim());

  await tabTo(page, page.getByRole('button', { name: 'Put on the bench' }));
  await page.keyboard.press('Enter');
  const added = page.getByRole('region', { name: 'Candidates' }).getByRole('radio').last();
  await expect(added).toBeFocused();
  await expect(added).toBeChecked();

  await tabTo(page, page.getByRole('textbox', { name: 'Name', exact: true }));
  await page.keyboard.press('Control+a');
  await page.keyboard.type('Slim section');
  await expect(candidate(page, 'Slim section')).toBeChecked();
  const ratio = page.getByRole('slider', { name: 'Thickness over chord, slider' });
  await tabTo(page, ratio);
  const before = await page.getByRole('textbox', { name: 'Thickness over chord' }).inputValue();
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByRole('textbox', { name: 'Thickness over chord' })).not.toHaveValue(before);

  await tabTo(page, page.getByRole('button', { name: 'Use this' }));
  await page.keyboard.press('Enter');
  await expect(page).toHaveTitle('Quillamoor – drag ledger – Windtoll');
  const plan = page.getByRole('region', { name: 'Plan', exact: true });
  const itemName = plan.getByRole('textbox', { name: 'Name', exact: true });
  await expect(itemName).toBeFocused();
  await expect(itemName).toHaveValue(/Slim section/);
});

test('comes back from its address after a reload, and the back button leads to the ledger', async ({
  page,
}) => {
  await openDemo(page);
  await page.getByRole('link', { name: 'Fairing bench' }).click();
  await page.getByRole('slider', { name: 'Thickness over chord, slider' }).fill('4');
  await expect(page.getByRole('textbox', { name: 'Thickness over chord' })).toHaveValue('0.12');
  await expect(page).toHaveURL(/place=fairing&.+/);
  await page.waitForTimeout(500);
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Thickness over chord' })).toHaveValue('0.12');
  await page.goBack();
  await expect(page).toHaveTitle('Quillamoor – drag ledger – Windtoll');
});

test('stands in one column on a phone, no wider than the page', async ({ page }) => {
  await page.setViewportSize(phone);
  await page.goto('/#place=fairing');
  await expect(page.getByRole('region', { name: 'Candidates' })).toBeVisible();
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overflow).toBeLessThanOrEqual(0);
  const wider = await page.evaluate(() => {
    const place = document.querySelector('.other-place');
    return place === null ? NaN : place.scrollWidth - place.clientWidth;
  });
  expect(wider).toBeLessThanOrEqual(0);
});

test('says on a phone alone that its table shows one comparison, and of which', async ({ page }) => {
  await page.setViewportSize(phone);
  await page.goto('/#place=fairing');
  const word = page.getByText(/room for one comparison here, the drag along the wind:/);
  await expect(word).toBeVisible();
  await page.getByText('track power', { exact: true }).last().click();
  await expect(page.getByText(/room for one comparison here, the track power:/)).toBeVisible();
  await page.setViewportSize({ width: 1440, height: 900 });
  await expect(page.getByText(/room for one comparison here/)).toBeHidden();
});

test('saves a chart as SVG with its title', async ({ page }) => {
  await page.goto('/#place=fairing');
  const figure = page.getByRole('figure', { name: /against apparent wind angle/ });
  await figure.getByText('Table and files').click();
  await expect(figure.getByRole('table')).toContainText('90.0°');
  const downloading = page.waitForEvent('download');
  await figure.getByRole('button', { name: 'Save as SVG' }).click();
  expect((await downloading).suggestedFilename()).toMatch(
    /^Drag along the wind against apparent wind angle .+\.svg$/,
  );
});

test('keeps half-typed text of a candidate when another is chosen, and through a reload', async ({
  page,
}) => {
  await page.goto('/#place=fairing');
  const skin = page.getByLabel('Skin', { exact: true });
  await skin.fill('thin');
  await expect(page.getByText(/"thin" does not start with a number/)).toBeVisible();
  await page.getByRole('radio', { name: 'As it stands' }).check();
  await expect(skin).toHaveCount(0);
  await expect(page.getByText(/1 field is half-typed: Skin/)).toBeVisible();
  await page.getByRole('radio', { name: 'Fairing, turning' }).check();
  await expect(skin).toHaveValue('thin');
  // What is typed is written a moment after the last key.
  await page.waitForTimeout(1500);
  await page.reload();
  await expect(skin).toHaveValue('thin');
});
