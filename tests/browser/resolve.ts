import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright';

/** The browser that the journeys take. No `executablePath` means: let Playwright start its own. */
export interface FoundBrowser {
  readonly executablePath?: string;
  /** One phrase for people: which browser, and how it was found. */
  readonly from: string;
}

const namesOnPath = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

function isExecutableFile(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

function findOnPath(pathVariable: string): string | undefined {
  return namesOnPath
    .flatMap((name) =>
      pathVariable
        .split(delimiter)
        .filter((folder) => folder !== '')
        .map((folder) => join(folder, name)),
    )
    .find(isExecutableFile);
}

/**
 * Looks for a browser and changes nothing: the variable E2E_CHROMIUM, then Playwright's own, then a
 * Chromium on the path. `undefined` when there is none.
 *
 * @throws when E2E_CHROMIUM names something that cannot be run: whoever sets it wants that one and no other.
 */
export function findBrowser(
  environment: Readonly<Record<string, string | undefined>> = process.env,
  playwrightsOwnPath: string = chromium.executablePath(),
): FoundBrowser | undefined {
  const named = environment['E2E_CHROMIUM'];
  if (named !== undefined && named !== '') {
    if (!isExecutableFile(named))
      throw new Error(`E2E_CHROMIUM names "${named}", which is not a program that can be run.`);
    return { executablePath: named, from: `${named} (named by E2E_CHROMIUM)` };
  }
  if (existsSync(playwrightsOwnPath)) return { from: `${playwrightsOwnPath} (Playwright's own)` };
  const onPath = findOnPath(environment['PATH'] ?? '');
  return onPath === undefined ? undefined : { executablePath: onPath, from: `${onPath} (found on the path)` };
}

/** As {@link findBrowser}, but having none is an error that says what to do. */
export function requireBrowser(): FoundBrowser {
  const found = findBrowser();
  if (found === undefined) throw new Error('No browser for the journeys: run "npm run setup:browser" once.');
  return found;
}
