/** The sign before the decimals. */
export type DecimalMark = 'point' | 'comma';

/**
 * The decimal mark that a table's numbers show: "2,5" and "1.234,5" a comma, "2.5" and "1,234.5" a point. Null where none
 * shows it, or both do.
 */
export function shownMark(numbers: readonly string[]): DecimalMark | null {
  let hasComma = false;
  let hasPoint = false;
  for (const text of numbers) {
    hasComma ||= shownBy.comma.test(text);
    hasPoint ||= shownBy.point.test(text);
  }
  if (hasComma === hasPoint) return null;
  return hasComma ? 'comma' : 'point';
}

/** Decimals that are no group of three digits, a leading mark or zero, or the other sign between groups before it. */
const shownBy = {
  point: /\d\.(?:\d{1,2}|\d{4,})(?!\d)|(?:^|\D)0?\.\d|\d,\d{3}\.\d/,
  comma: /\d,(?:\d{1,2}|\d{4,})(?!\d)|(?:^|\D)0?,\d|\d\.\d{3},\d/,
} as const;

/** True for "1.234" and "1,234": a thousand and some, or one and some. */
export function isTwoWays(text: string): boolean {
  return /^[+\u2212-]?[1-9]\d{0,2}[.,]\d{3}(?!\d|[.,])/.test(text.trim());
}

/** True where the mark of the table has to be known to read these. */
export function needsMark(numbers: readonly string[]): boolean {
  return shownMark(numbers) === null && numbers.some(isTwoWays);
}

/** The number's text with a decimal point and without signs between thousands. */
export function withPoint(text: string, mark: DecimalMark): string {
  return mark === 'comma'
    ? text.replace(/(\d)\.(?=\d{3}(?!\d))/g, '$1').replace(',', '.')
    : text.replace(/(\d),(?=\d{3}(?!\d))/g, '$1');
}
