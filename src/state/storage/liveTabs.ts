/** Which tabs of this browser have their page open. */
export interface LiveTabs {
  /** This tab is there, until its page goes. */
  stay(tab: string): void;
  /** The tabs that are there now; null where the browser does not tell. */
  living(): Promise<ReadonlySet<string> | null>;
  /** Runs once when the tab has gone. */
  whenGone(tab: string, run: () => void): void;
}

const lockPrefix = 'windtoll/tab/';

/** Each page holds a lock with the name of its tab: a browser lets go of it with the page, however the page ends. */
export function openLiveTabs(): LiveTabs {
  const locks = lockManager();
  return locks === null ? untold : toldBy(locks);
}

function toldBy(locks: LockManager): LiveTabs {
  return {
    stay: (tab) => {
      hold(locks, lockPrefix + tab);
    },
    living: async () => {
      const { held } = await locks.query().catch(() => ({ held: undefined }));
      if (held === undefined) return null;
      const names = held.map(({ name }) => name ?? '').filter((name) => name.startsWith(lockPrefix));
      return new Set(names.map((name) => name.slice(lockPrefix.length)));
    },
    whenGone: (tab, run) => {
      locks.request(lockPrefix + tab, { mode: 'shared' }, run).catch(() => undefined);
    },
  };
}

/** A page that is put away for the back button lets go too: it has left a draft, and holding on would forbid putting it away. */
function hold(locks: LockManager, name: string): void {
  const isLeft = new Promise<void>((resolve) => {
    window.addEventListener('pagehide', () => {
      resolve();
    });
  });
  locks.request(name, () => isLeft).catch(() => undefined);
  const holdAgain = ({ persisted }: PageTransitionEvent): void => {
    if (persisted) hold(locks, name);
  };
  window.addEventListener('pageshow', holdAgain, { once: true });
}

/** The locks are missing in old browsers, and where the page is served without TLS. */
function lockManager(): LockManager | null {
  const { locks } = navigator as { readonly locks?: LockManager };
  return locks ?? null;
}

export const untold: LiveTabs = {
  stay: () => undefined,
  living: () => Promise.resolve(null),
  whenGone: () => undefined,
};
