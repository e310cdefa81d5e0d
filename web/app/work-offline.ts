import type { NewerVersionStore } from '../page/newer-version.ts';

/** Built beside the page (web/serve/offline-build.ts). */
const WORKER_FILE = './offline-worker.js';
const LONGEST_CHANGE_MS = 5000;
/** Somebody who leaves the page open for days still hears of a newer version. */
const LOOK_AGAIN_MS = 3 * 3600_000;

/**
 * Has everything fetched that the page needs without a network, and says when a newer version waits. beforeChange
 * saves what is not saved yet; then the page is loaded anew. Does nothing where the browser or an unencrypted address
 * does not allow it: the page works all the same, with a network.
 */
export async function workOffline(newer: NewerVersionStore, beforeChange: () => Promise<void>): Promise<void> {
  const container = (navigator as Partial<Navigator>).serviceWorker;
  if (!container) return;
  let registration: ServiceWorkerRegistration;
  try {
    registration = await container.register(WORKER_FILE, { updateViaCache: 'none' });
  } catch {
    return;
  }

  const tell = (waiting: ServiceWorker): void => newer.setState({ changeOver: () => changeOver(waiting) });
  // without a controller this is the first visit: what was fetched is what is shown
  if (registration.waiting && container.controller) tell(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && container.controller) tell(coming);
    });
  });

  let lastLook = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - lastLook < LOOK_AGAIN_MS) return;
    lastLook = Date.now();
    // without a network there is nothing newer
    registration.update().catch(() => undefined);
  });

  async function changeOver(waiting: ServiceWorker): Promise<void> {
    await beforeChange();
    container?.addEventListener('controllerchange', () => location.reload(), { once: true });
    waiting.postMessage('change-over');
    // one that does not answer: the page is loaded as the server has it now
    setTimeout(() => location.reload(), LONGEST_CHANGE_MS);
  }
}
