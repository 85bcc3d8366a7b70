/**
 * Runs faults one after another in one process: for every job that comes in, the source file is handed to the tests with
 * one constant multiplied (no file is touched), and the related tests run until one fails.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createVitest } from 'vitest/node';
import { withFault, type Literal } from './literals';

export interface FaultJob {
  readonly literal: Pick<Literal, 'file' | 'from' | 'to'> | null;
  readonly tests: readonly string[];
}

/** The test file that noticed, or null. */
export interface FaultAnswer {
  readonly noticedBy: string | null;
}

const root = join(import.meta.dirname, '../..');
let current: FaultJob['literal'] = null;

const plugin = {
  name: 'one-fault',
  enforce: 'pre' as const,
  transform(code: string, id: string) {
    if (current === null || id.split('?')[0] !== join(root, current.file)) return null;
    return withFault(code, current);
  },
};

const vitest = await createVitest(
  'test',
  {
    config: false,
    root,
    watch: false,
    bail: 1,
    reporters: [{}],
    environment: 'node',
    pool: 'threads',
    maxWorkers: 1,
    testTimeout: 120_000,
    setupFiles: ['tests/setup/sameCases.ts', 'tests/faults/firstFailure.ts'],
    include: ['tests/published/*.test.ts', 'tests/properties/*.test.ts'],
  },
  { plugins: [plugin] },
);
await vitest.standalone();

async function passes(test: string): Promise<boolean> {
  const specifications = vitest.getModuleSpecifications(join(root, test));
  if (specifications.length === 0) throw new Error(`${test} is not one of the tests`);
  // `bail` counts the failures of earlier faults too.
  vitest.state.filesMap.clear();
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specifications, false);
  return unhandledErrors.length === 0 && testModules.every((testModule) => testModule.ok());
}

async function answerTo({ literal, tests }: FaultJob): Promise<FaultAnswer> {
  const before = current;
  current = literal;
  for (const touched of [before, literal]) {
    if (touched !== null) vitest.invalidateFile(join(root, touched.file));
  }
  for (const test of tests) if (!(await passes(test))) return { noticedBy: test };
  return { noticedBy: null };
}

// A source that cannot be read would look like a fault that nobody notices.
process.on('message', (job: FaultJob) => {
  if (job.literal !== null) readFileSync(join(root, job.literal.file));
  void answerTo(job).then((answer) => process.send?.(answer));
});
process.on('disconnect', () => process.exit());
process.send?.('ready');
