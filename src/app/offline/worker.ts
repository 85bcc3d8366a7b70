import type { WorkerRequest } from '../../jobs/offline/protocol';
import { addFinding, useKeeping, type Finding } from '../keep/keeping';
import { useOffline } from './offline';

/** A page that stays open for days looks for a new version this often, ms, when somebody comes back to it. */
const lookAgainMs = 60 * 60 * 1000;

const newVersion: Finding = { kind: 'version' };

/**
 * Registers the worker by which the page opens without a network, and offers a new version when one has been fetched.
 * Silent where the browser has no such workers or refuses them: the page then works as it does without.
 */
export async function startWorker(): Promise<void> {
  try {
    const registration = await navigator.serviceWorker.register('./sw.js');
    useOffline.setState({ registration });
    followVersions(registration);
    lookWhenBack(registration);
    const { active } = await navigator.serviceWorker.ready;
    useOffline.setState({ isReady: true });
    active?.postMessage({ kind: 'tidy' } satisfies WorkerRequest);
  } catch {
    // Private windows, refused storage, a server that has no worker: said by nobody, missed by nobody.
  }
}

function followVersions(registration: ServiceWorkerRegistration): void {
  const offer = (): void => {
    // A first worker waits for nobody; one that waits has another in force before it.
    if (registration.waiting === null || registration.active === null) return;
    if (!useKeeping.getState().findings.includes(newVersion)) addFinding(newVersion);
  };
  const follow = (): void => {
    registration.installing?.addEventListener('statechange', offer);
  };
  offer();
  follow();
  registration.addEventListener('updatefound', follow);
}

function lookWhenBack(registration: ServiceWorkerRegistration): void {
  let lookedAtMs = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - lookedAtMs < lookAgainMs) return;
    lookedAtMs = Date.now();
    registration.update().catch(() => undefined);
  });
}
