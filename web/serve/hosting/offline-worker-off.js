/*
 * Takes back a bad offline worker. Copy this file over offline-worker.js on the server and leave it there until every
 * visitor was once online, then upload a good build whole. Each browser fetches it at its next visit: it drops all that was
 * kept for work without a network, signs itself off, and loads the open pages anew from the server. Designs are not
 * touched; they are kept elsewhere. Pages without a worker are not reloaded, so that no page is loaded for ever.
 */
self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(takeBack()));

async function takeBack() {
  const kept = (await caches.keys()).filter((name) => name.startsWith('bridgehead '));
  await Promise.all(kept.map((name) => caches.delete(name)));
  const pages = await self.clients.matchAll({ type: 'window' });
  await self.registration.unregister();
  await Promise.all(pages.map((page) => page.navigate(page.url).catch(() => undefined)));
}
