/**
 * `npm test`: every check in order, stopping at the first that fails. The last line counts the tests of both
 * runners (a step that fails outside of them counts as one failed).
 */
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { journeyCounts, sumCounts, vitestCounts, type TestCounts } from './counts';

interface Step {
  readonly name: string;
  readonly script: string;
  readonly scriptArguments?: readonly string[];
  readonly counts?: () => TestCounts;
}

const unitReport = 'reports/vitest.json';
const journeyReport = 'reports/journeys.json';

const steps: readonly Step[] = [
  { name: 'types', script: 'typecheck' },
  { name: 'lint and format', script: 'lint' },
  { name: 'unused code and packages', script: 'knip' },
  {
    name: 'units, physics, published checks, properties, views',
    script: 'test:unit',
    counts: () => vitestCounts(unitReport),
  },
  { name: 'validation document is up to date', script: 'validation', scriptArguments: ['--check'] },
  { name: 'build', script: 'build' },
  { name: 'size', script: 'size' },
  { name: 'browser', script: 'setup:browser' },
  { name: 'journeys', script: 'test:journeys', counts: () => journeyCounts(journeyReport) },
];

/** Runs an npm script with the npm that runs this one, without a shell in between. */
function runScript({ script, scriptArguments = [] }: Step): boolean {
  const npmFile = process.env['npm_execpath'];
  const npmArguments = ['run', '--silent', script, '--', ...scriptArguments];
  const [program, programArguments] =
    npmFile === undefined ? ['npm', npmArguments] : [process.execPath, [npmFile, ...npmArguments]];
  return spawnSync(program, programArguments, { stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;
}

function runStep(step: Step): { readonly isPassed: boolean; readonly counts: TestCounts } {
  console.log(`\n== ${step.name}`);
  const startMs = Date.now();
  const isPassed = runScript(step);
  console.log(
    `== ${step.name}: ${isPassed ? 'passed' : 'FAILED'} (${((Date.now() - startMs) / 1000).toFixed(1)} s)`,
  );
  const counts = step.counts?.() ?? { passed: 0, failed: 0, skipped: 0 };
  return { isPassed, counts: isPassed || counts.failed > 0 ? counts : { ...counts, failed: 1 } };
}

function runAll(): boolean {
  // A report of an earlier run must not be counted as one of this run.
  for (const report of [unitReport, journeyReport]) rmSync(report, { force: true });
  const counts: TestCounts[] = [];
  let isPassed = true;
  for (const step of steps) {
    const result = runStep(step);
    counts.push(result.counts);
    isPassed = result.isPassed;
    if (!isPassed) {
      console.log(`\nStopped at: ${step.name}`);
      break;
    }
  }
  const { passed, failed, skipped } = sumCounts(counts);
  console.log(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
  return isPassed;
}

process.exitCode = runAll() ? 0 : 1;
