import { expect, test, type Page } from '@playwright/test';
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DIST } from '../web/serve/build.mjs';
import { createStaticServer, listenOnFreePort } from '../web/serve/static-server.mjs';

// The worker as it was built, before a page of three files: what counts here is what it keeps, and when.

const OFF = fileURLToPath(new URL('../web/serve/hosting/offline-worker-off.js', import.meta.url));

test('a page uploaded in the wrong order is not kept, and the next visit tries again', async ({ page }) => {
  const site = await serveSite(4530);
  await site.upload('first', ['page.js', 'index.html', 'worker']);
  await visit(page, site.address, 'first');

  // The worker arrives before what it lists: a new page by half.
  await site.upload('second', ['worker', 'page.js']);
  for (let reload = 0; reload < 2; reload++) {
    await settle(page);
    await page.reload();
    await expect(page.locator('p')).toHaveText('first first');
  }
  expect(await page.evaluate(() => caches.keys())).toEqual(['bridgehead first']);

  await site.upload('second', ['index.html']);
  await settle(page);
  expect(await page.evaluate(() => caches.keys())).toEqual(['bridgehead first', 'bridgehead second']);
  await changeOver(page);
  await expect(page.locator('p')).toHaveText('second second');
  site.end();
});

test('a file that the server spoils on its way is fetched once more, then refused', async ({ page }) => {
  const site = await serveSite(4540);
  await site.upload('first', ['page.js', 'index.html', 'worker']);
  site.spoil('assets/part-1.js');
  await page.goto(site.address);
  await expect.poll(() => site.asked.filter((path) => path === '/assets/part-1.js').length).toBeGreaterThanOrEqual(2);
  await expect.poll(() => page.evaluate(() => caches.keys())).toEqual([]);
  expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
  await expect(page.locator('p')).toHaveText('first first');
  site.end();
});

test('a shop without its own files works without a network too', async ({ page, context }) => {
  const site = await serveSite(4550);
  await site.upload('first', ['page.js', 'index.html', 'worker'], { 'stock.json': '' });
  await visit(page, site.address, 'first');
  await context.setOffline(true);
  await page.reload();
  await expect(page.locator('p')).toHaveText('first first');
  expect(await page.evaluate(async () => (await fetch('./stock.json')).status)).toBe(404);
  await context.setOffline(false);
  site.end();
});

test('a bad worker is taken back by the file for it: its page is gone, and nothing is loaded for ever', async ({
  page,
}) => {
  const site = await serveSite(4560);
  await site.upload('bad', ['page.js', 'index.html', 'worker']);
  await visit(page, site.address, 'bad');
  await page.evaluate(() => localStorage.setItem('design', 'kept'));

  await site.upload('good', ['page.js', 'index.html']);
  copyFileSync(OFF, join(site.folder, 'offline-worker.js'));
  let loads = 0;
  page.on('load', () => loads++);
  await page.reload();
  await expect(page.locator('p')).toHaveText('good good', { timeout: 10_000 });
  await settle(page);
  const loadsSoFar = loads;
  await page.waitForTimeout(1500);
  expect(loads).toBe(loadsSoFar);
  expect(loads).toBeLessThanOrEqual(3);
  expect(await page.evaluate(() => caches.keys())).toEqual([]);
  expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
  expect(await page.evaluate(() => localStorage.getItem('design'))).toBe('kept');

  // A good build after it is kept again.
  await site.upload('good', ['worker']);
  await page.reload();
  await visit(page, site.address, 'good');
  site.end();
});

/** A page of three files on a server of its own, uploaded file by file. */
async function serveSite(from: number) {
  const folder = mkdtempSync(join(tmpdir(), 'bridgehead-site-'));
  mkdirSync(join(folder, 'assets'));
  const server = createStaticServer(folder);
  const asked: string[] = [];
  server.prependListener('request', ({ url = '' }: { url?: string }) => asked.push(url));
  const port = await listenOnFreePort(server, from, false);
  const filesOf = (version: string): Record<string, string> => ({
    'index.html': `<!doctype html><p>${version}</p><script src="page.js"></script>`,
    'page.js': `document.querySelector('p').append(' ${version}');
navigator.serviceWorker.register('./offline-worker.js', { updateViaCache: 'none' });`,
    'assets/part-1.js': 'export const part = 1;',
  });
  return {
    folder,
    asked,
    address: `http://127.0.0.1:${port}/`,
    async upload(version: string, names: readonly string[], more: Record<string, string> = {}) {
      const files = filesOf(version);
      writeFileSync(join(folder, 'assets/part-1.js'), files['assets/part-1.js']!);
      for (const name of names) {
        const text = name === 'worker' ? workerOf(version, files, more) : files[name]!;
        writeFileSync(join(folder, name === 'worker' ? 'offline-worker.js' : name), text);
      }
      // Marks of files hold their time in ms: two uploads never fall on the same one.
      await new Promise((resolve) => setTimeout(resolve, 20));
    },
    spoil: (file: string) => writeFileSync(join(folder, file), 'spoiled'),
    end() {
      server.closeAllConnections();
      server.close();
      rmSync(folder, { recursive: true });
    },
  };
}

/** The worker that was built, with a list of these files in place of its own. */
function workerOf(version: string, files: Record<string, string>, more: Record<string, string>): string {
  const listed: Record<string, string> = {};
  for (const [name, text] of Object.entries(files)) listed[name] = createHash('sha256').update(text).digest('base64');
  const list = JSON.stringify({ version, files: { ...listed, ...more } });
  const built = readFileSync(join(DIST, 'offline-worker.js'), 'utf8');
  const worker = built.replace(/\{version:[`"']\w+[`"'],files:\{[^{}]*\}\}/, () => list);
  expect(worker).toContain(list);
  return worker;
}

/** A first visit until all is kept and the worker answers. */
async function visit(page: Page, address: string, version: string): Promise<void> {
  await page.goto(address);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await expect(page.locator('p')).toHaveText(`${version} ${version}`);
}

/** Waits until no worker is being fetched any more, after asking for a newer one. */
async function settle(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update().catch(() => undefined);
    const coming = registration?.installing;
    if (!coming) return;
    await new Promise<void>((resolve) => {
      coming.addEventListener('statechange', () => resolve());
      if (coming.state !== 'installing') resolve();
    });
  });
}

async function changeOver(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const changed = new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve));
    (await navigator.serviceWorker.getRegistration())?.waiting?.postMessage('change-over');
    await changed;
  });
  await page.reload();
}
