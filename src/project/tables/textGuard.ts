/** Signs with which a spreadsheet lets a formula begin: plain, fullwidth and small forms. */
const sign = '[=+\\-@\uff1d\uff0b\uff0d\uff20\ufe66\ufe62\ufe63\ufe6b]';
/** What a spreadsheet may pass over before it: spaces, controls, marks without a width, quotation marks. */
const passedOver = '\\s\\p{C}\\p{Z}"';

const start = new RegExp(`^(?='*(?:[${passedOver}]*${sign}|[\\t\\r\\n]))`, 'u');
const guardedStart = new RegExp(`^'(?='*(?:[${passedOver}]*${sign}|[\\t\\r\\n]))`, 'u');

/** A run of separators and what is passed over, with the apostrophes after it. It never fails once begun: linear in time. */
const run = new RegExp(`([,;|${passedOver}]+)('*)`, 'gu');
const isSign = new RegExp(sign);
const hasSeparator = /[,;|\t\r\n]/;

/**
 * A text that no spreadsheet runs: an apostrophe stands before whatever could begin a formula, at the start and after each
 * separator (a spreadsheet that splits at another one than the file's would make a cell of what follows it).
 * {@link unguarded} takes exactly these off again.
 */
export function guarded(text: string): string {
  return afterSeparators(text, (apostrophes) => `'${apostrophes}`).replace(start, "'");
}

/** The inverse of {@link guarded}; a text that was never guarded and needs no guard stays as it is. */
export function unguarded(text: string): string {
  return afterSeparators(text.replace(guardedStart, ''), (apostrophes) => apostrophes.slice(1));
}

/** Changes the apostrophes, none or some, between a separator and a sign. */
function afterSeparators(text: string, change: (apostrophes: string) => string): string {
  return text.replace(run, (all, before: string, apostrophes: string, at: number) => {
    const isRisky = hasSeparator.test(before) && isSign.test(text.charAt(at + all.length));
    return isRisky ? before + change(apostrophes) : all;
  });
}
