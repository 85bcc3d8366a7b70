import { whyEquivalentMutant } from '../faults/equivalents';
import { readMutationSurvey, type MutantCount, type MutationSurvey } from '../faults/mutationSurvey';
import { table } from './documentTables';
import { rangeText, shareText, sumOf } from './faultsDocument';

const noticedIn = ({ killed, timeout }: MutantCount): number => killed + timeout;
const validIn = (file: MutantCount): number => noticedIn(file) + file.survived + file.noCoverage;

function code(text: string): string {
  return text === '' ? 'nothing' : `\`${text.replaceAll('`', '´')}\``;
}

function found({ seed, firstTry, files, survivors }: MutationSurvey): string[] {
  const sum = (count: (file: MutantCount) => number): number => sumOf(files, count);
  const [noticed, valid] = [sum(noticedIn), sum(validIn)];
  const [drawn, statements] = [sum((file) => file.drawn), sum((file) => file.statements)];
  const tried = files.filter((file) => file.drawn > 0);
  return [
    `Noticed: **${shareText(noticed, valid)}** of the mutants in ${drawn} of ${statements} top-level statements, drawn by the seed`,
    `"${seed}" from ${files.length} files, of which ${tried.length} are in the sample. Killed ${sum((file) => file.killed)}, timed out ${sum((file) => file.timeout)}, survived`,
    `${sum((file) => file.survived)}, reached by no test ${sum((file) => file.noCoverage)}. The tests of whole ledgers and the slowest were left out, which can only count too many survivors.`,
    '',
    `Before tests were added for its survivors, ${shareText(firstTry.noticed, firstTry.valid)} of the sample were noticed: ${rangeText(firstTry.noticed, firstTry.valid)} of all`,
    'mutants with 95 % confidence (Wilson, each mutant counted as drawn by itself, though those of one statement come together). Two of',
    'those tests, of workings and of the wind laws’ notice, were written with the list of statements in sight, so that this flatters a little.',
    '',
    ...table(
      ['file', 'statements', 'drawn', 'mutants', 'noticed', 'survived', 'no coverage'],
      tried.map((file) => [
        file.file,
        String(file.statements),
        String(file.drawn),
        String(validIn(file)),
        String(noticedIn(file)),
        String(file.survived),
        String(file.noCoverage),
      ]),
    ),
    '',
    'Survivors, those that change nothing among them:',
    '',
    ...table(
      ['file', 'mutant', 'text', 'became', 'why'],
      survivors.map((mutant) => [
        `${mutant.file}:${mutant.line}`,
        mutant.status === 'NoCoverage' ? `${mutant.mutator}, no coverage` : mutant.mutator,
        code(mutant.original),
        code(mutant.replacement),
        whyEquivalentMutant(mutant) ?? 'a gap in the tests',
      ]),
    ),
  ];
}

/** The part of docs/validation.md about formulas that were changed on purpose. */
export function mutationSection(): string[] {
  const survey = readMutationSurvey();
  return [
    '## Would a wrong formula be noticed?',
    '',
    '`npm run mutation:sample` lets Stryker change operators, comparisons, conditions, calls and blocks of the core, and runs the tests of',
    'published numbers, of properties and of claims about the core that reach the change. Recorded results are not asked: they would notice any',
    'change, right or wrong. Left out: files without a formula (types, the bibliography, the labels of the working, the printed table',
    'of fairings) and texts. A whole run takes a night, so that this is a sample.',
    '',
    ...(survey === null ? ['Not run yet.'] : found(survey)),
  ];
}
