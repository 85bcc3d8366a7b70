import { openProject } from '../../project/file/openProject';
import type { KeyValue } from './keyValue';
import {
  fieldsOf,
  headerIn,
  prefixes,
  readingIn,
  recordKeys,
  type Broken,
  type StoredProject,
} from './records';
import { noTyped } from './typedRecords';

type Found =
  | { readonly kind: 'opened'; readonly stored: StoredProject }
  | { readonly kind: 'missing' }
  | { readonly kind: 'broken'; readonly broken: Omit<Broken, 'key' | 'setAsideAt'> };

/** What stood under the three keys of a project. Never throws, whatever stood there. */
export function readRecord(id: string, [header, text, reading]: readonly unknown[]): Found {
  if (header === undefined && text === undefined) return { kind: 'missing' };
  const name = nameIn(header);
  const content = typeof text === 'string' ? text : described({ header, text, reading });
  const refused = (why: string): Found => ({ kind: 'broken', broken: { name, why, content } });
  const checked = headerIn(header);
  if (checked?.id !== id) return refused('its entry in the list of projects is damaged');
  if (typeof text !== 'string') return refused('its text is missing');
  const opened = openProject(text);
  if (!opened.ok) return refused(errorText(opened.errors[0]));
  const { project } = opened;
  return {
    kind: 'opened',
    stored: {
      header: checked,
      text,
      project,
      reading: readingIn(project, reading),
      typed: noTyped,
      isSaved: true,
    },
  };
}

/**
 * Moves a record that does not open out of the way, unless another tab has changed it meanwhile. What cannot be moved
 * stays where it is.
 */
export async function setAside(store: KeyValue, id: string, broken: Broken): Promise<void> {
  const keys = recordKeys(id);
  await store.transact(keys, (values) => {
    const found = readRecord(id, values);
    const isSame = found.kind === 'broken' && found.broken.content === broken.content;
    const writes = [[broken.key, broken] as const, ...keys.map((key) => [key, undefined] as const)];
    return { writes: isSame ? writes : [], answer: undefined };
  });
}

/** A set-aside record as it was stored; damage to the damaged is shown as it is. */
export function brokenIn(key: string, value: unknown): Broken {
  const { name, why, setAsideAt, content } = fieldsOf(value);
  const parts = [name, why, setAsideAt, content];
  if (key.startsWith(prefixes.broken) && parts.every((part) => typeof part === 'string')) {
    return { key, ...(value as Omit<Broken, 'key'>) };
  }
  return { key, name: '', why: 'its entry is damaged', setAsideAt: '', content: described(value) };
}

/** Any value as text, for a file that a person may mend. */
export function described(value: unknown): string {
  try {
    // Answers nothing for undefined, whatever its type says.
    const text: unknown = JSON.stringify(value, withoutBigints, 2);
    if (typeof text === 'string') return text;
  } catch {
    // It holds itself.
  }
  return Object.prototype.toString.call(value);
}

function withoutBigints(_key: string, value: unknown): unknown {
  return typeof value === 'bigint' ? String(value) : value;
}

function nameIn(header: unknown): string {
  const { name } = fieldsOf(header);
  return typeof name === 'string' ? name : '';
}

function errorText(error: { readonly path: string; readonly message: string } | undefined): string {
  return error === undefined ? 'it does not open' : `${error.path} ${error.message}`.trim();
}
