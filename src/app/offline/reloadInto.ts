import type { WorkerRequest } from '../../jobs/offline/protocol';
import type { SaveStatus } from '../../state/storage/saveStatus';
import type { Keeper } from '../keep/keeper';

/** A worker that does not answer within this time, ms, does not keep the page from being loaded anew. */
const patienceMs = 4000;

/** True where the open project would be lost, or left behind, by a reload. */
export function isUnsaved(keeper: Pick<Keeper, 'autosaver'> | null, { kind }: SaveStatus): boolean {
  return keeper === null || kind === 'failed' || kind === 'unkept' || kind === 'conflict';
}

/**
 * Saves what is pending, then lets the waiting worker take over and reloads. Another tab may have called it before: then
 * nobody waits, and the reload alone brings the new version.
 * @returns false when the storage refused, and nothing was done.
 */
export async function reloadInto(
  registration: ServiceWorkerRegistration | null,
  keeper: Pick<Keeper, 'autosaver'> | null,
  reload: () => void,
): Promise<boolean> {
  await keeper?.autosaver.flush();
  if (keeper === null || isUnsaved(keeper, keeper.autosaver.status())) return false;
  callWaiting(registration, reload);
  return true;
}

/** As {@link reloadInto}, when the person has said that what is not saved may go. */
export function callWaiting(registration: ServiceWorkerRegistration | null, reload: () => void): void {
  const waiting = registration?.waiting ?? null;
  if (waiting === null) {
    reload();
    return;
  }
  let isReloading = false;
  const reloadOnce = (): void => {
    if (!isReloading) reload();
    isReloading = true;
  };
  // Only this tab has asked, so that only this one is loaded anew.
  navigator.serviceWorker.addEventListener('controllerchange', reloadOnce, { once: true });
  setTimeout(reloadOnce, patienceMs);
  waiting.postMessage({ kind: 'takeOver' } satisfies WorkerRequest);
}
