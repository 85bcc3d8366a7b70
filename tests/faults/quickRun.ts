import { slowTests } from './relatedTests';

const name = 'WINDTOLL_QUICK_MUTATION';

/** Slow tests left out: handed on to the processes that Stryker starts. */
export const quickRunEnvironment = { [name]: '1' } as const;

export function isQuickRun(): boolean {
  return process.env[name] === '1';
}

/** Tests of whole ledgers, or of tens of thousands of cases. */
export const leftOutWhenQuick = [
  ...slowTests,
  'envelopeTexts',
  'envelope',
  'benchWords',
  'powers',
  'symmetry',
];
