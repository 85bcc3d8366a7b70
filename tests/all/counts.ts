import { existsSync, readFileSync } from 'node:fs';

export interface TestCounts {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

const noCounts: TestCounts = { passed: 0, failed: 0, skipped: 0 };

/** A runner that stopped early may leave no report or half a one: then it counted nothing. */
function readReport(path: string): unknown {
  if (!existsSync(path)) return {};
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return {};
  }
}

/** Counts of Vitest's JSON report. */
export function vitestCounts(path: string): TestCounts {
  const report = readReport(path) as Partial<
    Record<'numPassedTests' | 'numFailedTests' | 'numPendingTests' | 'numTodoTests', number>
  >;
  return {
    passed: report.numPassedTests ?? 0,
    failed: report.numFailedTests ?? 0,
    skipped: (report.numPendingTests ?? 0) + (report.numTodoTests ?? 0),
  };
}

/** Counts of Playwright's JSON report. */
export function journeyCounts(path: string): TestCounts {
  const { stats } = readReport(path) as {
    readonly stats?: {
      readonly expected: number;
      readonly unexpected: number;
      readonly flaky: number;
      readonly skipped: number;
    };
  };
  if (stats === undefined) return noCounts;
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky, skipped: stats.skipped };
}

export function sumCounts(counts: readonly TestCounts[]): TestCounts {
  return counts.reduce(
    (sum, one) => ({
      passed: sum.passed + one.passed,
      failed: sum.failed + one.failed,
      skipped: sum.skipped + one.skipped,
    }),
    noCounts,
  );
}
