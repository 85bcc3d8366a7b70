import papaparse from 'papaparse';

/** Largest table, characters: more than 5000 rows, and as much as the browser keeps of a text that is no value yet. */
export const mostCharacters = 1_000_000;
const mostRecords = 20_000;
const mostColumns = 200;

/** A record of a table with its number in the text, from 1. Blank ones are left out. */
export interface TableRecord {
  readonly number: number;
  readonly cells: readonly string[];
}

export interface Table {
  readonly records: readonly TableRecord[];
  readonly columnCount: number;
  readonly delimiter: Delimiter;
  /** True where a quotation mark never closes: all of them are then read as they stand. */
  readonly areQuotesLiteral: boolean;
}

export type ReadTable =
  { readonly ok: true; readonly table: Table } | { readonly ok: false; readonly message: string };

/** In the order in which they are preferred: people paste tabs, and commas stand in numbers too. */
const delimiters = ['\t', ';', ',', '|'] as const;

export type Delimiter = (typeof delimiters)[number];

/** For reading them out. */
export const delimiterNames: Readonly<Record<Delimiter, string>> = {
  '\t': 'tabs',
  ';': 'semicolons',
  ',': 'commas',
  '|': 'bars',
};

/**
 * Reads a CSV file or what was pasted from a spreadsheet: delimiter found, byte order mark and blank rows left out, every
 * record filled up to the same number of cells. Never throws; a text beyond the bounds is refused with a sentence.
 */
export function readTable(text: string): ReadTable {
  const body = withoutMark(text);
  const refused = refusalOf(body);
  if (refused !== null) return { ok: false, message: refused };
  const named = namedDelimiter(body);
  const delimiter = named?.delimiter ?? foundDelimiter(body);
  return recordsOf(named?.rest ?? body, delimiter, named === null ? 1 : 2);
}

function withoutMark(text: string): string {
  return text.startsWith('\ufeff') ? text.slice(1) : text;
}

function refusalOf(text: string): string | null {
  if (text.trim() === '') return 'There is no text in it.';
  if (text.length > mostCharacters)
    return `The table is longer than a million characters; bring it in in parts.`;
  if (text.startsWith('PK\u0003\u0004') || text.includes('\u0000'))
    return 'This is no text: a spreadsheet has to be saved as CSV first, or its cells copied and pasted here.';
  return null;
}

/** Some spreadsheets write "sep=;" as the first line. */
function namedDelimiter(text: string): { readonly delimiter: Delimiter; readonly rest: string } | null {
  const match = /^"?sep=(.)"?\r?\n/i.exec(text);
  const delimiter = delimiters.find((each) => each === match?.[1]);
  if (match === null || delimiter === undefined) return null;
  return { delimiter, rest: text.slice(match[0].length) };
}

const lookedAt = 300;

/** The delimiter by which most records have the same number of cells, and more than one. */
function foundDelimiter(text: string): Delimiter {
  const scores = delimiters.map((delimiter) => {
    const { data } = papaparse.parse(text, { delimiter, preview: lookedAt });
    return { delimiter, score: evenness(data) };
  });
  const best = scores.reduce((a, b) => (b.score > a.score ? b : a));
  return best.score === 0 ? ',' : best.delimiter;
}

/** The share of the records that have the commonest number of cells; zero when that is one. */
function evenness(data: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  const filled = data.filter((cells) => !isBlank(cells));
  for (const { length } of filled) counts.set(length, (counts.get(length) ?? 0) + 1);
  const [commonest = 1, times = 0] = [...counts].reduce<[number?, number?]>(
    (best, each) => (each[1] > (best[1] ?? 0) ? each : best),
    [],
  );
  return commonest < 2 ? 0 : times / filled.length;
}

function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}

function recordsOf(text: string, delimiter: Delimiter, firstNumber: number): ReadTable {
  const config = { delimiter, preview: mostRecords + 1 };
  const quoted = papaparse.parse(text, config);
  const areQuotesLiteral = quoted.errors.some(({ type }) => type === 'Quotes');
  // No text holds a null character here, so that nothing is taken for a quotation mark.
  const { data } = areQuotesLiteral ? papaparse.parse(text, { ...config, quoteChar: '\u0000' }) : quoted;
  if (data.length > mostRecords)
    return { ok: false, message: `The table has more than ${mostRecords} rows; bring it in in parts.` };
  const records = data
    .map((cells, i) => ({ number: i + firstNumber, cells }))
    .filter(({ cells }) => !isBlank(cells));
  const columnCount = records.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  if (columnCount > mostColumns)
    return { ok: false, message: `The table has more than ${mostColumns} columns; take the spare ones out.` };
  const filled = records.map(({ number, cells }) => ({ number, cells: padded(cells, columnCount) }));
  return { ok: true, table: { records: filled, columnCount, delimiter, areQuotesLiteral } };
}

function padded(cells: readonly string[], count: number): readonly string[] {
  return cells.length === count
    ? cells
    : [...cells, ...Array.from({ length: count - cells.length }, () => '')];
}
