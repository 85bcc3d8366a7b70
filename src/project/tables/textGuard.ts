/** Signs with which a spreadsheet lets a formula begin: plain, fullwidth and small forms. */
const sign = '[=+\\-@\uff1d\uff0b\uff0d\uff20\ufe66\ufe62\ufe63\ufe6b]';
/** What a spreadsheet may pass over before it: spaces, controls, marks without a width, quotation marks. */
const passedOver = '[\\s\\p{C}\\p{Z}"]*';

const start = new RegExp(`^(?='*(?:${passedOver}${sign}|[\\t\\r\\n]))`, 'u');
const guardedStart = new RegExp(`^'(?='*(?:${passedOver}${sign}|[\\t\\r\\n]))`, 'u');

/** A spreadsheet that splits at another separator than the file's would make a cell of what follows one. */
const inside = new RegExp(`([,;|\\t\\r\\n])(${passedOver})('*)(?=${sign})`, 'gu');
const guardedInside = new RegExp(`([,;|\\t\\r\\n])(${passedOver})'('*)(?=${sign})`, 'gu');

/**
 * A text that no spreadsheet runs: an apostrophe stands before whatever could begin a formula, at the start and after each
 * separator. {@link unguarded} takes exactly these off again.
 */
export function guarded(text: string): string {
  return text.replace(inside, "$1$2'$3").replace(start, "'");
}

/** The inverse of {@link guarded}; a text that was never guarded and needs no guard stays as it is. */
export function unguarded(text: string): string {
  return text.replace(guardedStart, '').replace(guardedInside, '$1$2$3');
}
