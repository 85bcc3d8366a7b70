/**
 * `npm run mutation:sample` runs Stryker on top-level statements of the core, in an order drawn by a fixed seed from the
 * files that stryker.config.json lists. What was found is kept in reports/mutationSample.json until a statement changes, so
 * that a later run goes on where this one stopped.
 *
 *     --statements=200   the first so many of the drawn order; all without it, which takes a night
 *     --batch=60         so many in one run of Stryker, which begins with all tests once
 *     --concurrency=1    processes at a time
 *     --quick            without the slow tests, which can only count too many survivors
 *     --again            statements with a survivor once more, after a test was added
 *     --record           writes tests/faults/mutationSurvey.json, which docs/validation.md is written from
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  mutationSurveyPath,
  readMutationSurvey,
  type Mutant,
  type MutantCount,
  type MutationSurvey,
} from './mutationSurvey';
import { quickRunEnvironment } from './quickRun';
import { drawnOrder, isListed, statementsOf, type Statement } from './statements';

const root = join(import.meta.dirname, '../..');
const seed = 'windtoll 1';
const keptPath = join(root, 'reports/mutationSample.json');
const strykerPath = join(root, 'reports/mutation.json');

/** Mutants by file and hash of their statement. */
type Kept = Record<string, Mutant[]>;

interface StrykerReport {
  readonly files: Readonly<Record<string, { source: string; mutants: readonly StrykerMutant[] }>>;
}

interface Place {
  readonly line: number;
  readonly column: number;
}

interface StrykerMutant {
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: string;
  readonly location: { readonly start: Place; readonly end: Place };
}

function option(name: string, otherwise: number): number {
  const start = `--${name}=`;
  const word = process.argv.find((one) => one.startsWith(start));
  return word === undefined ? otherwise : Number(word.slice(start.length));
}

function json(path: string): unknown {
  return JSON.parse(readFileSync(path, 'utf8'));
}

function allStatements(): Statement[] {
  const { mutate } = json(join(root, 'stryker.config.json')) as { mutate: string[] };
  return readdirSync(join(root, 'src/physics'), { recursive: true, encoding: 'utf8' })
    .map((name) => `src/physics/${name.replaceAll('\\', '/')}`)
    .filter((path) => isListed(path, mutate))
    .sort()
    .flatMap((path) => statementsOf(path, readFileSync(join(root, path), 'utf8')));
}

function keyOf({ file, hash }: Statement): string {
  return `${file} ${hash}`;
}

/** The text between two places of a source, on one line. */
function textBetween(source: string, { start, end }: StrykerMutant['location']): string {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  lines[last] = (lines[last] ?? '').slice(0, end.column - 1);
  lines[0] = (lines[0] ?? '').slice(start.column - 1);
  return oneLine(lines.join(' '));
}

function oneLine(text: string): string {
  const flat = text.replace(/\s+/g, ' ').trim();
  return flat.length > 90 ? `${flat.slice(0, 87)}...` : flat;
}

/** Runs Stryker on some statements and keeps what it found about each; one without mutants is kept as empty. */
function tryBatch(batch: readonly Statement[], kept: Kept): void {
  const ranges = batch.map(({ file, fromLine, toLine }) => `${file}:${fromLine}-${toLine}`).join(',');
  const words = ['run', '--mutate', ranges, '--concurrency', String(option('concurrency', 1))];
  const run = spawnSync(join(root, 'node_modules/.bin/stryker'), words, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...(process.argv.includes('--quick') ? quickRunEnvironment : {}) },
  });
  if (run.status !== 0) throw new Error(`Stryker ended with ${run.status ?? 'a signal'}`);
  const { files } = json(strykerPath) as StrykerReport;
  for (const statement of batch) {
    const { source = '', mutants = [] } = files[statement.file] ?? {};
    kept[keyOf(statement)] = mutants
      .filter(({ location: { start } }) => start.line >= statement.fromLine && start.line <= statement.toLine)
      .map((mutant) => ({
        file: statement.file,
        line: mutant.location.start.line,
        mutator: mutant.mutatorName,
        original: textBetween(source, mutant.location),
        replacement: oneLine(mutant.replacement ?? ''),
        status: mutant.status,
      }));
  }
  mkdirSync(join(root, 'reports'), { recursive: true });
  writeFileSync(keptPath, JSON.stringify(kept, null, 1));
}

function survives({ status }: Mutant): boolean {
  return status === 'Survived' || status === 'NoCoverage';
}

function surveyOf(all: readonly Statement[], drawn: readonly Statement[], kept: Kept): MutationSurvey {
  const files = [...new Set(all.map(({ file }) => file))].map((file): MutantCount => {
    const own = drawn.filter((statement) => statement.file === file);
    const mutants = own.flatMap((statement) => kept[keyOf(statement)] ?? []);
    const count = (status: string): number => mutants.filter((mutant) => mutant.status === status).length;
    return {
      file,
      statements: all.filter((statement) => statement.file === file).length,
      drawn: own.length,
      killed: count('Killed'),
      timeout: count('Timeout'),
      survived: count('Survived'),
      noCoverage: count('NoCoverage'),
    };
  });
  const survivors = drawn.flatMap((one) => (kept[keyOf(one)] ?? []).filter(survives));
  const noticed = files.reduce((sum, { killed, timeout }) => sum + killed + timeout, 0);
  const now = { noticed, valid: noticed + survivors.length };
  const before = process.argv.includes('--again') ? readMutationSurvey()?.firstTry : undefined;
  return { seed, firstTry: before ?? now, files, survivors };
}

function run(): void {
  const kept: Kept = existsSync(keptPath) ? (json(keptPath) as Kept) : {};
  const all = allStatements();
  const sample = drawnOrder(all, seed).slice(0, option('statements', Infinity));
  const again = process.argv.includes('--again');
  const isOpen = (statement: Statement): boolean => {
    const known = kept[keyOf(statement)];
    return known === undefined || (again && known.some(survives));
  };
  const open = sample.filter(isOpen);
  console.log(`${open.length} of ${all.length} statements to try`);
  const size = option('batch', 60);
  for (let from = 0; from < open.length; from += size) tryBatch(open.slice(from, from + size), kept);
  const tried = sample.filter((statement) => kept[keyOf(statement)] !== undefined);
  const survey = surveyOf(all, tried, kept);
  const sum = (count: (file: MutantCount) => number): number =>
    survey.files.reduce((total, file) => total + count(file), 0);
  const caught = sum(({ killed, timeout }) => killed + timeout);
  const valid = caught + survey.survivors.length;
  console.log(`${caught} of ${valid} mutants noticed (${((100 * caught) / valid).toFixed(1)} %)`);
  if (process.argv.includes('--record'))
    writeFileSync(mutationSurveyPath, `${JSON.stringify(survey, null, 2)}\n`);
}

run();
