import { whyEquivalent } from '../faults/equivalents';
import { readSurvey, type FaultSurvey, type FileSurvey } from '../faults/survey';
import { wilsonRange } from '../faults/wilson';
import { table } from './documentTables';

export function sumOf<File>(files: readonly File[], count: (file: File) => number): number {
  return files.reduce((sum, file) => sum + count(file), 0);
}

/** As "150 of 159 (94.3 %)". */
export function shareText(noticed: number, tried: number): string {
  return `${noticed} of ${tried} (${((100 * noticed) / tried).toFixed(1)} %)`;
}

/** As "89.7 to 97.0 %", by Wilson's score. */
export function rangeText(noticed: number, tried: number): string {
  const { low, high } = wilsonRange(noticed, tried);
  return `${(100 * low).toFixed(1)} to ${(100 * high).toFixed(1)} %`;
}

function isTable({ file }: FileSurvey): boolean {
  return /\/(fairing|roundBar|sphere|wire)Table\.ts$/.test(file);
}

function lineOf(what: string, files: readonly FileSurvey[]): string {
  const noticed = sumOf(files, (file) => file.noticed);
  const tried = sumOf(files, (file) => file.tried);
  const open = sumOf(files, (file) => file.constants - file.excluded);
  return `- ${what}: ${shareText(noticed, tried)}, of ${open} constants`;
}

/** What the sample says of the constants that are not in it. */
function forTheWhole({ files }: FaultSurvey): string[] {
  const fresh = {
    tried: sumOf(files, (file) => file.fresh?.tried ?? 0),
    noticed: sumOf(files, (file) => file.fresh?.noticed ?? 0),
  };
  const closed =
    'Tests were added where the first tries showed gaps, so that these shares flatter what was not tried.';
  if (fresh.tried === 0) return [closed];
  return [
    `${closed} Of`,
    `constants drawn after that, the tables left out, ${shareText(fresh.noticed, fresh.tried)} were noticed at the first try: ${rangeText(fresh.noticed, fresh.tried)} of`,
    'all such constants with 95 % confidence (Wilson).',
  ];
}

/** The later tries are of properties that draw by `between` of tests/properties/arbitraries.ts. */
const lastDayOfDrawsByBits = '2026-11-26';

function found(survey: FaultSurvey): string[] {
  const { files, survivors } = survey;
  const tried = sumOf(files, (file) => file.tried);
  const noticed = sumOf(files, (file) => file.noticed);
  const open = sumOf(files, (file) => file.constants - file.excluded);
  return [
    `Noticed: **${shareText(noticed, tried)}** of those tried, of ${open} constants in the whole core. Where not every constant was tried, it was`,
    'every so many’th, counted on over the ends of files, and one of every file that the count stepped over; of a file that a stopped run',
    'did not finish (`fairingTable.ts`), only of its beginning.',
    '',
    lineOf('in the printed tables of fairings, round bars, spheres and wires', files.filter(isTable)),
    lineOf(
      'in all other files',
      files.filter((file) => !isTable(file)),
    ),
    '',
    ...forTheWhole(survey),
    '',
    'The last column is the day by which the constants of a file had been tried. Files that changed after',
    `${lastDayOfDrawsByBits} were tried anew, by the same count among them alone, and with what had survived where its line still stands; the`,
    'others stand as they were recorded, but for their survivors, which were tried again. Until that day the properties drew their numbers by',
    'bits, mostly next to zero where a range holds it; since then four in five evenly over their ranges.',
    '',
    ...table(
      ['file', 'constants', 'left alone', 'tried', 'noticed', 'tried by'],
      files.map(({ file, constants, excluded, tried: count, noticed: caught, triedBy }) => [
        file,
        String(constants),
        String(excluded),
        String(count),
        String(caught),
        triedBy ?? '',
      ]),
    ),
    '',
    'Survivors, those that cannot be noticed among them:',
    '',
    ...table(
      ['file', 'constant', 'line', 'why', 'tried on'],
      survivors.map((survivor) => [
        survivor.file,
        survivor.text,
        `\`${survivor.context}\``,
        whyEquivalent(survivor) ?? 'a gap in the tests',
        survivor.triedOn,
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
    'properties that depend on the file, no others. Left alone: zeros, places in a list, bounds of loops and searches, sizes of caches,',
    'what keeps a logarithm from zero, and the steps of a root search or a quadrature. In a full run nothing else is left alone; a run may be',
    'cut to the nearest test files, which can only count too many survivors.',
    '',
    ...(survey === null ? ['Not run yet.'] : found(survey)),
  ];
}
