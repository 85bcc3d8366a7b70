import { readAll, type KeyValue } from './keyValue';
import { brokenIn } from './readRecord';
import { headerIn, prefixes, type Broken, type Header } from './records';

interface Listed {
  readonly headers: readonly Header[];
  /** Projects without a sound header. */
  readonly damagedIds: readonly string[];
}

/** Reads the headers and no text. */
export async function listRecords(store: KeyValue): Promise<Listed> {
  const ids = new Set<string>();
  for (const prefix of [prefixes.header, prefixes.text]) {
    for (const key of await store.keys(prefix)) ids.add(key.slice(prefix.length));
  }
  const values = await readAll(
    store,
    [...ids].map((id) => prefixes.header + id),
  );
  const headers: Header[] = [];
  const damagedIds: string[] = [];
  for (const [i, id] of [...ids].entries()) {
    const header = headerIn(values[i]);
    if (header?.id === id) headers.push(header);
    else damagedIds.push(id);
  }
  return { headers, damagedIds };
}

export async function listBroken(store: KeyValue): Promise<readonly Broken[]> {
  const keys = await store.keys(prefixes.broken);
  const values = await readAll(store, keys);
  return keys.map((key, i) => brokenIn(key, values[i]));
}
