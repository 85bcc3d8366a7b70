import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from 'playwright/test';
import { openDemo } from './openPage';

function totals(page: Page): Locator {
  return page.locator('.ledger-totals');
}

async function openPlanPane(page: Page): Promise<Locator> {
  const isPhone = (page.viewportSize()?.width ?? 0) < 1000;
  const words = page.locator(isPhone ? '.pane-swap' : '.side-words');
  await words.getByText('Plan', { exact: true }).click();
  const pane = page.getByRole('region', { name: 'Plan', exact: true });
  await expect(pane.getByRole('article')).toBeVisible();
  return pane;
}

test('makes a plan, sets a diameter, sees waterfall and total follow, and takes it back', async ({
  page,
}) => {
  await openDemo(page, '#row=boom');
  const pane = await openPlanPane(page);
  await pane.getByRole('button', { name: 'New plan' }).click();
  await expect(pane.getByRole('textbox', { name: 'Name of the plan' })).toHaveValue('Plan');
  await expect(pane.getByText('What costs most, as things to try:')).toBeVisible();
  await page.getByRole('button', { name: 'Running backstays', exact: true }).first().click();
  await openPlanPane(page);
  const choice = pane.getByRole('combobox', { name: /^New item about Running backstays/ });
  await choice.selectOption('slimmer');
  await pane.getByRole('button', { name: 'Add the item' }).click();
  const waterfall = pane.getByRole('img', { name: /^Track power from before to after/ });
  const first = await waterfall.getAttribute('aria-label');
  const total = await totals(page).textContent();
  const diameter = pane.getByRole('textbox', { name: 'New diameter', exact: true });
  const given = await diameter.inputValue();
  await diameter.fill('6mm');
  await diameter.press('Enter');
  await expect(waterfall).not.toHaveAttribute('aria-label', first ?? '');
  await expect(totals(page)).not.toHaveText(total ?? '');
  await pane.getByRole('button', { name: /slimmer$/ }).focus();
  await page.keyboard.press('Control+z');
  await expect(diameter).toHaveValue(given);
  await expect(totals(page)).toHaveText(total ?? '');
});

test('an item moves its fitting into a row, a deleted item gives the focus to the next, a plan changes its place', async ({
  page,
}) => {
  await openDemo(page);
  const pane = await openPlanPane(page);
  await pane.getByRole('button', { name: 'Liferaft into the transom well' }).click();
  const total = (await totals(page).textContent()) ?? '';
  await pane.getByRole('textbox', { name: 'How many in a row' }).fill('2');
  await expect(pane.getByText(/say where its last one stands/)).toBeVisible();
  await expect(totals(page)).not.toHaveText(total);
  await pane.getByRole('combobox', { name: 'Place given' }).selectOption('by its end points');
  await expect(pane.getByRole('group', { name: 'Last one, end' })).toBeVisible();
  await pane.getByRole('button', { name: 'Delete', exact: true }).focus();
  await page.keyboard.press('Enter');
  await expect(pane.getByRole('button', { name: 'Danbuoy into a launch tube' })).toBeFocused();
  const plans = page.getByRole('group', { name: 'Refit plan, number of items' }).getByRole('radio');
  const index = await plans.evaluateAll((each) =>
    each.findIndex((radio) => (radio as HTMLInputElement).checked),
  );
  const way = index === 1 ? 'down' : 'up';
  await pane.getByRole('button', { name: `Move this plan ${way}` }).focus();
  await page.keyboard.press('Enter');
  await expect(plans.nth(index + (way === 'down' ? 1 : -1))).toBeChecked();
});

test('a withheld saving counts once a named person gives a reason, and undo takes that back', async ({
  page,
}) => {
  await openDemo(page);
  const pane = await openPlanPane(page);
  const total = await totals(page).textContent();
  const item = pane.getByRole('button', { name: 'Danbuoy into a launch tube' });
  await item.click();
  await expect(
    pane.getByText(/stays out of every total until a named person has given a reason;/),
  ).toBeVisible();
  await pane.getByRole('textbox', { name: 'Person' }).fill('Ilse Brandt');
  await pane.getByRole('textbox', { name: 'Reason' }).fill('It leaves the tube as fast as the rail.');
  await pane.getByRole('button', { name: 'Count it for this reason' }).click();
  await expect(totals(page)).not.toHaveText(total ?? '');
  await expect(pane.getByText(/reason by Ilse Brandt/)).toBeVisible();
  await item.focus();
  await page.keyboard.press('Control+z');
  await expect(totals(page)).toHaveText(total ?? '');
  await expect(pane.getByText(/reason by Ilse Brandt/)).toBeHidden();
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 390]) {
    test(`the plan pane fits and axe finds nothing in it: ${colorScheme}, ${width} px`, async ({ page }) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 900 });
      await openDemo(page);
      const pane = await openPlanPane(page);
      await pane.getByRole('button', { name: 'Danbuoy into a launch tube' }).click();
      const isWider = await pane.evaluate((element) => element.scrollWidth > element.clientWidth);
      expect(isWider).toBe(false);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations).toEqual([]);
    });
  }
}
