import type { KeyValue, Write } from './keyValue';
import { draftKey, headerIn, recordKeys, type Draft } from './records';
import type { ShelfSaveResult } from './shelfTypes';

/**
 * Writes a draft over the revision that it was made from. Looking and writing are one transaction, so of two tabs that
 * save at the same moment one is told.
 */
export function saveRecord(
  store: KeyValue,
  { text, reading, ...made }: Draft,
  typed: readonly Write[],
  savedAt: string,
  tab: string,
): Promise<ShelfSaveResult> {
  const [headerKey, textKey, readingKey] = recordKeys(made.id);
  const asides: readonly Write[] = [[draftKey(made.id, tab), undefined], ...typed];
  return store.transact<ShelfSaveResult>([headerKey, textKey], ([headerValue, theirText]) => {
    const theirs = headerIn(headerValue);
    const revision = theirs?.revision ?? 0;
    // A page that has just opened may have put this tab's own draft into the project: it is older than what comes now.
    if (revision === made.revision || theirs?.tab === tab) {
      const header = { ...made, revision: revision + 1, savedAt, tab };
      const writes: readonly Write[] = [
        [headerKey, header],
        [textKey, text],
        [readingKey, reading],
        ...asides,
      ];
      return { writes, answer: { kind: 'saved', header } };
    }
    // Both tabs hold the same: nobody loses anything.
    if (theirs !== null && theirText === text) {
      return { writes: asides, answer: { kind: 'saved', header: theirs } };
    }
    return { writes: [], answer: { kind: 'conflict', theirs } };
  });
}
