/**
 * Serves the built page without a network. Runs beside the page, knows nothing of designs, and is written anew at each
 * build with the list of everything that was built.
 *
 * A version is fetched as a whole or not at all: each file must have the SHA-256 it had when it was built, so that a page
 * uploaded in the wrong order or by half is never kept. The browser tries again at the next visit, and the version before
 * goes on. A newer one waits until the person changes over or all tabs are closed; the one before is kept, since another
 * tab may still ask for a part of it. A bad one is taken back by hosting/offline-worker-off.js.
 */
declare const BUILT: {
  readonly version: string;
  /** SHA-256 in base64 by the file's path; '' for what a shop edits without a build. */
  readonly files: Readonly<Record<string, string>>;
};

const scope = self as unknown as ServiceWorkerGlobalScope;
// Once by name: the build writes the whole list wherever it is named.
const built = BUILT;
const FAMILY = 'bridgehead ';
const NOW = FAMILY + built.version;
/** A browser has six connections to a server: most stay free for whoever is using the page meanwhile. */
const AT_ONCE = 2;
/** Built files of this folder carry a mark of their content in their name: the same name is the same file. */
const MARKED = 'assets/';

scope.addEventListener('install', (event) => event.waitUntil(fetchAll()));
scope.addEventListener('activate', (event) => event.waitUntil(tidy().then(() => scope.clients.claim())));
scope.addEventListener('message', (event) => {
  if (event.data === 'change-over') void scope.skipWaiting();
});
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin } = new URL(request.url);
  if (request.method === 'GET' && origin === scope.location.origin) event.respondWith(answer(request));
});

async function fetchAll(): Promise<void> {
  const cache = await caches.open(NOW);
  const waiting = Object.entries(built.files);
  const take = async (): Promise<void> => {
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      await cache.put(addressOf(next[0]), await asBuilt(...next));
    }
  };
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, take));
  } catch (error) {
    await caches.delete(NOW);
    throw error;
  }
}

/** The file as it was built: kept already, at hand in the browser, or from the server. Throws when none of them is. */
async function asBuilt(file: string, sha256: string): Promise<Response> {
  const url = addressOf(file);
  const known = file.startsWith(MARKED) ? await caches.match(url, { ignoreVary: true }) : undefined;
  if (known && (await isAsBuilt(known, sha256))) return known;
  for (const cache of file.startsWith(MARKED) ? (['default', 'reload'] as const) : (['reload'] as const)) {
    const came = await fetch(new Request(url, { cache, priority: 'low' }));
    // A shop may go without its files, or show them to nobody; the page then says so.
    if (sha256 === '' ? came.status < 500 : came.ok && (await isAsBuilt(came, sha256))) return came;
  }
  throw new Error(`${file} is not what was built`);
}

async function isAsBuilt(response: Response, sha256: string): Promise<boolean> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', await response.clone().arrayBuffer()));
  return btoa(String.fromCharCode(...digest)) === sha256;
}

async function tidy(): Promise<void> {
  const ours = (await caches.keys()).filter((name) => name.startsWith(FAMILY) && name !== NOW);
  await Promise.all(ours.slice(0, -1).map((name) => caches.delete(name)));
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(NOW);
  if (isShopsOwn(request.url)) return newest(request, cache);
  const wanted = request.mode === 'navigate' && isPage(request.url) ? addressOf('index.html') : request;
  return (
    (await cache.match(wanted, { ignoreSearch: true, ignoreVary: true })) ??
    (await caches.match(wanted, { ignoreVary: true })) ??
    fetch(request)
  );
}

/** What the shop edits in the built folder, without a build: asked for anew each time, kept for when nobody answers. */
async function newest(request: Request, cache: Cache): Promise<Response> {
  const came = await fetch(request, { cache: 'no-cache' }).catch(() => undefined);
  if (came?.ok) await cache.put(request.url, came.clone());
  return came ?? (await cache.match(request.url)) ?? Response.error();
}

function isShopsOwn(url: string): boolean {
  return ['stock.json', 'shop.json'].some((name) => new URL(url).pathname === new URL(addressOf(name)).pathname);
}

/** The page itself, whatever stands behind the question mark. */
function isPage(url: string): boolean {
  const { pathname } = new URL(url);
  return [addressOf(''), addressOf('index.html')].some((address) => new URL(address).pathname === pathname);
}

function addressOf(file: string): string {
  return new URL(file, scope.registration.scope).href;
}

export {};
