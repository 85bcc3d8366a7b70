/**
 * `npm run faults` multiplies every constant of the core by 1.1, one at a time, and asks whether a test of a published
 * number or of a property notices. It takes hours; what was tried is kept in reports/faults.json and not tried again until
 * the file changes.
 *
 *     --file=strut/,section/wire    files whose path holds one of these
 *     --limit=100                   at most so many this time
 *     --every=10                    every tenth constant only, counted on over the ends of files, and one of every file
 *                                   that the count steps over
 *     --nearest=6                   the six nearest test files only: quicker, and can only count too many survivors
 *     --again                       once more the survivors that equivalents.ts gives no reason for, after a test was added
 *     --survivors                   the survivors of the survey that is kept, found again by their line, and no others
 *     --patience=300                seconds until a constant counts as one that sends a loop round for ever
 *     --fresh                       counts what is tried now apart: gaps that others showed have been closed by now
 *     --record                      writes tests/faults/faultSurvey.json, which docs/validation.md is written from
 *     --onto                        with --record: keeps of that survey the files of which nothing was tried here, and the
 *                                   counts of those of which less was tried, with the same text, than it counts
 */
import { fork, type ChildProcess } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { whyEquivalent } from './equivalents';
import type { FaultAnswer, FaultJob } from './faultWorker';
import { everyNth, literalsOf, type Literal } from './literals';
import { ontoSurvey } from './ontoSurvey';
import { relatedTests } from './relatedTests';
import { readSurvey, surveyPath, type FaultSurvey, type FileSurvey, type Finding } from './survey';

const root = join(import.meta.dirname, '../..');
const reportPath = join(root, 'reports/faults.json');
/** A constant that sends a loop round for ever is noticed by the clock. */
const patienceMs = 1000 * Number(option('patience') ?? 300);

/** By file: the hash of the text that was tried, and what was found at each place. */
type Report = Record<string, { hash: string; findings: Finding[] }>;

function option(name: string): string | null {
  const start = `--${name}=`;
  return process.argv.find((word) => word.startsWith(start))?.slice(start.length) ?? null;
}

function sourceFiles(): string[] {
  return readdirSync(join(root, 'src/physics'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `src/physics/${name.replaceAll('\\', '/')}`)
    .sort();
}

function textOf(file: string): string {
  return readFileSync(join(root, file), 'utf8');
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}

function readReport(): Report {
  const report = existsSync(reportPath) ? (JSON.parse(readFileSync(reportPath, 'utf8')) as Report) : {};
  const current = sourceFiles().map((file): [string, Report[string]] => {
    const hash = hashOf(textOf(file));
    const known = report[file];
    return [file, known?.hash === hash ? known : { hash, findings: [] }];
  });
  return Object.fromEntries(current);
}

function writeReport(report: Report): void {
  mkdirSync(join(root, 'reports'), { recursive: true });
  writeFileSync(reportPath, JSON.stringify(report, null, 1));
}

function startWorker(): Promise<ChildProcess> {
  const worker = fork(join(import.meta.dirname, 'faultWorker.ts'), { execArgv: ['--import', 'tsx'] });
  return new Promise((resolve, reject) => {
    worker.once('message', () => {
      resolve(worker);
    });
    worker.once('exit', (code) => {
      reject(new Error(`the worker ended with ${code ?? 'a signal'} before it began`));
    });
  });
}

function ask(worker: ChildProcess, job: FaultJob): Promise<string | null> {
  return new Promise((resolve, reject) => {
    const done = (then: () => void): void => {
      clearTimeout(clock);
      worker.removeAllListeners();
      then();
    };
    const clock = setTimeout(() => {
      done(() => {
        worker.kill('SIGKILL');
        resolve('timeout');
      });
    }, patienceMs);
    worker.once('message', (answer: FaultAnswer) => {
      done(() => {
        resolve(answer.noticedBy);
      });
    });
    worker.once('exit', (code) => {
      done(() => {
        reject(new Error(`the worker ended with ${code ?? 'a signal'}`));
      });
    });
    worker.send(job);
  });
}

/** Constants that are not left alone, file by file. */
function openConstants(): Literal[] {
  const parts = (option('file') ?? '').split(',');
  return sourceFiles()
    .filter((file) => parts.some((part) => file.includes(part)))
    .flatMap((file) => literalsOf(file, textOf(file)))
    .filter(({ excluded }) => excluded === null);
}

/** Nothing noticed it, and nobody has said why nothing could. */
function isGap(finding: Finding | undefined): boolean {
  return finding?.noticedBy === null && whyEquivalent(finding) === null;
}

/** A survivor that is kept stands at its place still; or, where its file has changed, all like it in the same line. */
function keptSurvivors(open: readonly Literal[]): Literal[] {
  const found = (readSurvey()?.survivors ?? []).flatMap(({ file, from, text, context }) => {
    const alike = open.filter(
      (literal) => literal.file === file && literal.text === text && literal.context === context,
    );
    const same = alike.filter((literal) => literal.from === from);
    return same.length > 0 ? same : alike;
  });
  return open.filter((literal) => found.includes(literal));
}

/** Constants of the sample that have not been tried; or, again, the gaps. */
function jobs(report: Report): Literal[] {
  const again = process.argv.includes('--again');
  const known = ({ file, from }: Literal): Finding | undefined =>
    report[file]?.findings.find((finding) => finding.from === from);
  const open = openConstants();
  const sample = process.argv.includes('--survivors')
    ? keptSurvivors(open)
    : everyNth(open, Number(option('every') ?? 1));
  const wanted = again
    ? open.filter((literal) => isGap(known(literal)))
    : sample.filter((literal) => known(literal) === undefined);
  return wanted.slice(0, Number(option('limit') ?? Infinity));
}

function keep(report: Report, { file, line, from, text, context }: Literal, noticedBy: string | null): void {
  const entry = report[file];
  if (entry === undefined) throw new Error(`${file} is not in the report`);
  const triedOn = new Date().toISOString().slice(0, 10);
  const before = entry.findings.find((finding) => finding.from === from);
  const isFresh = before === undefined && process.argv.includes('--fresh');
  const freshNoticed = isFresh ? noticedBy !== null : before?.freshNoticed;
  entry.findings = [
    ...entry.findings.filter((finding) => finding !== before),
    {
      file,
      line,
      from,
      text,
      context,
      noticedBy,
      triedOn,
      ...(freshNoticed === undefined ? {} : { freshNoticed }),
    },
  ].sort((a, b) => a.from - b.from);
  writeReport(report);
}

function surveyOf(report: Report): FaultSurvey {
  const files = Object.entries(report).map(([file, { hash, findings }]): FileSurvey => {
    const literals = literalsOf(file, textOf(file));
    const excluded = literals.filter((literal) => literal.excluded !== null).length;
    const fresh = findings.filter(({ freshNoticed }) => freshNoticed !== undefined);
    const freshNoticed = fresh.filter((finding) => finding.freshNoticed).length;
    return {
      file,
      hash,
      triedBy:
        findings
          .map(({ triedOn }) => triedOn)
          .sort()
          .at(-1) ?? null,
      constants: literals.length,
      excluded,
      tried: findings.length,
      noticed: findings.filter(({ noticedBy }) => noticedBy !== null).length,
      ...(fresh.length === 0 ? {} : { fresh: { tried: fresh.length, noticed: freshNoticed } }),
    };
  });
  return {
    files: files.filter(({ constants }) => constants > 0),
    survivors: triedIn(report).filter(({ noticedBy }) => noticedBy === null),
  };
}

function triedIn(report: Report): Finding[] {
  return Object.values(report).flatMap(({ findings }) => findings);
}

/** What was found here alone, or laid onto the survey that is kept. */
function surveyToKeep(report: Report): FaultSurvey {
  const now = surveyOf(report);
  const kept = process.argv.includes('--onto') ? readSurvey() : null;
  return kept === null ? now : ontoSurvey(kept, now, triedIn(report));
}

function summary({ files }: FaultSurvey): string {
  const sum = (count: (file: FileSurvey) => number): number =>
    files.reduce((total, file) => total + count(file), 0);
  const tried = sum((file) => file.tried);
  const noticed = sum((file) => file.noticed);
  const open = sum((file) => file.constants - file.excluded);
  return `${noticed} of ${tried} noticed (${((100 * noticed) / tried).toFixed(1)} %); ${open} constants in all`;
}

/** A test that fails without any fault would notice everything, and every count would be worthless. */
async function refuseFailingTest(worker: ChildProcess, test: string): Promise<void> {
  if ((await ask(worker, { literal: null, tests: [test] })) !== null) {
    throw new Error(`${test} fails without any fault`);
  }
}

async function run(): Promise<void> {
  const report = readReport();
  const open = jobs(report);
  console.log(`${open.length} constants to try`);
  let worker = open.length === 0 ? null : await startWorker();
  const checked = new Set<string>();
  const nearest = Number(option('nearest') ?? Infinity);
  for (const literal of open) {
    worker ??= await startWorker();
    const tests = relatedTests(root, literal.file).slice(0, nearest);
    const noticedBy = await ask(worker, { literal, tests });
    if (noticedBy === 'timeout') worker = null;
    else if (noticedBy !== null && !checked.has(noticedBy)) {
      await refuseFailingTest(worker, noticedBy);
      checked.add(noticedBy);
    }
    keep(report, literal, noticedBy);
    console.log(
      `${literal.file}:${literal.line} ${literal.text}: ${noticedBy ?? `SURVIVED  ${literal.context}`}`,
    );
  }
  worker?.kill();
  console.log(`here: ${summary(surveyOf(report))}`);
  if (!process.argv.includes('--record')) return;
  const survey = surveyToKeep(report);
  console.log(`kept: ${summary(survey)}`);
  writeFileSync(surveyPath, `${JSON.stringify(survey, null, 2)}\n`);
}

// A worker whose parent has gone ends by itself.
await run().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
});
