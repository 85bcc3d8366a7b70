import { expect, test } from 'playwright/test';
import { nameField, openDemo, renameRow, savedFile } from './openPage';

test('panes, conditions, plans and the help sheet by key', async ({ page }) => {
  await openDemo(page);
  for (const [key, label] of [
    ['2', 'Picture'],
    ['3', 'Edit'],
    ['4', 'Plan'],
    ['5', 'Condition'],
    ['6', 'Methods'],
    ['1', 'Working of the selected row'],
  ] as const) {
    await page.keyboard.press(key);
    await expect(page.getByRole('region', { name: label, exact: true })).toBeVisible();
  }
  await page.keyboard.press(']');
  await expect(page.getByRole('radio', { name: 'Fast reach, port tack' })).toBeChecked();
  await page.keyboard.press('[');
  await page.keyboard.press('[');
  await expect(page.getByRole('radio', { name: 'Vennick Round, as routed' })).toBeChecked();
  await page.keyboard.press('p');
  await expect(page.getByRole('radio', { name: /Slimmer tubes/ })).toBeChecked();
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog')).toContainText('Duplicate');
  // A dialog is a place of its own.
  await page.keyboard.press('2');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('region', { name: 'Working of the selected row' })).toBeVisible();
});

test('undo and redo name their steps and work from inside a field', async ({ page }) => {
  await openDemo(page);
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveAttribute('title', 'Nothing to undo');
  await renameRow(page, 'Boom', 'Carbon boom');
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveAttribute('title', /^Undo: .*name/i);
  await page.keyboard.press('Control+z');
  await expect(nameField(page)).toHaveValue('Boom');
  await page.keyboard.press('Control+y');
  await expect(nameField(page)).toHaveValue('Carbon boom');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(nameField(page)).toHaveValue('Boom');
  await expect(page.getByRole('button', { name: 'Redo' })).toHaveAttribute('title', /^Redo: .*name/i);
});

test('half-typed text is the browser’s to undo', async ({ page }) => {
  await openDemo(page);
  await renameRow(page, 'Boom', 'Carbon boom');
  const diameter = page.getByRole('region', { name: 'Edit', exact: true }).getByRole('textbox').nth(2);
  const before = await diameter.inputValue();
  await diameter.press('End');
  await diameter.pressSequentially('xyz');
  await diameter.press('Control+z');
  await expect(nameField(page)).toHaveValue('Carbon boom');
  expect(await diameter.inputValue()).not.toBe(`${before}xyz`);
});

test('saves and opens files by key', async ({ page }) => {
  await openDemo(page);
  const file = await savedFile(page, () => page.keyboard.press('Control+s'));
  expect(file.text).toContain('Quillamoor');
  const choosing = page.waitForEvent('filechooser');
  await page.keyboard.press('Control+o');
  await choosing;
});
