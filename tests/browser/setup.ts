/**
 * Makes sure that the journeys have a browser, and says which one. Installs only when there is none:
 * Debian's package where apt and root are at hand, Playwright's own build elsewhere.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
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

function isDebianAsRoot(): boolean {
  return existsSync('/etc/debian_version') && existsSync('/usr/bin/apt-get') && process.getuid?.() === 0;
}

function installDebiansChromium(): void {
  run('apt-get', ['update']);
  run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium']);
}

function installPlaywrightsChromium(): void {
  const packageFile = createRequire(import.meta.url).resolve('playwright/package.json');
  run(process.execPath, [join(dirname(packageFile), 'cli.js'), 'install', 'chromium']);
}

function install(): void {
  if (!isDebianAsRoot()) {
    installPlaywrightsChromium();
    return;
  }
  try {
    installDebiansChromium();
  } catch (problem) {
    // Debian's children may carry no package of that name, or one that only points elsewhere.
    console.log(
      `${problem instanceof Error ? problem.message : String(problem)}; trying Playwright's own build.`,
    );
  }
  if (findBrowser() === undefined) installPlaywrightsChromium();
}

try {
  let found = findBrowser();
  if (found === undefined) {
    console.log('No browser for the journeys yet: installing one.');
    install();
    found = findBrowser();
  }
  if (found === undefined) throw new Error('Installed, but still no browser was found.');
  console.log(`Browser for the journeys: ${found.from}`);
} catch (problem) {
  console.error(problem instanceof Error ? problem.message : String(problem));
  console.error('Name a Chromium in E2E_CHROMIUM, or install one by hand, and try again.');
  process.exitCode = 1;
}
