import { openAnnouncements } from './announcements';
import { browserClock } from './clock';
import { openKeyValue } from './openKeyValue';
import { createShelf } from './shelf';
import { openLiveTabs } from './liveTabs';
import type { Shelf } from './shelfTypes';

/** The shelf of this browser. Never rejects: where the browser keeps nothing, the shelf stands in this page. */
export async function openShelf(): Promise<Shelf> {
  const store = await openKeyValue();
  return createShelf({
    store,
    clock: browserClock,
    newId: randomId,
    announcements: openAnnouncements(),
    liveTabs: openLiveTabs(),
  });
}

/** Of getRandomValues, because randomUUID is missing where the page is served without TLS. */
function randomId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
