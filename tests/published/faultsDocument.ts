import { whyEquivalent } from '../faults/equivalents';
import { readSurvey, type FaultSurvey, type FileSurvey } from '../faults/survey';
import { table } from './documentTables';

function sumOf(files: readonly FileSurvey[], count: (file: FileSurvey) => number): number {
  return files.reduce((sum, file) => sum + count(file), 0);
}

function shareText(noticed: number, tried: number): string {
  return `${noticed} of ${tried} (${((100 * noticed) / tried).toFixed(1)} %)`;
}

function found({ files, survivors }: FaultSurvey): string[] {
  const tried = files.filter((file) => file.tried > 0);
  const noticed = sumOf(tried, (file) => file.noticed);
  const open = sumOf(files, (file) => file.constants - file.excluded);
  return [
    `Noticed: **${shareText(
      noticed,
      sumOf(tried, (file) => file.tried),
    )}** of those tried, of ${open} constants in the whole core. Where not every constant of a file was`,
    'tried, it was every so many’th, so that all parts of the file are in the sample.',
    '',
    ...table(
      ['file', 'constants', 'left alone', 'tried', 'noticed'],
      tried.map(({ file, constants, excluded, tried: count, noticed: caught }) => [
        file,
        String(constants),
        String(excluded),
        String(count),
        String(caught),
      ]),
    ),
    '',
    'Survivors:',
    '',
    ...table(
      ['file', 'constant', 'line', 'why'],
      survivors.map((survivor) => [
        survivor.file,
        survivor.text,
        `\`${survivor.context}\``,
        whyEquivalent(survivor) ?? 'a gap in the tests that were run',
      ]),
    ),
  ];
}

/** The part of docs/validation.md about constants that were made wrong on purpose. */
export function faultsSection(): string[] {
  const survey = readSurvey();
  return [
    '## Would a wrong constant be noticed?',
    '',
    '`npm run faults` multiplies the constants of the core by 1.1, one at a time, and runs the tests of published numbers and of',
    'properties that depend on the file. Left alone: zeros, places in a list, bounds of loops and searches, sizes of caches, what keeps a',
    'logarithm from zero, and the steps of a root search or a quadrature. In a full run nothing else is left alone; a run may be cut to the',
    'nearest test files, which can only count too many survivors.',
    '',
    ...(survey === null ? ['Not run yet.'] : found(survey)),
  ];
}
