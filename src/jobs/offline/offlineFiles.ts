import type { FileList } from './protocol';

/** One build's files in the browser's cache, and the way to the network. */
export interface OfflineFiles {
  readonly list: FileList;
  /** The folder of the page, as an address that ends with a stroke. */
  readonly folder: string;
  readonly caches: CacheStorage;
  readonly fetch: (address: string, options?: RequestInit) => Promise<Response>;
}

/**
 * Servers that say `Vary: Origin` would make every script miss, because the page asks for scripts with an origin and
 * the worker without one. Our files never differ by header.
 */
const matching: CacheQueryOptions = { ignoreVary: true };

/** Where the windows are noted that were open when this version took over; no server is asked for it. */
const windowsKey = 'windows-before';

/** The cache of the site may hold those of other copies in other folders: a space ends the folder's name. */
function prefixOf({ folder }: OfflineFiles): string {
  return `windtoll ${folder} `;
}

export function cacheNameOf(files: OfflineFiles): string {
  return prefixOf(files) + files.list.version;
}

async function otherCacheNames(files: OfflineFiles): Promise<string[]> {
  const names = await files.caches.keys();
  return names.filter((name) => name.startsWith(prefixOf(files)) && name !== cacheNameOf(files));
}

function addressOf({ folder }: OfflineFiles, path: string): string {
  return folder + path;
}

/**
 * Puts all files of the build into its cache.
 * @throws when one does not come, or comes from another build; the cache is then as it was before.
 */
export async function storeAll(files: OfflineFiles): Promise<void> {
  const name = cacheNameOf(files);
  const wasThere = await files.caches.has(name);
  const cache = await files.caches.open(name);
  try {
    await Promise.all([
      storePage(files, cache),
      ...files.list.assets.map((path) => storeAsset(files, cache, path)),
    ]);
  } catch (error) {
    // Where only the worker changed, the worker in force still answers from this cache.
    if (!wasThere) await files.caches.delete(name);
    throw error;
  }
}

async function storePage(files: OfflineFiles, cache: Cache): Promise<void> {
  const { page, entry } = files.list;
  // Its name never changes: what the browser remembers of it may be of an earlier build.
  const response = await files.fetch(addressOf(files, page), { cache: 'no-cache' });
  const text = await response.text();
  if (!response.ok || !text.includes(entry))
    throw new Error(`${page} is not of the build ${files.list.version}`);
  // Made anew: a page that came by way of a redirection may not answer a navigation.
  const headers = { 'content-type': response.headers.get('content-type') ?? 'text/html' };
  await cache.put(addressOf(files, page), new Response(text, { headers }));
}

async function storeAsset(files: OfflineFiles, cache: Cache, path: string): Promise<void> {
  const address = addressOf(files, path);
  const known = await storedFile(files, path);
  const response = known ?? (await files.fetch(address));
  // A server may answer with the page for whatever it does not have.
  const isPage = response.headers.get('content-type')?.startsWith('text/html') === true;
  if (!response.ok || isPage) throw new Error(`${path} did not come`);
  await cache.put(address, response);
}

/** A file out of this build's cache, else out of an earlier or later one that still stands. */
async function storedFile(files: OfflineFiles, path: string): Promise<Response | undefined> {
  for (const name of [cacheNameOf(files), ...(await otherCacheNames(files))]) {
    const cache = await files.caches.open(name);
    const found = await cache.match(addressOf(files, path), matching);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** What of a request the answer depends on. */
export interface AskedFor {
  readonly method: string;
  /** `navigate` for a page that is to be opened. */
  readonly mode: string;
  readonly url: string;
}

/**
 * The file that answers a request, as a path from the page's folder; null for what is none of ours, such as another
 * page of the site, which goes to the network as if there were no worker.
 */
export function pathFor({ list, folder }: OfflineFiles, { method, mode, url }: AskedFor): string | null {
  const [address = ''] = url.split(/[?#]/);
  if (method !== 'GET' || !address.startsWith(folder)) return null;
  const path = address.slice(folder.length);
  if (mode === 'navigate') return path === '' || path === list.page ? list.page : null;
  const assetFolder = list.entry.slice(0, list.entry.lastIndexOf('/') + 1);
  return path.startsWith(assetFolder) ? path : null;
}

/**
 * The stored file, else what the network has. The page always comes from this build; a script also from another, for
 * pages of an earlier version which go on in their tabs.
 */
export async function answer(files: OfflineFiles, path: string): Promise<Response> {
  if (path !== files.list.page) return (await storedFile(files, path)) ?? files.fetch(addressOf(files, path));
  const cache = await files.caches.open(cacheNameOf(files));
  return (await cache.match(addressOf(files, path), matching)) ?? files.fetch(addressOf(files, path));
}

/** Notes which windows are open as this version takes over: they may go on asking for files of the one before. */
export async function noteWindows(files: OfflineFiles, windowIds: readonly string[]): Promise<void> {
  const cache = await files.caches.open(cacheNameOf(files));
  await cache.put(addressOf(files, windowsKey), new Response(JSON.stringify(windowIds)));
}

/** Removes the caches of other versions, unless a window is still open that was there before this one took over. */
export async function tidy(files: OfflineFiles, openWindowIds: readonly string[]): Promise<void> {
  const cache = await files.caches.open(cacheNameOf(files));
  const note = await cache.match(addressOf(files, windowsKey), matching);
  const before = note === undefined ? [] : ((await note.json()) as string[]);
  if (before.some((id) => openWindowIds.includes(id))) return;
  for (const name of await otherCacheNames(files)) await files.caches.delete(name);
}
