import { beforeEach, describe, expect, it } from 'vitest';
import {
  answer,
  cacheNameOf,
  noteWindows,
  pathFor,
  storeAll,
  tidy,
  type OfflineFiles,
} from '../../../src/jobs/offline/offlineFiles';
import type { FileList } from '../../../src/jobs/offline/protocol';
import { FakeCaches } from './fakeCaches';

const folder = 'https://boats.example/windtoll/';
const first: FileList = {
  version: 'one',
  page: 'index.html',
  entry: 'assets/index-1.js',
  assets: ['assets/index-1.js', 'assets/Pane-1.js', 'assets/face.woff2'],
};
const second: FileList = {
  version: 'two',
  page: 'index.html',
  entry: 'assets/index-2.js',
  assets: ['assets/index-2.js', 'assets/Pane-2.js', 'assets/face.woff2'],
};

/** What the server has: path to body. Null: there is no network. */
let server: Map<string, string> | null;
let asked: string[];
let caches: FakeCaches;

function serve({ page, entry, assets }: FileList): void {
  server = new Map([
    [page, `<script src="./${entry}">`],
    ...assets.map((path) => [path, `body of ${path}`] as const),
  ]);
}

/** A server that answers with its page for what it does not have, and says that its answers vary. */
function fetchFromServer(address: string): Promise<Response> {
  const path = address.slice(folder.length);
  asked.push(path);
  if (server === null) return Promise.reject(new TypeError('no network'));
  const body = server.get(path);
  const type = body === undefined || path.endsWith('.html') ? 'text/html' : 'text/javascript';
  const headers = { 'content-type': type, vary: 'Origin' };
  return Promise.resolve(new Response(body ?? server.get('index.html') ?? '', { headers }));
}

function filesOf(list: FileList, inFolder = folder): OfflineFiles {
  return { list, folder: inFolder, caches: caches as unknown as CacheStorage, fetch: fetchFromServer };
}

async function bodyOf(files: OfflineFiles, path: string): Promise<string> {
  return (await answer(files, path)).text();
}

beforeEach(() => {
  serve(first);
  asked = [];
  caches = new FakeCaches();
});

describe('storing a build', () => {
  it('answers every file without a network afterwards, though the server says that answers vary', async () => {
    await storeAll(filesOf(first));
    server = null;
    for (const path of first.assets) expect(await bodyOf(filesOf(first), path)).toBe(`body of ${path}`);
    expect(await bodyOf(filesOf(first), 'index.html')).toContain('assets/index-1.js');
  });

  it('leaves nothing behind when a file does not come', async () => {
    server?.delete('assets/Pane-1.js');
    await expect(storeAll(filesOf(first))).rejects.toThrow('assets/Pane-1.js did not come');
    expect([...caches.stores.keys()]).toEqual([]);
  });

  it('refuses a page of another build, as in the middle of an upload', async () => {
    server?.set('index.html', '<script src="./assets/index-2.js">');
    await expect(storeAll(filesOf(first))).rejects.toThrow('index.html is not of the build one');
    expect([...caches.stores.keys()]).toEqual([]);
  });

  it('leaves the files of a worker in force as they were when storing the same build again fails', async () => {
    await storeAll(filesOf(first));
    server = null;
    await expect(storeAll(filesOf(first))).rejects.toThrow('no network');
    expect(await bodyOf(filesOf(first), 'assets/Pane-1.js')).toBe('body of assets/Pane-1.js');
  });

  it('asks the network only for what no earlier version has', async () => {
    await storeAll(filesOf(first));
    serve(second);
    asked = [];
    await storeAll(filesOf(second));
    expect([...asked].sort()).toEqual(['assets/Pane-2.js', 'assets/index-2.js', 'index.html']);
  });
});

describe('two versions', () => {
  beforeEach(async () => {
    await storeAll(filesOf(first));
    serve(second);
    await storeAll(filesOf(second));
    server = null;
  });

  it('each answers with its own page', async () => {
    expect(await bodyOf(filesOf(first), 'index.html')).toContain('assets/index-1.js');
    expect(await bodyOf(filesOf(second), 'index.html')).toContain('assets/index-2.js');
  });

  it('the new one answers a page of the old one with its scripts', async () => {
    expect(await bodyOf(filesOf(second), 'assets/Pane-1.js')).toBe('body of assets/Pane-1.js');
  });

  it('the old files stay while a window of before is open, and go with the last', async () => {
    await noteWindows(filesOf(second), ['tab-a', 'tab-b']);
    await tidy(filesOf(second), ['tab-b', 'tab-c']);
    expect(await bodyOf(filesOf(second), 'assets/Pane-1.js')).toBe('body of assets/Pane-1.js');
    await tidy(filesOf(second), ['tab-c']);
    expect([...caches.stores.keys()]).toEqual([cacheNameOf(filesOf(second))]);
    await expect(answer(filesOf(second), 'assets/Pane-1.js')).rejects.toThrow('no network');
  });

  it('caches of a copy in another folder, and of others, are left alone', async () => {
    const inside = cacheNameOf(filesOf(first, `${folder}trial/`));
    const above = cacheNameOf(filesOf(first, 'https://boats.example/'));
    for (const name of [inside, above, 'pictures']) await caches.open(name);
    await tidy(filesOf(second), []);
    expect([...caches.stores.keys()].sort()).toEqual(
      [cacheNameOf(filesOf(second)), inside, above, 'pictures'].sort(),
    );
  });
});

describe('which requests are answered', () => {
  const files = { list: first, folder } as OfflineFiles;
  it.each([
    ['the page', 'GET', 'navigate', folder, 'index.html'],
    ['the page with a place in it', 'GET', 'navigate', `${folder}?from=mail#row=boom`, 'index.html'],
    ['the page by its name', 'GET', 'navigate', `${folder}index.html#plan=`, 'index.html'],
    ['a script', 'GET', 'cors', `${folder}assets/Pane-1.js`, 'assets/Pane-1.js'],
    ['a script of another version', 'GET', 'cors', `${folder}assets/Pane-9.js`, 'assets/Pane-9.js'],
    ['another page in the folder', 'GET', 'navigate', `${folder}guide/`, null],
    ['a file beside the page', 'GET', 'no-cors', `${folder}sw.js`, null],
    ['another folder', 'GET', 'navigate', 'https://boats.example/', null],
    ['another site', 'GET', 'cors', 'https://other.example/windtoll/assets/Pane-1.js', null],
    ['something sent', 'POST', 'cors', `${folder}assets/Pane-1.js`, null],
  ])('%s', (_, method, mode, url, path) => {
    expect(pathFor(files, { method, mode, url })).toBe(path);
  });
});
