/**
 * Makes sure that the journeys have a browser that starts, and says which one. Installs only when there is none:
 * Debian's package where apt and root are at hand, Playwright's own build elsewhere.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright';
import { findBrowser } from './resolve';

function run(program: string, programArguments: readonly string[]): void {
  console.log(`> ${program} ${programArguments.join(' ')}`);
  const { status, error } = spawnSync(program, programArguments, {
    // No answer can be typed under CI, so nothing may ask.
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  if (status !== 0) throw new Error(`${program} failed${error === undefined ? '' : `: ${error.message}`}`);
}

function isRoot(): boolean {
  return process.getuid?.() === 0;
}

function isDebianAsRoot(): boolean {
  return existsSync('/etc/debian_version') && existsSync('/usr/bin/apt-get') && isRoot();
}

function installDebiansChromium(): void {
  run('apt-get', ['update']);
  run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium']);
}

/** With the libraries that it stands on where the system's packages may be installed; they are most machines' already. */
function installPlaywrightsChromium(): void {
  const packageFile = createRequire(import.meta.url).resolve('playwright/package.json');
  const libraries = isDebianAsRoot() ? ['--with-deps'] : [];
  run(process.execPath, [join(dirname(packageFile), 'cli.js'), 'install', ...libraries, 'chromium']);
}

interface Started {
  readonly words: string;
}

/** Starts the browser that the journeys would take, the way they do; null when there is none. */
async function started(): Promise<Started | null> {
  const found = findBrowser();
  if (found === undefined) return null;
  const { executablePath, from } = found;
  try {
    const browser = await chromium.launch(executablePath === undefined ? {} : { executablePath });
    const version = browser.version();
    await browser.close();
    return { words: `${from}, version ${version}` };
  } catch (problem) {
    throw new Error(`${from} does not start. ${wordsOf(problem)}`, { cause: problem });
  }
}

/** Playwright says first what is missing, then at length what it tried. */
function wordsOf(problem: unknown): string {
  const words = problem instanceof Error ? problem.message : String(problem);
  return words
    .split(/^(?:Browser logs|Call log):/m, 1)
    .join('')
    .trim();
}

async function install(): Promise<Started | null> {
  if (isDebianAsRoot()) {
    try {
      installDebiansChromium();
      const debians = await started();
      if (debians !== null) return debians;
    } catch (problem) {
      // Debian's children may carry no package of that name, or one that only points elsewhere.
      console.log(`${wordsOf(problem)}\nTrying Playwright's own build.`);
    }
  }
  installPlaywrightsChromium();
  return started();
}

/** A browser that is there but does not start is replaced, unless somebody asked for that one. */
async function ready(): Promise<Started> {
  const isNamed = (process.env['E2E_CHROMIUM'] ?? '') !== '';
  let browser: Started | null = null;
  try {
    browser = await started();
  } catch (problem) {
    if (isNamed) throw problem;
    console.log(wordsOf(problem));
  }
  if (browser !== null) return browser;
  console.log('No browser for the journeys yet: installing one.');
  const installed = await install();
  if (installed === null) throw new Error('Installed, but still no browser was found.');
  return installed;
}

try {
  const { words } = await ready();
  console.log(`Browser for the journeys: ${words}`);
} catch (problem) {
  console.error(wordsOf(problem));
  console.error('Name a Chromium in E2E_CHROMIUM, or install one by hand, and try again.');
  console.error('Where only system libraries are missing: sudo npx playwright install-deps chromium');
  process.exitCode = 1;
}
