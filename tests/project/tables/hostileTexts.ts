import fc from 'fast-check';

/** Texts made of what spreadsheets, CSV readers and pages stumble over. */
export const hostileText: fc.Arbitrary<string> = fc
  .array(
    fc.oneof(
      fc.constantFrom('=', '+', '-', '@', '\uff1d', '\uff0b', '\uff0d', '\uff20', "'", "''", '"', '""'),
      fc.constantFrom(',', ';', '|', '\t', '\r', '\n', '\r\n', ' ', '\u00a0', '\ufeff', '\u200b', '\u2028'),
      fc.constantFrom(
        '1',
        '0,5',
        '1.234',
        'a',
        'cmd',
        "=cmd|' /C calc'!A0",
        '=HYPERLINK("x")',
        '<b>',
        '</script>',
      ),
      fc.string({ unit: 'grapheme', maxLength: 3 }),
    ),
    { maxLength: 12 },
  )
  .map((parts) => parts.join(''));

/** The same as a fitting's name may be: one line, not blank, without edges that reading trims off. */
export const hostileName: fc.Arbitrary<string> = hostileText
  .map((text) =>
    text
      .replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/gu, '')
      .trim()
      .slice(0, 40)
      .replace(/[\uD800-\uDBFF]$/, '')
      .trim(),
  )
  .map((text) => (text === '' ? '=1+1' : text));

const number = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?(?:,|$)/;

/**
 * Cells of a CSV text that a spreadsheet could run, whichever separator it splits at and whether it honours quotation
 * marks or not; numbers are none.
 */
export function cellsThatRun(csv: string): readonly string[] {
  return [',', ';', '\t', '|'].flatMap((separator) =>
    csv
      .split(/\r\n|\r|\n/)
      .flatMap((line) => line.split(separator))
      .map((cell) => cell.replace(/^[\s\p{C}\p{Z}"]+/u, ''))
      .filter((cell) => /^[=+\-@\uff1d\uff0b\uff0d\uff20]/.test(cell) && !number.test(cell)),
  );
}
