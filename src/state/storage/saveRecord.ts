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
  savedAt: string,
  tab: string,
): Promise<ShelfSaveResult> {
  const header = { ...made, revision: made.revision + 1, savedAt, tab };
  const [headerKey, textKey, readingKey] = recordKeys(made.id);
  const ownDraft: Write = [draftKey(made.id, tab), undefined];
  return store.transact<ShelfSaveResult>([headerKey, textKey], ([headerValue, theirText]) => {
    const theirs = headerIn(headerValue);
    if ((theirs?.revision ?? 0) === made.revision) {
      const writes: readonly Write[] = [
        [headerKey, header],
        [textKey, text],
        [readingKey, reading],
        ownDraft,
      ];
      return { writes, answer: { kind: 'saved', header } };
    }
    // Both tabs hold the same: nobody loses anything.
    if (theirs !== null && theirText === text) {
      return { writes: [ownDraft], answer: { kind: 'saved', header: theirs } };
    }
    return { writes: [], answer: { kind: 'conflict', theirs } };
  });
}
