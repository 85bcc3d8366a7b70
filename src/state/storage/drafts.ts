import { openProject } from '../../project/file/openProject';
import { saveProject } from '../../project/file/saveProject';
import { dayAndTimeText } from './clock';
import { renamedCopy } from './copyName';
import type { Change, KeyValue, Write } from './keyValue';
import { described } from './readRecord';
import { draftIn, fieldsOf, headerIn, prefixes, recordKeys, type Broken, type Header } from './records';

interface RecoveryTools {
  readonly store: KeyValue;
  readonly newId: () => string;
  readonly nowIso: () => string;
  /** Whether a tab's page is open: what it has not saved yet is its own matter. */
  readonly isThere: (tab: string) => boolean;
  /** The project that somebody has changed in this page: what was left of it goes beside it. Null for none. */
  readonly changedId: string | null;
}

/** What was recovered, and whether it stands in a copy. */
interface Recovered {
  readonly header: Header;
  readonly isCopy: boolean;
}

/**
 * Puts drafts that pages left behind into their projects, or beside them as copies where another tab has saved since.
 * Each draft moves in one transaction, so a stop in between leaves it for the next start.
 */
export async function recoverDrafts(tools: RecoveryTools): Promise<readonly Recovered[]> {
  const recovered: Recovered[] = [];
  for (const key of await tools.store.keys(prefixes.draft)) {
    const found = await recoverDraft(tools, key);
    if (found !== null) recovered.push(found);
  }
  return recovered;
}

async function recoverDraft(tools: RecoveryTools, key: string): Promise<Recovered | null> {
  const [stored] = await tools.store.transact([key], (answer) => ({ writes: [], answer }));
  if (stored === undefined) return null;
  const draft = draftIn(stored);
  if (draft !== null && tools.isThere(draft.tab)) return null;
  const opened = draft === null ? null : openProject(draft.text);
  if (draft === null || opened?.ok !== true) return setDraftAside(tools, key, stored);

  // A draft may be written in haste: what goes into the project is as a save would have it.
  const saved = saveProject(opened.project);
  const text = saved.ok ? saved.text : draft.text;
  const reading = fieldsOf(stored)['reading'];
  const [headerKey, textKey] = recordKeys(draft.id);
  return tools.store.transact([key, headerKey, textKey], ([current, headerValue, theirText]) => {
    const done: Write = [key, undefined];
    // Its own tab is alive after all and has saved or renewed it.
    if (draftIn(current)?.text !== draft.text) return { writes: [], answer: null };
    const theirs = headerIn(headerValue);
    if (theirs !== null && theirText === text) return { writes: [done], answer: null };
    const revision = theirs?.revision ?? 0;
    // A draft is deleted by its own tab's next save: one that is left is younger than that save.
    const isYoungest = revision === draft.revision || theirs?.tab === draft.tab;
    if (isYoungest && draft.id !== tools.changedId) {
      const header = headerIn({ ...draft, revision: revision + 1 });
      return change(header, text, reading, done, false);
    }
    const addition = `unsaved work of ${dayAndTimeText(new Date(draft.savedAt))}`;
    const copy = renamedCopy(opened.project, addition);
    const name = copy?.project.name ?? draft.name;
    const header = headerIn({ ...draft, id: tools.newId(), name, revision: 1 });
    return change(header, copy?.text ?? text, reading, done, true);
  });
}

function change(
  header: Header | null,
  text: string,
  reading: unknown,
  done: Write,
  isCopy: boolean,
): Change<Recovered | null> {
  if (header === null) return { writes: [], answer: null };
  const [headerKey, textKey, readingKey] = recordKeys(header.id);
  const writes: readonly Write[] = [[headerKey, header], [textKey, text], [readingKey, reading], done];
  return { writes, answer: { header, isCopy } };
}

async function setDraftAside({ store, newId, nowIso }: RecoveryTools, key: string, stored: unknown) {
  const { name, text } = fieldsOf(stored);
  const broken: Broken = {
    key: prefixes.broken + newId(),
    name: typeof name === 'string' ? name : '',
    why: 'unsaved work that does not open',
    setAsideAt: nowIso(),
    content: typeof text === 'string' ? text : described(stored),
  };
  return store.transact([], () => ({
    writes: [
      [broken.key, broken],
      [key, undefined],
    ],
    answer: null,
  }));
}
