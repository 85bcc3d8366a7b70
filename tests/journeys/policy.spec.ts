import { expect, test } from 'playwright/test';
import { chooseFile, goodFile, openDemo } from './openPage';

// The worker keeps to the policy too, and a blocked one would complain.
test.use({ serviceWorkers: 'allow' });

test('keeps to its policy: no complaint in the console, no request to another origin', async ({
  page,
  baseURL,
}) => {
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => {
    if (message.type() !== 'log') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => requests.push(request.url()));
  await openDemo(page);
  await page.getByText('Run in a big sea').click();
  await chooseFile(page, goodFile());
  await expect(page).toHaveTitle(/Test hull/);
  for (const key of ['2', '3', '4', '5']) {
    await page.keyboard.press(key);
    await expect(page.locator('.working-place').getByRole('heading').first()).toBeVisible();
  }
  await page.getByRole('button', { name: 'Projects' }).click();
  await expect(page.getByRole('dialog').getByRole('listitem')).toHaveCount(1);
  await page.getByRole('dialog').getByRole('button', { name: 'New project' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Make the project' }).click();
  await expect(page.getByRole('heading', { name: 'Nothing stands in the wind yet' })).toBeVisible();
  expect(complaints).toEqual([]);
  expect(requests.length).toBeGreaterThan(3);
  expect(requests.filter((url) => new URL(url).origin !== new URL(baseURL ?? '').origin)).toEqual([]);
});

test('the policy is in force: an inline script of the page does not run', async ({ page }) => {
  await openDemo(page);
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.title = "inline ran"';
    document.body.append(script);
  });
  await expect(page).not.toHaveTitle('inline ran');
});
