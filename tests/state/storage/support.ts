import { readFileSync } from 'node:fs';
import { openProject } from '../../../src/project/file/openProject';
import { saveProject } from '../../../src/project/file/saveProject';
import type { Project } from '../../../src/project/file/schema';
import type { Announcements } from '../../../src/state/storage/announcements';
import { createAutosaver } from '../../../src/state/storage/autosaver';
import type { Clock } from '../../../src/state/storage/clock';
import type { KeyValue } from '../../../src/state/storage/keyValue';
import { untold, type LiveTabs } from '../../../src/state/storage/liveTabs';
import { memoryKeyValue } from '../../../src/state/storage/memoryKeyValue';
import type { Header, Reading, StoredProject } from '../../../src/state/storage/records';
import { createShelf } from '../../../src/state/storage/shelf';
import type { ShelfLoadResult } from '../../../src/state/storage/shelfTypes';
import { noTyped } from '../../../src/state/storage/typedRecords';

const emptyProject = opened(readFileSync(new URL('../../data/projects/empty.json', import.meta.url), 'utf8'));

export function opened(text: string): Project {
  const result = openProject(text);
  if (!result.ok) throw new Error(JSON.stringify(result.errors));
  return result.project;
}

export function projectNamed(name: string, notes = ''): Project {
  return { ...emptyProject, name, notes };
}

export function textOf(project: Project): string {
  const saved = saveProject(project);
  if (!saved.ok) throw new Error(JSON.stringify(saved.errors));
  return saved.text;
}

/** The project of most tests has no condition, so its reading names none. */
export const noReading: Reading = {
  question: { basis: { kind: 'condition', conditionId: '' }, planId: null, againstPlanId: null },
  selectedFittingId: null,
};

export interface TestClock extends Clock {
  /** While true the page draws without a pause. */
  isBusy: boolean;
  /** Lets time pass and the timers run that are due. */
  pass(ms: number): Promise<void>;
}

export function testClock(): TestClock {
  let nowMs = Date.parse('2026-03-01T09:05:00Z');
  const timers = new Map<symbol, { readonly atMs: number; readonly run: () => void }>();
  const after: Clock['after'] = (delayMs, run) => {
    const key = Symbol('timer');
    timers.set(key, { atMs: nowMs + delayMs, run });
    return () => {
      timers.delete(key);
    };
  };
  const nextDue = () => [...timers].find(([, { atMs }]) => atMs <= nowMs);
  const clock: TestClock = {
    isBusy: false,
    now: () => new Date(nowMs),
    after,
    whenIdle: (longestWaitMs, run) => after(clock.isBusy ? longestWaitMs : 0, run),
    pass: async (ms) => {
      nowMs += ms;
      for (let due = nextDue(); due !== undefined; due = nextDue()) {
        const [key, { run }] = due;
        timers.delete(key);
        run();
      }
      await settled();
    },
  };
  return clock;
}

/** Waits until every promise that can settle has. */
export function settled(): Promise<void> {
  return new Promise((resolve) => {
    setImmediate(resolve);
  });
}

/** Ties tabs together as BroadcastChannel does. */
export function testChannel(): () => Announcements {
  const listeners: ((header: Header) => void)[][] = [];
  return () => {
    const own: ((header: Header) => void)[] = [];
    listeners.push(own);
    return {
      announce: (header) => {
        const others = listeners.filter((group) => group !== own).flat();
        for (const listener of others) listener(header);
      },
      subscribe: (listener) => own.push(listener),
    };
  };
}

/** Tells tabs of each other as the browser's locks do; `closeFirst` closes the one that came first. */
export function testTabs() {
  const living = new Map<string, (() => void)[]>();
  const liveTabs: LiveTabs = {
    stay: (tab) => living.set(tab, []),
    living: () => Promise.resolve(new Set(living.keys())),
    whenGone: (tab, run) => living.get(tab)?.push(run),
  };
  const closeFirst = (): void => {
    const [first] = living;
    if (first === undefined) return;
    living.delete(first[0]);
    for (const run of first[1]) run();
  };
  return { liveTabs, closeFirst };
}

export const silence: Announcements = { announce: () => undefined, subscribe: () => undefined };

export interface TestDisk extends KeyValue {
  readonly entries: Map<string, unknown>;
}

/** A database in memory that says it is kept. */
export function testDisk(entries = new Map<string, unknown>()): TestDisk {
  return { ...memoryKeyValue(entries), isKept: true, entries };
}

/** A tab's way to the disk whose transactions wait, in their order, until they are let through one by one. */
export function gate(disk: KeyValue) {
  const waiting: (() => void)[] = [];
  const store: KeyValue = {
    ...disk,
    transact: (keys, change) =>
      new Promise((resolve, reject) => {
        waiting.push(() => {
          disk.transact(keys, change).then(resolve, reject);
        });
      }),
  };
  const letOneThrough = async () => {
    waiting.shift()?.();
    await settled();
  };
  const letAllThrough = async () => {
    while (waiting.length > 0) await letOneThrough();
  };
  return { store, letOneThrough, letAllThrough };
}

let idsGiven = 0;

/** One tab of the browser: its shelf, its autosaver, and what it shows. */
export function openTab(
  store: KeyValue,
  clock: Clock = testClock(),
  announcements = silence,
  liveTabs: LiveTabs = untold,
) {
  const newId = () => `id${(idsGiven += 1)}`;
  const shelf = createShelf({ store, clock, newId, announcements, liveTabs });
  const autosaver = createAutosaver({ shelf, clock });
  const statuses: string[] = [];
  autosaver.subscribe(() => statuses.push(autosaver.status().kind));
  let screen: Project | null = null;
  const tab = {
    shelf,
    autosaver,
    statuses,
    get screen(): Project {
      if (screen === null) throw new Error('Nothing is open.');
      return screen;
    },
    type: (project: Project, reading = noReading, typed = noTyped) => {
      screen = project;
      autosaver.changed({ project, reading, typed });
    },
    openFile: (project: Project) => {
      autosaver.open('file', () => {
        tab.type(project);
      });
    },
    openDemo: (project: Project) => {
      autosaver.open('demo', () => {
        tab.type(project);
      });
    },
    openStored: (stored: StoredProject) => {
      autosaver.open(stored, () => {
        tab.type(stored.project, noReading, stored.typed);
      });
    },
  };
  return tab;
}

export type Tab = ReturnType<typeof openTab>;

export function storedIn(result: ShelfLoadResult): StoredProject {
  if (result.kind !== 'opened') throw new Error(JSON.stringify(result));
  return result.stored;
}

/** Every project text that the shelf can load, by id. */
export async function textsOn(store: KeyValue): Promise<ReadonlyMap<string, string>> {
  const { shelf } = openTab(store);
  const listing = await shelf.list();
  if (listing.kind !== 'listed') throw new Error(listing.why);
  const texts = new Map<string, string>();
  for (const { id } of listing.projects) texts.set(id, storedIn(await shelf.load(id)).text);
  return texts;
}

export async function namesOn({ shelf }: Tab): Promise<readonly string[]> {
  const listing = await shelf.list();
  return listing.kind === 'listed' ? listing.projects.map(({ name }) => name).sort() : [];
}
