import { browserClock, type Clock } from './clock';
import { Session, type Origin, type Work } from './session';
import type { SaveStatus } from './saveStatus';
import type { Shelf, ShelfLoadResult } from './shelfTypes';

/** Keeps the open project on the shelf. No method rejects. */
export interface Autosaver {
  /**
   * Opens another project: `show` puts it on the screen and reports it through `changed` before it returns. What the
   * project before left unsaved is written first, to where it belongs.
   */
  open(origin: Origin, show: () => void): void;
  /** At every change of project or reading; what did not change must be the same object as before. */
  changed(work: Work): void;
  /** Writes what is pending now. */
  flush(): Promise<void>;
  /** At pagehide, and when the page is hidden. */
  leave(): void;
  /** In a conflict: puts mine onto the shelf as a copy. The caller opens what it answers. */
  keepMine(): Promise<ShelfLoadResult>;
  /** In a conflict: gives mine up. The caller opens what it answers. */
  takeTheirs(): Promise<ShelfLoadResult>;
  status(): SaveStatus;
  /** The record of the open project; null for a demo as it came. */
  openId(): string | null;
  /** Tells every change of the status; the answer ends that. */
  subscribe(listener: () => void): () => void;
}

interface AutosaverParts {
  readonly shelf: Shelf;
  readonly clock?: Clock;
  readonly delayMs?: number;
  readonly longestDelayMs?: number;
  readonly draftDelayMs?: number;
}

const untouched: SaveStatus = { kind: 'untouched' };
const nothingOpen: ShelfLoadResult = { kind: 'missing' };

export function createAutosaver({
  shelf,
  clock = browserClock,
  delayMs = 300,
  longestDelayMs = 1000,
  draftDelayMs = 400,
}: AutosaverParts): Autosaver {
  const listeners = new Set<() => void>();
  let session: Session | null = null;
  /** Collects what `show` reports, so that a new project never lands in the record of the one before. */
  let shown: { work: Work | null } | null = null;
  let closing: Promise<void> = Promise.resolve();

  function start(origin: Origin): Session {
    const started: Session = new Session(
      {
        shelf,
        clock,
        delayMs,
        longestDelayMs,
        draftDelayMs,
        onStatus: () => {
          if (session === started) for (const listener of listeners) listener();
        },
      },
      origin,
    );
    return started;
  }

  shelf.onSavedElsewhere((header) => session?.savedElsewhere(header));

  return {
    open: (origin, show) => {
      const previous = session;
      if (previous !== null) closing = Promise.all([closing, previous.close()]).then(() => undefined);
      shown = { work: null };
      try {
        show();
      } finally {
        const { work } = shown;
        shown = null;
        session = start(origin);
        session.begin(work);
      }
    },
    changed: (work) => {
      if (shown === null) session?.changed(work);
      else shown.work = work;
    },
    flush: async () => {
      await Promise.all([closing, session?.write()]);
    },
    leave: () => session?.leave(),
    keepMine: async () => (await session?.copyMine()) ?? nothingOpen,
    takeTheirs: async () => (await session?.loadTheirs()) ?? nothingOpen,
    status: () => session?.status ?? untouched,
    openId: () => session?.storedId ?? null,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
}

/** Calls `leave` whenever the page may be about to go; the answer ends that. */
export function leaveWithPage(autosaver: Autosaver): () => void {
  const leave = () => {
    autosaver.leave();
  };
  const leaveWhenHidden = () => {
    if (document.visibilityState === 'hidden') leave();
  };
  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', leaveWhenHidden);
  return () => {
    window.removeEventListener('pagehide', leave);
    document.removeEventListener('visibilitychange', leaveWhenHidden);
  };
}
