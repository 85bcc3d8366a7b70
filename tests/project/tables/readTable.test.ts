import { describe, expect, it } from 'vitest';
import { readTable, type Table } from '../../../src/project/tables/readTable';
import { tableOf, tableText } from './support';

function table(text: string): Table {
  const read = readTable(text);
  if (!read.ok) throw new Error(read.message);
  return read.table;
}

describe('a table that is read', () => {
  it.each([
    ['a;b\n1,5;2,5\n3,25;4,5\n', ';'],
    ['a,b\n1.5,2\n', ','],
    ['a\tb, c\n1,5\t2\n', '\t'],
    ['a|b\n1|2\n', '|'],
    ['only one column\n1\n2\n', ','],
    ['a;b;c\n"x, y, z";1;2\n', ';'],
  ])('%j has the delimiter %j', (text, delimiter) => {
    expect(table(text).delimiter).toBe(delimiter);
  });

  it('takes the delimiter that the first line names', () => {
    const { delimiter, records } = table('sep=;\r\na;b,c\r\n1;2\r\n');
    expect([delimiter, records]).toEqual([
      ';',
      [
        { number: 2, cells: ['a', 'b,c'] },
        { number: 3, cells: ['1', '2'] },
      ],
    ]);
  });

  it('leaves byte order mark and blank rows out and fills short rows up', () => {
    expect(table('\ufeffa,b,c\n\n , ,\n1\n').records).toEqual([
      { number: 1, cells: ['a', 'b', 'c'] },
      { number: 4, cells: ['1', '', ''] },
    ]);
  });

  it('keeps line breaks, quotation marks and delimiters within quoted texts', () => {
    expect(table('a,b\r\n"two\r\nlines","say ""x"", y"\r\n').records[1]?.cells).toEqual([
      'two\r\nlines',
      'say "x", y',
    ]);
  });

  it('reads quotation marks as they stand where one never closes, and loses no row', () => {
    const { areQuotesLiteral, records } = tableOf('open-quote.csv');
    expect(areQuotesLiteral).toBe(true);
    expect(records.map(({ cells }) => cells[0])).toEqual(['Item', '"Pole', 'Post']);
    expect(tableOf('pasted-tabs.txt').areQuotesLiteral).toBe(false);
  });

  it.each([
    ['', 'There is no text in it.'],
    [' \n\t', 'There is no text in it.'],
    ['PK\u0003\u0004zip', 'This is no text'],
    ['a\u0000b', 'This is no text'],
    ['x'.repeat(1_000_001), 'longer than a million characters'],
    ['a\n'.repeat(20_001), 'more than 20000 rows'],
    [','.repeat(200), 'There is no'],
    [`a${','.repeat(200)}b`, 'more than 200 columns'],
  ])('refuses what it cannot take, case %#', (text, words) => {
    const read = readTable(text);
    if (text.startsWith(',')) expect(read).toMatchObject({ ok: true, table: { records: [] } });
    else expect(read.ok ? 'read' : read.message).toContain(words);
  });

  it('is not slowed down by hostile lengths', () => {
    const started = performance.now();
    readTable('"'.repeat(1_000_000));
    readTable('=,;\t'.repeat(200_000));
    expect(performance.now() - started).toBeLessThan(20_000);
    expect(tableText('hostile.csv')).toContain('=HYPERLINK');
  });
});
