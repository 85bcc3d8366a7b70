import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../../src/project/tables/readTable';
import { guarded, unguarded } from '../../../src/project/tables/textGuard';
import { writeCsv } from '../../../src/project/tables/writeCsv';
import { cellsThatRun, hostileText } from './hostileTexts';

describe('the guard of texts', () => {
  it.each([
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['-5 things', "'-5 things"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t'=1"],
    ['\rplain', "'\rplain"],
    ['\uff1d1', "'\uff1d1"],
    [" '=1", " '=1"],
    ["'=1", "''=1"],
    ['a;=cmd', "a;'=cmd"],
    ['a, "=cmd', 'a, "\'=cmd'],
    ['two lines\n- one', "two lines\n'- one"],
    ['Pole, port', 'Pole, port'],
    ["'quoted'", "'quoted'"],
    ['3-4', '3-4'],
  ])('writes %j as %j', (text, written) => {
    expect(guarded(text)).toBe(written);
    expect(unguarded(written)).toBe(text);
  });

  it('comes off again, whatever the text', () => {
    fc.assert(
      fc.property(hostileText, (text) => {
        expect(unguarded(guarded(text))).toBe(text);
      }),
      { numRuns: 5000 },
    );
  });
});

describe('a CSV file', () => {
  it('has a mark for UTF-8, CRLF after each record, and quotation marks where they are needed', () => {
    expect(writeCsv([['a', 'b"c', 'd,e', null, -0.5, 1e-7, 0]])).toBe(
      '\ufeffa,"b""c","d,e",,-0.5,1e-7,0\r\n',
    );
  });

  it('writes no number that is none', () => {
    expect(writeCsv([[NaN, Infinity, -Infinity, 1]])).toBe('\ufeff,,,1\r\n');
  });

  it('has no cell that a spreadsheet would run, whichever separator it splits at', () => {
    fc.assert(
      fc.property(fc.array(hostileText, { minLength: 1, maxLength: 4 }), (texts) => {
        expect(cellsThatRun(writeCsv([[...texts, -1.5]]))).toEqual([]);
      }),
      { numRuns: 5000 },
    );
  });

  it('the check itself finds what would run', () => {
    expect(cellsThatRun('a,"=1"\r\n')).toEqual(['=1"']);
    expect(cellsThatRun('"a;=cmd"')).toEqual(['=cmd"']);
    expect(cellsThatRun('-1.5,x')).toEqual([]);
  });

  it('is read back cell by cell, texts and numbers', () => {
    const record = fc.tuple(hostileText, fc.double({ noNaN: true, noDefaultInfinity: true }), hostileText);
    fc.assert(
      fc.property(fc.array(record, { minLength: 1, maxLength: 5 }), (records) => {
        const read = readTable(writeCsv([['one', 'two', 'three'], ...records]));
        if (!read.ok) throw new Error(read.message);
        const back = read.table.records.slice(1).map(({ cells }) => cells);
        expect(back).toEqual(records.map(([a, number, b]) => [guarded(a), String(number + 0), guarded(b)]));
      }),
      { numRuns: 1000 },
    );
  });
});
