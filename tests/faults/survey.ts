import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** What became of one constant. */
export interface Finding {
  readonly file: string;
  readonly line: number;
  readonly from: number;
  readonly text: string;
  readonly context: string;
  /** The test file that noticed, `timeout`, or null for a survivor. */
  readonly noticedBy: string | null;
  /** Day of the last try, as 2026-11-26. */
  readonly triedOn: string;
  /** Of a constant drawn after the gaps that others showed had been closed: whether it was noticed at the first try. */
  readonly freshNoticed?: boolean;
}

/** Constants of one file: in all, tried, noticed. */
export interface FileSurvey {
  readonly file: string;
  /** Of the text that was tried. */
  readonly hash: string;
  /** Day by which its tries had been made; null when nothing was tried. */
  readonly triedBy: string | null;
  readonly constants: number;
  readonly excluded: number;
  readonly tried: number;
  readonly noticed: number;
  /** Those among them that were drawn after the gaps that others showed had been closed; what was added for them is not counted. */
  readonly fresh?: { readonly tried: number; readonly noticed: number };
}

/** What a run found, kept with the project so that the validation page can tell it. */
export interface FaultSurvey {
  readonly files: readonly FileSurvey[];
  readonly survivors: readonly Finding[];
}

export const surveyPath = join(import.meta.dirname, 'faultSurvey.json');

export function readSurvey(): FaultSurvey | null {
  return existsSync(surveyPath) ? (JSON.parse(readFileSync(surveyPath, 'utf8')) as FaultSurvey) : null;
}
