import type { SurveyRow } from '../../project/tables/readSurvey';
import { formatValue } from '../../units/print';

/** "1 row", "12 rows". */
export function rowsText(count: number): string {
  return count === 1 ? '1 row' : `${formatValue(count, '1', { decimals: 0 })} rows`;
}

/** How the rows stand, as one sentence. */
export function standText(rows: readonly SurveyRow[]): string {
  const count = (state: SurveyRow['state']): number => rows.filter((row) => row.state === state).length;
  const parts = [
    [count('good'), 'can go in'],
    [count('bad'), 'to be mended'],
    [count('asks'), 'with a name that the ledger has'],
    [count('skipped'), 'skipped'],
    [count('unfilled'), 'of the template, not filled'],
  ] as const;
  const said = parts
    .filter(([number]) => number > 0)
    .map(([number, words]) => `${rowsText(number)} ${words}`);
  return said.length === 0 ? 'No row is left.' : `${said.join(', ')}.`;
}

/** What stands beside a row. */
export function stateText({ state, built, decision }: SurveyRow): string {
  switch (state) {
    case 'bad':
      return 'to be mended';
    case 'asks':
      return 'this name is in the ledger';
    case 'skipped':
      return 'skipped';
    case 'unfilled':
      return 'not filled';
    case 'good':
      return decision === 'replace' ? 'replaces the one in the ledger' : newText(built);
  }
}

/** What is said of a row that is new in the ledger. */
function newText(built: SurveyRow['built']): string {
  const safety = built?.fitting.flags.safetyRequired === true ? ', as safety-required' : '';
  const assumed = built?.assumed ?? [];
  return `goes in${safety}${assumed.length === 0 ? '' : `; assumed: ${assumed.join(', ')}`}`;
}
