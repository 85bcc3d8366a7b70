import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { findBrowser } from '../browser/resolve';

let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'windtoll-browser-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true });
});

function plant(name: string): string {
  const path = join(folder, name);
  writeFileSync(path, '#!/bin/sh\n');
  chmodSync(path, 0o755);
  return path;
}

describe('the browser of the journeys', () => {
  it('is the one named by E2E_CHROMIUM before any other', () => {
    const named = plant('named');
    plant('chromium');
    const found = findBrowser({ E2E_CHROMIUM: named, PATH: folder }, plant('own'));
    expect(found?.executablePath).toBe(named);
    expect(found?.from).toContain('E2E_CHROMIUM');
  });

  it.each(['missing', '.'])(
    'stops when E2E_CHROMIUM names what cannot be run (%s), never taking another',
    (name) => {
      plant('chromium');
      expect(() => findBrowser({ E2E_CHROMIUM: join(folder, name), PATH: folder }, plant('own'))).toThrow(
        /E2E_CHROMIUM names/,
      );
    },
  );

  it("is Playwright's own before one on the path, and then needs no address", () => {
    plant('chromium');
    const own = plant('own');
    const found = findBrowser({ PATH: folder }, own);
    expect(found).toEqual({ from: `${own} (Playwright's own)` });
  });

  it('is the first Chromium on the path, Debian names before Google ones, wherever they stand', () => {
    plant('google-chrome');
    const chromium = plant('chromium');
    const path = ['', join(folder, 'nowhere'), folder].join(delimiter);
    expect(findBrowser({ PATH: path }, join(folder, 'none'))?.executablePath).toBe(chromium);
  });

  it('is none when there is none, and an empty E2E_CHROMIUM counts as not set', () => {
    expect(findBrowser({ E2E_CHROMIUM: '', PATH: folder }, join(folder, 'none'))).toBeUndefined();
  });
});
