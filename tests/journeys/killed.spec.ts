import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test, type Locator, type Page } from 'playwright/test';
import { nameField, openDemo, saveStatus } from './openPage';

/** A browser of its own, so that it can be killed with all that it had in memory; what it wrote stays in its folder. */
class OwnBrowser {
  private browser: ChildProcess | null = null;
  private readonly folder = mkdtempSync(join(tmpdir(), 'windtoll-killed-'));

  constructor(
    private readonly executable: string,
    private readonly address: string,
  ) {}

  async open(): Promise<Page> {
    rmSync(join(this.folder, portFile), { force: true });
    const flags = ['--headless', '--no-sandbox', '--no-first-run', '--remote-debugging-port=0'];
    this.browser = spawn(this.executable, [...flags, `--user-data-dir=${this.folder}`, 'about:blank'], {
      stdio: 'ignore',
      detached: true,
    });
    await expect.poll(() => this.port(), { timeout: startMs }).not.toBe('');
    const connection = await chromium.connectOverCDP(`http://127.0.0.1:${this.port()}`);
    const context = connection.contexts()[0] ?? (await connection.newContext());
    const page = context.pages()[0] ?? (await context.newPage());
    await page.setViewportSize({ width: 1440, height: 900 });
    return page;
  }

  /** Opens the page again after a kill. */
  async openAgain(): Promise<Page> {
    const page = await this.open();
    await page.goto(this.address);
    await expect(saveStatus(page)).toHaveText(/^Saved in this browser/, { timeout: startMs });
    return page;
  }

  /** No closing, no pagehide: the process is gone between two instructions. */
  async kill(): Promise<void> {
    const { browser } = this;
    if (browser === null || browser.exitCode !== null || browser.signalCode !== null) return;
    const gone = new Promise((resolve) => browser.once('exit', resolve));
    killGroup(browser);
    await gone;
  }

  async end(): Promise<void> {
    await this.kill();
    rmSync(this.folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
  }

  private port(): string {
    try {
      return readFileSync(join(this.folder, portFile), 'utf8').split('\n')[0] ?? '';
    } catch {
      return '';
    }
  }
}

/** The browser with all its children, which would otherwise write on for a moment. */
function killGroup({ pid }: ChildProcess): void {
  if (pid !== undefined) process.kill(-pid, 'SIGKILL');
}

const portFile = 'DevToolsActivePort';

/** A browser that starts afresh takes its time, more so on a busy machine. */
const startMs = 20_000;

const own = test.extend<{ ownBrowser: OwnBrowser }>({
  ownBrowser: async ({ baseURL, launchOptions }, provide) => {
    const executable = launchOptions.executablePath ?? chromium.executablePath();
    const ownBrowser = new OwnBrowser(executable, `${baseURL ?? ''}/`);
    await provide(ownBrowser);
    await ownBrowser.end();
  },
});

// A trace cannot be fetched from a browser that was killed; two starts of a browser are more than one test's time.
own.use({ trace: 'off' });
own.setTimeout(120_000);

/** As much as may be lost, ms. */
const mostLostMs = 500;

async function openDemoIn(ownBrowser: OwnBrowser, baseURL: string | undefined): Promise<Page> {
  const page = await ownBrowser.open();
  await page.goto(`${baseURL ?? ''}/`);
  await expect(page).toHaveTitle(/Quillamoor/);
  const ledger = page.getByRole('region', { name: 'Ledger', exact: true });
  await ledger.getByRole('button', { name: 'Boom', exact: true }).click();
  await page.locator('.side-words').getByText('Edit').click();
  await expect(nameField(page)).toHaveValue('Boom');
  return page;
}

function editField(page: Page, name: string): Locator {
  return page.getByRole('region', { name: 'Edit', exact: true }).getByRole('textbox', { name, exact: true });
}

own('a browser killed half a second after the last key has lost nothing', async ({ ownBrowser, baseURL }) => {
  const page = await openDemoIn(ownBrowser, baseURL);
  await nameField(page).press('End');
  await nameField(page).pressSequentially(' of carbon');
  await editField(page, 'Diameter').fill('133 mm');
  await editField(page, 'Mass').fill('31 k of carbon');
  await page.waitForTimeout(mostLostMs);
  await ownBrowser.kill();

  const next = await ownBrowser.openAgain();
  const word = next.getByRole('status', { name: 'Storage' });
  await expect(word).toContainText('1 field is half-typed: Mass of Boom of carbon, “31 k of carbon”.');
  await word.getByRole('button', { name: 'Open it' }).click();
  await expect(editField(next, 'Mass')).toBeFocused();
  await expect(editField(next, 'Mass')).toHaveValue('31 k of carbon');
  await expect(editField(next, 'Mass')).toHaveAttribute('aria-invalid', 'true');
  await expect(next.getByText(/"31 k of carbon" has no unit of/)).toBeVisible();
  await expect(nameField(next)).toHaveValue('Boom of carbon');
  await expect(editField(next, 'Diameter')).toHaveValue('133 mm');
  await expect(word).toBeEmpty();
});

own(
  'a browser killed in the middle of a word loses less than half a second',
  async ({ ownBrowser, baseURL }) => {
    const page = await openDemoIn(ownBrowser, baseURL);
    await nameField(page).press('End');
    const typedAtMs: number[] = [];
    const beganAtMs = performance.now();
    while (performance.now() - beganAtMs < 1700) {
      await page.keyboard.type('x');
      typedAtMs.push(performance.now());
      await page.waitForTimeout(50);
    }
    const killedAtMs = performance.now();
    await ownBrowser.kill();

    const next = await ownBrowser.openAgain();
    await next.locator('.side-words').getByText('Edit').click();
    await expect(nameField(next)).toHaveValue(/^Boomx+$/);
    const kept = (await nameField(next).inputValue()).length - 'Boom'.length;
    const firstLostMs = killedAtMs - (typedAtMs[kept] ?? killedAtMs);
    expect(firstLostMs).toBeLessThan(mostLostMs);
  },
);

test('half-typed text of an open tab is offered to another only when it has gone', async ({
  page,
  context,
}) => {
  await openDemo(page);
  const ledger = page.getByRole('region', { name: 'Ledger', exact: true });
  await ledger.getByRole('button', { name: 'Boom', exact: true }).click();
  await page.locator('.side-words').getByText('Edit').click();
  await editField(page, 'Mass').fill('31 k of carbon');
  await expect(saveStatus(page)).toHaveText(/^Saved in this browser/);
  const other = await context.newPage();
  await other.goto('/');
  await expect(saveStatus(other)).toHaveText(/^Saved in this browser/);
  const word = other.getByRole('status', { name: 'Storage' });
  // Longer than the second look waits.
  await other.waitForTimeout(1500);
  await expect(word).toBeEmpty();
  await page.close();
  await expect(word).toContainText('1 field is half-typed: Mass of Boom, “31 k of carbon”.');
  await word.getByRole('button', { name: 'Open it' }).click();
  await expect(editField(other, 'Mass')).toHaveValue('31 k of carbon');
  // A reload is another tab to the storage.
  await editField(other, 'Mass').fill('32 k of carbon');
  await other.reload();
  await expect(word).toContainText('1 field is half-typed: Mass of Boom, “32 k of carbon”.');
});

test('half-typed text stays with its row, is said, and outlives undo', async ({ page }) => {
  await openDemo(page);
  const ledger = page.getByRole('region', { name: 'Ledger', exact: true });
  await ledger.getByRole('button', { name: 'Boom', exact: true }).click();
  await page.locator('.side-words').getByText('Edit').click();
  await editField(page, 'Diameter').fill('133 mm');
  await editField(page, 'Diameter').fill('133 mm too many');
  await ledger.getByRole('button', { name: 'Stanchions', exact: true }).click();
  const word = page.getByRole('status', { name: 'Storage' });
  await expect(word).toContainText('1 field is half-typed: Diameter of Boom, “133 mm too many”.');
  await expect(editField(page, 'Diameter')).not.toHaveValue('133 mm too many');
  await page.getByRole('button', { name: 'Undo' }).click();
  await word.getByRole('button', { name: 'Open it' }).click();
  await expect(editField(page, 'Diameter')).toHaveValue('133 mm too many');
  await expect(page.getByText(/133 mm too many" has no unit .* stays in force/)).toBeVisible();
  await editField(page, 'Diameter').press('Escape');
  await expect(editField(page, 'Diameter')).not.toHaveValue('133 mm too many');
  await page.locator('.side-words').getByText('Working').click();
  await expect(word).toBeEmpty();
});
