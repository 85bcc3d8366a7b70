import { answer, noteWindows, pathFor, storeAll, tidy, type OfflineFiles } from './offlineFiles';
import type { FileList, WorkerRequest } from './protocol';
import type { WorkerScope } from './workerScope';

/** Put in by the bundler: what the build has made. */
declare const builtFiles: FileList;

const scope = globalThis as unknown as WorkerScope;

const files: OfflineFiles = {
  list: builtFiles,
  folder: new URL('./', scope.location.href).href,
  caches: scope.caches,
  fetch: (address, options) => scope.fetch(address, options),
};

async function openWindowIds(): Promise<string[]> {
  const windows = await scope.clients.matchAll({ type: 'window', includeUncontrolled: true });
  return windows.filter(({ url }) => url.startsWith(files.folder)).map(({ id }) => id);
}

/** While another version is being fetched or waits, its cache must stay: the next page asks again. */
async function tidyWhenAlone(): Promise<void> {
  const { installing, waiting } = scope.registration;
  if (installing === null && waiting === null) await tidy(files, await openWindowIds());
}

async function takeOver(): Promise<void> {
  await noteWindows(files, await openWindowIds());
  await tidyWhenAlone();
  await scope.clients.claim();
}

scope.addEventListener('install', (event) => {
  event.waitUntil(storeAll(files));
});

scope.addEventListener('activate', (event) => {
  event.waitUntil(takeOver());
});

scope.addEventListener('fetch', (event) => {
  const path = pathFor(files, event.request);
  if (path !== null) event.respondWith(answer(files, path));
});

scope.addEventListener('message', (event) => {
  const { kind } = event.data as WorkerRequest;
  event.waitUntil(kind === 'takeOver' ? scope.skipWaiting() : tidyWhenAlone());
});
