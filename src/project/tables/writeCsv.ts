import { formatPlain } from '../../units/plain';
import { guarded } from './textGuard';

/** A text, a number already in the unit that its column's head names, or nothing. */
export type CsvCell = string | number | null;

/** Spreadsheets take a file that begins with this mark for UTF-8. */
const byteOrderMark = '\ufeff';

/**
 * A CSV file by RFC 4180: commas, CRLF after each record, quotation marks where needed. Numbers are written in full with a
 * point and stay numbers, negative ones too; text that a spreadsheet would run is guarded (`textGuard.ts`).
 */
export function writeCsv(records: readonly (readonly CsvCell[])[]): string {
  return byteOrderMark + records.map((cells) => `${cells.map(cellText).join(',')}\r\n`).join('');
}

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  // Infinity and NaN are words, not numbers, to a spreadsheet.
  if (typeof cell === 'number') return Number.isFinite(cell) ? formatPlain(cell) : '';
  return quotedWhereNeeded(guarded(cell));
}

function quotedWhereNeeded(text: string): string {
  return /[",;|\t\r\n']|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
