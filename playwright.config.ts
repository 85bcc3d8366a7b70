import { createServer, type AddressInfo } from 'node:net';
import { defineConfig } from 'playwright/test';
import { requireBrowser } from './tests/browser/resolve';

const browser = requireBrowser();

// This file is read once more in every worker, which inherits the environment: the port is chosen once.
const isWorker = process.env['TEST_WORKER_INDEX'] !== undefined;
if (!isWorker) console.log(`Browser for the journeys: ${browser.from}`);
process.env['JOURNEYS_PORT'] ??= String(await freePort());
const address = `http://127.0.0.1:${process.env['JOURNEYS_PORT']}`;

/** Asks the system for a free port, so that a running `npm start` or a second test run is not in the way. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => {
        resolve(port);
      });
    });
  });
}

export default defineConfig({
  testDir: 'tests/journeys',
  outputDir: 'test-results',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  // Generous, so that a slow machine fails no journey that only takes its time.
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: [['list'], ['json', { outputFile: 'reports/journeys.json' }]],
  use: {
    baseURL: address,
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    timezoneId: 'UTC',
    // A worker would answer in place of the routes by which journeys cut off files; offline.spec.ts allows it.
    serviceWorkers: 'block',
    trace: 'retain-on-failure',
    launchOptions: browser.executablePath === undefined ? {} : { executablePath: browser.executablePath },
  },
  projects: [
    { name: 'journeys', testMatch: '*.spec.ts' },
    // Not a test: `npm run screenshots` renews the pictures of the documents with it.
    { name: 'pictures', testMatch: 'pictures.ts' },
  ],
  webServer: {
    command: `npx vite preview --host 127.0.0.1 --port ${process.env['JOURNEYS_PORT']} --strictPort`,
    url: address,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
