import { expect, test } from 'playwright/test';
import { chooseFile, goodFile, openDemo } from './openPage';

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
