import { openProject } from '../../project/file/openProject';
import type { Project } from '../../project/file/schema';
import type { Announcements } from './announcements';
import type { Clock } from './clock';
import { renamedCopy } from './copyName';
import { recoverDrafts } from './drafts';
import { readAll, writeAll, type KeyValue, type Write } from './keyValue';
import type { LiveTabs } from './liveTabs';
import { listBroken, listRecords } from './listRecords';
import { readRecord, setAside } from './readRecord';
import {
  draftKey,
  fieldsOf,
  openKey,
  prefixes,
  readingIn,
  recordKeys,
  type Broken,
  type Draft,
  type Failed,
  type Header,
  type Reading,
  type StoredProject,
} from './records';
import { saveRecord } from './saveRecord';
import type { Done, Shelf, ShelfListing, ShelfLoadResult, ShelfSaveResult, ShelfStart } from './shelfTypes';
import { orFailed } from './storageFailure';
import { noTyped, openTypedRecords, typedChanges, type TypedChange, type TypedTexts } from './typedRecords';

interface ShelfParts {
  readonly store: KeyValue;
  readonly clock: Clock;
  readonly newId: () => string;
  readonly announcements: Announcements;
  readonly liveTabs: LiveTabs;
}

export function createShelf({ store, clock, newId, announcements, liveTabs }: ShelfParts): Shelf {
  const tab = newId();
  liveTabs.stay(tab);
  const held = new Map<string, Draft>();
  const heldTyped = new Map<string, TypedTexts>();
  const nowIso = () => clock.now().toISOString();
  const done: Done = { kind: 'done' };
  const typedRecords = openTypedRecords({ store, tab, liveTabs, nowIso });

  async function write(...writes: readonly Write[]): Promise<Done | Failed> {
    return orFailed(async () => {
      await writeAll(store, writes);
      return done;
    });
  }

  async function load(id: string): Promise<ShelfLoadResult> {
    const found = await loadProject(id);
    if (found.kind !== 'opened') return found;
    return { kind: 'opened', stored: { ...found.stored, typed: await loadTyped(id) } };
  }

  /** What waits in this page comes first, and is written if that is possible by now. */
  async function loadTyped(id: string): Promise<TypedTexts> {
    const read = await orFailed(() => typedRecords.read(id));
    const onDisk = 'kind' in read ? noTyped : read;
    const waiting = heldTyped.get(id);
    if (waiting === undefined) return onDisk;
    const written = await keepTyped(id, typedChanges(onDisk, waiting));
    if (written.kind === 'done') heldTyped.delete(id);
    return waiting;
  }

  function keepTyped(id: string, typed: readonly TypedChange[]): Promise<Done | Failed> {
    return write(...typedRecords.writes(id, typed));
  }

  async function loadProject(id: string): Promise<ShelfLoadResult> {
    const unwritten = held.get(id);
    if (unwritten !== undefined) return openHeld(unwritten);
    return orFailed(async () => {
      const found = readRecord(id, await readAll(store, recordKeys(id)));
      if (found.kind !== 'broken') return found;
      const broken = { ...found.broken, key: prefixes.broken + newId(), setAsideAt: nowIso() };
      await orFailed(() => setAside(store, id, broken));
      return { kind: 'broken', broken };
    });
  }

  async function save(draft: Draft, typed: readonly TypedChange[]): Promise<ShelfSaveResult> {
    const result = await orFailed(() =>
      saveRecord(store, draft, typedRecords.writes(draft.id, typed), nowIso(), tab),
    );
    if (result.kind !== 'saved') return result;
    held.delete(draft.id);
    announcements.announce(result.header);
    return result;
  }

  async function addCopy(
    project: Project,
    reading: Reading | null,
    typed: TypedTexts,
    addition: string,
  ): Promise<ShelfLoadResult> {
    const copy = renamedCopy(project, addition);
    if (copy === null) return { kind: 'failed', why: 'the project has a field that cannot be saved' };
    const made = newHeader(copy.project.name);
    const header = { ...made, revision: 1 };
    const [headerKey, textKey, readingKey] = recordKeys(header.id);
    const written = await write(
      [headerKey, header],
      [textKey, copy.text],
      [readingKey, reading ?? undefined],
      ...typedRecords.writes(header.id, typedChanges(noTyped, typed)),
    );
    return written.kind === 'failed'
      ? written
      : { kind: 'opened', stored: { header, ...copy, reading, typed, isSaved: true } };
  }

  async function list(): Promise<ShelfListing> {
    return orFailed(async () => {
      const { headers, damagedIds } = await listRecords(store);
      // Loading sets aside what is damaged.
      for (const id of damagedIds) await load(id);
      const stored = headers.filter(({ id }) => !held.has(id));
      const projects = [...held.values(), ...stored].map(headerOnly).sort(newestFirst);
      return { kind: 'listed', projects, broken: await listBroken(store) };
    });
  }

  async function recover(living: ReadonlySet<string>, changedId: string | null) {
    const isThere = (other: string): boolean => other === tab || living.has(other);
    const recovered = await orFailed(() => recoverDrafts({ store, newId, nowIso, isThere, changedId }));
    return 'kind' in recovered ? [] : recovered;
  }

  async function openLast(): Promise<ShelfStart> {
    const recovered = await recover((await liveTabs.living()) ?? new Set(), null);
    const pointer = await orFailed(() => readAll(store, [openKey]));
    const lastId = 'kind' in pointer ? undefined : fieldsOf(pointer[0])['id'];
    const opened = lastId === null ? null : await openFirst(typeof lastId === 'string' ? [lastId] : []);
    return {
      stored: opened?.stored ?? null,
      recovered: recovered.filter(({ isCopy }) => isCopy).map(({ header }) => header),
      broken: opened?.broken ?? [],
    };
  }

  /** The first that opens: the one that was open last, then the others, newest first. */
  async function openFirst(wantedIds: readonly string[]) {
    const broken: Broken[] = [];
    const tried = new Set<string>();
    const attempt = async (ids: readonly string[]): Promise<StoredProject | null> => {
      for (const id of ids) {
        if (tried.has(id)) continue;
        tried.add(id);
        const result = await load(id);
        if (result.kind === 'opened') return result.stored;
        if (result.kind === 'broken') broken.push(result.broken);
      }
      return null;
    };
    const wanted = await attempt(wantedIds);
    if (wanted !== null) return { stored: wanted, broken };
    const listing = await list();
    const others = listing.kind === 'listed' ? listing.projects.map(({ id }) => id) : [];
    return { stored: await attempt(others), broken };
  }

  async function whenOthersGo(run: () => void): Promise<void> {
    const living = (await liveTabs.living()) ?? [];
    for (const other of living) if (other !== tab) liveTabs.whenGone(other, run);
  }

  function newHeader(name: string): Header {
    return { id: newId(), name, savedAt: nowIso(), revision: 0, tab };
  }

  return {
    isKept: store.isKept,
    openLast,
    recoverLate: async (changedId) => {
      const living = await liveTabs.living();
      return living === null ? [] : (await recover(living, changedId)).map(({ header }) => header);
    },
    whenOthersGo,
    list,
    load,
    save,
    saveReading: (id, reading, typed) =>
      write([recordKeys(id)[2], reading], ...typedRecords.writes(id, typed)),
    keepTyped,
    addCopy,
    duplicate: async (id) => {
      const original = await load(id);
      if (original.kind !== 'opened') return original;
      return addCopy(original.stored.project, original.stored.reading, noTyped, 'copy');
    },
    remove: async (id) => {
      const typed = await orFailed(() => typedRecords.keys(id));
      if ('kind' in typed) return typed;
      const keys = [...recordKeys(id), draftKey(id, tab), ...typed];
      const removed = await write(...keys.map((key) => [key, undefined] as const));
      if (removed.kind === 'failed') return removed;
      held.delete(id);
      heldTyped.delete(id);
      return removed;
    },
    removeBroken: (key) => write([key, undefined]),
    rememberOpen: (id) => write([openKey, { id }]),
    keepDraft: (draft) => write([draftKey(draft.id, tab), draft]),
    dropDraft: (id) => write([draftKey(id, tab), undefined]),
    hold: (draft) => {
      held.set(draft.id, draft);
    },
    holdTyped: (id, typed) => {
      heldTyped.set(id, typed);
    },
    newHeader,
    stamped: (header, name) => ({ ...header, name, savedAt: nowIso(), tab }),
    onSavedElsewhere: (listener) => {
      announcements.subscribe(listener);
    },
  };
}

function openHeld(draft: Draft): ShelfLoadResult {
  const opened = openProject(draft.text);
  if (!opened.ok) return { kind: 'missing' };
  const { project } = opened;
  const reading = readingIn(project, draft.reading);
  return {
    kind: 'opened',
    stored: { header: headerOnly(draft), text: draft.text, project, reading, typed: noTyped, isSaved: false },
  };
}

function headerOnly({ id, name, savedAt, revision, tab }: Header): Header {
  return { id, name, savedAt, revision, tab };
}

function newestFirst(one: Header, other: Header): number {
  return Date.parse(other.savedAt) - Date.parse(one.savedAt);
}
