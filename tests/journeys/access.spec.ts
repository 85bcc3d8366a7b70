import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import { badFile, chooseFile, goodFile, openDemo } from './openPage';

/** Also the size of targets (WCAG 2.5.8), which axe leaves out unless it is asked. */
function axe(page: Page): AxeBuilder {
  return new AxeBuilder({ page }).options({ rules: { 'target-size': { enabled: true } } });
}

const sizes = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];

for (const colorScheme of ['light', 'dark'] as const) {
  for (const viewport of sizes) {
    test(`axe finds nothing: ${colorScheme}, ${viewport.width} x ${viewport.height}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize(viewport);
      await openDemo(page);
      await chooseFile(page, goodFile());
      await expect(page).toHaveTitle(/Test hull/);
      await chooseFile(page, badFile());
      await page.getByRole('alert').getByText('did not open').click();
      const isPhone = viewport.width < 600;
      if (isPhone) await page.getByRole('button', { name: /^Upwind: / }).click();
      const ledger = await axe(page).analyze();
      expect(ledger.violations).toEqual([]);
      if (!isPhone) return;
      for (const pane of ['Working', 'Picture', 'Edit', 'Plan', 'Condition', 'Methods']) {
        await page.locator('.pane-swap').getByText(pane, { exact: true }).click();
        await expect(page.locator('.working-place').getByRole('heading').first()).toBeVisible();
        const { violations } = await axe(page).analyze();
        expect(violations, pane).toEqual([]);
      }
    });
  }
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in any pane: ${colorScheme}`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme });
    await openDemo(page);
    await chooseFile(page, goodFile());
    await expect(page).toHaveTitle(/Test hull/);
    for (const pane of ['Picture', 'Edit', 'Plan', 'Condition', 'Methods']) {
      await page.locator('.side-words').getByText(pane, { exact: true }).click();
      const region = page.getByRole('region', { name: pane, exact: true });
      await expect(region.getByRole('heading').first()).toBeVisible();
      const { violations } = await axe(page).include('.working-place').analyze();
      expect(violations, pane).toEqual([]);
    }
  });

  test(`axe finds nothing in any dialog and in an empty ledger: ${colorScheme}`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme });
    await openDemo(page);
    await chooseFile(page, goodFile());
    const dialog = page.getByRole('dialog');
    for (const name of ['Projects', 'Units', 'Keys', 'Add a fitting', 'New project']) {
      await page.getByRole('button', { name, exact: true }).click();
      await expect(dialog).toBeVisible();
      if (name === 'Projects') await expect(dialog.getByRole('listitem')).toHaveCount(1);
      const { violations } = await axe(page).include('dialog').analyze();
      expect(violations, name).toEqual([]);
      if (name !== 'New project') await page.keyboard.press('Escape');
    }
    await dialog.getByRole('button', { name: 'Make the project' }).click();
    await expect(page.getByRole('heading', { name: 'Nothing stands in the wind yet' })).toBeVisible();
    const empty = await axe(page).analyze();
    expect(empty.violations).toEqual([]);
  });
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in a row edited in place and in a part that did not load: ${colorScheme}`, async ({
    page,
  }) => {
    test.slow();
    await page.emulateMedia({ colorScheme });
    await page.route(/assets\/(PlanPane|KeysDialog)-.*\.js$/, (route) => route.abort());
    await openDemo(page);
    await chooseFile(page, goodFile());
    await expect(page).toHaveTitle(/Test hull/);
    await page.locator('.side-words').getByText('Plan').click();
    await expect(page.getByRole('button', { name: 'Try again' })).toBeVisible();
    await page.locator('.row-pick').first().focus();
    await page.keyboard.press('F2');
    await expect(page.locator('.open-in-place input').first()).toBeVisible();
    expect((await axe(page).analyze()).violations).toEqual([]);
    await page.getByRole('button', { name: 'Keys' }).click();
    await expect(page.getByRole('dialog').getByRole('button', { name: 'Try again' })).toBeVisible();
    expect((await axe(page).include('dialog').analyze()).violations).toEqual([]);
  });
}

const places = [
  [
    'the envelope check',
    '#place=envelope&speed=24+kn&shape=roundBar&count=14&width=25+mm&length=610+mm&coefficient=0.6&power=1063+W&boatSpeed=fast&windAngle=30',
    'How it stands',
  ],
  ['the fairing bench', '#place=fairing', 'Candidates'],
] as const;

for (const colorScheme of ['light', 'dark'] as const) {
  for (const [name, hash, region] of places) {
    test(`axe finds nothing in ${name}: ${colorScheme}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme });
      for (const viewport of sizes) {
        await page.setViewportSize(viewport);
        await page.goto(`/${hash}`);
        await expect(page.getByRole('region', { name: region, exact: true })).toBeVisible();
        const { violations } = await axe(page).analyze();
        expect(violations, `${viewport.width} px`).toEqual([]);
      }
    });
  }
}
