import { create } from 'zustand';

interface Offline {
  /** All files are stored: the page opens without a network. */
  readonly isReady: boolean;
  /** The browser's record of the worker, by which a new version is seen and called; null where there is none. */
  readonly registration: ServiceWorkerRegistration | null;
}

/** How the page stands with its service worker. Fetched late: nothing of the first paint needs it. */
export const useOffline = create<Offline>()(() => ({ isReady: false, registration: null }));
