import type { StoredProject } from './records';
import type { ShelfStart } from './shelfTypes';
import { typedChanges } from './typedRecords';

/** So long, ms, after the start the last words of a page that was being closed have surely arrived. */
export const secondLookMs = 1000;

/**
 * What a second look at the shelf finds of the project that the start opened: what another page wrote while it was being
 * closed. Null where there is nothing newer.
 */
export function newerThan(first: StoredProject, { stored }: ShelfStart): StoredProject | null {
  if (stored?.header.id !== first.header.id) return null;
  const isNewer = stored.text !== first.text || typedChanges(first.typed, stored.typed).length > 0;
  return isNewer ? stored : null;
}
