import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** What became of one mutant; the words are Stryker's. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly mutator: string;
  /** The text that was replaced, on one line. */
  readonly original: string;
  readonly replacement: string;
  readonly status: string;
}

export interface MutantCount {
  readonly file: string;
  /** Top-level statements of the file, and how many of them were drawn. */
  readonly statements: number;
  readonly drawn: number;
  readonly killed: number;
  readonly timeout: number;
  readonly survived: number;
  readonly noCoverage: number;
}

/** What a sample of mutants found, kept with the project so that the validation page can tell it. */
export interface MutationSurvey {
  readonly seed: string;
  /** Before tests were added for what had survived: what the sample says of the mutants that are not in it. */
  readonly firstTry: { readonly noticed: number; readonly valid: number };
  readonly files: readonly MutantCount[];
  readonly survivors: readonly Mutant[];
}

export const mutationSurveyPath = join(import.meta.dirname, 'mutationSurvey.json');

export function readMutationSurvey(): MutationSurvey | null {
  if (!existsSync(mutationSurveyPath)) return null;
  return JSON.parse(readFileSync(mutationSurveyPath, 'utf8')) as MutationSurvey;
}
