import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { journeyCounts, sumCounts, vitestCounts } from '../all/counts';

let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'windtoll-counts-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true });
});

function write(text: string): string {
  const path = join(folder, 'report.json');
  writeFileSync(path, text);
  return path;
}

describe('the closing line', () => {
  it('counts a unit report', () => {
    const path = write('{"numPassedTests":7,"numFailedTests":2,"numPendingTests":1,"numTodoTests":3}');
    expect(vitestCounts(path)).toEqual({ passed: 7, failed: 2, skipped: 4 });
  });

  it('counts a journey report, and a journey that passed only at the second try as failed', () => {
    const path = write('{"stats":{"expected":5,"unexpected":1,"flaky":1,"skipped":0}}');
    expect(journeyCounts(path)).toEqual({ passed: 5, failed: 2, skipped: 0 });
  });

  it('counts nothing for a report that is missing or cut off', () => {
    const nothing = { passed: 0, failed: 0, skipped: 0 };
    expect(vitestCounts(join(folder, 'missing.json'))).toEqual(nothing);
    expect(journeyCounts(write('{"stats":{"expe'))).toEqual(nothing);
  });

  it('adds up', () => {
    const one = { passed: 1, failed: 2, skipped: 3 };
    expect(sumCounts([one, one])).toEqual({ passed: 2, failed: 4, skipped: 6 });
  });
});
