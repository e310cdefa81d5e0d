import { expect } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { DIST } from '../web/serve/build.mjs';
import { createStaticServer, listenOnFreePort } from '../web/serve/static-server.mjs';
import { downloadNamed, fillIn, goTo, openPage, pick, test, worked } from './walk.ts';

test('after the first visit everything works without a network, files too', async ({ page, context }) => {
  test.setTimeout(240_000);
  await openPage(page);
  // as long as everything that was built is being fetched, the worker is not active yet
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);

  await page.reload();
  await goTo(page, 'say');
  await worked(page);
  await fillIn(page, 'Ring text, top', 'NO NETWORK HERE');
  await worked(page);
  // a face that was not looked at before, the barrel, the list: all parts that are loaded late
  await goTo(page, 'look');
  await page.getByRole('button', { name: /^All \d+ faces/ }).click();
  await pick(page, /Great Vibes/);
  await worked(page);
  await goTo(page, 'take');
  const all = await downloadNamed(page, 'Download everything');
  expect(all.bytes.subarray(0, 2).toString()).toBe('PK');
  expect(all.bytes.length).toBeGreaterThan(20_000);
  await page.getByRole('button', { name: 'My designs' }).click();
  await expect(page.getByRole('dialog', { name: 'My designs' })).toBeVisible();
  await page.keyboard.press('Escape');
  await context.setOffline(false);
});

test('a newer version says so, waits to be asked, and keeps the open design', { tag: '@long' }, async ({ page }) => {
  test.setTimeout(240_000);
  const served = await servingNewer();
  await page.goto(served.address);
  await goTo(page, 'say');
  await worked(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await fillIn(page, 'Ring text, top', 'STAYS OPEN');
  served.publish();
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await expect(page.getByText('A newer version of Bridgehead is ready.')).toBeVisible({ timeout: 60_000 });
  await fillIn(page, 'Ring text, top', 'STAYS OPEN TOO');
  await Promise.all([
    page.waitForEvent('load', { timeout: 60_000 }),
    page.getByRole('button', { name: 'Change over now' }).click(),
  ]);
  await worked(page);
  await expect(page.getByRole('textbox', { name: 'Ring text, top' })).toHaveValue('STAYS OPEN TOO');
  expect(await page.evaluate(() => caches.keys())).toContain('bridgehead newer');
  served.end();
});

/** The built page, of which another version can be published: the mark of its content is then another one. */
async function servingNewer() {
  const inner = createStaticServer(DIST);
  let newer = false;
  const outer = createServer((request, response) => {
    if (request.url !== '/offline-worker.js' || !newer) return void inner.emit('request', request, response);
    const worker = readFileSync(join(DIST, 'offline-worker.js'), 'utf8');
    response.writeHead(200, { 'Content-Type': 'text/javascript; charset=utf-8', 'Cache-Control': 'no-cache' });
    response.end(worker.replace(/version:(["'`])\w+\1/, 'version:"newer"'));
  });
  const port = await listenOnFreePort(outer, 4498, false);
  return {
    address: `http://127.0.0.1:${port}/`,
    publish: () => void (newer = true),
    end() {
      outer.closeAllConnections();
      outer.close();
    },
  };
}

test('the page can be installed', { tag: '@long' }, async ({ page }) => {
  await openPage(page);
  const manifest = (await (await page.request.get('/manifest.webmanifest')).json()) as {
    icons: { src: string; sizes: string; purpose: string }[];
  };
  expect(manifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`)).toEqual([
    '192x192 any',
    '512x512 any',
    '512x512 maskable',
  ]);
  for (const { src, sizes } of manifest.icons) {
    const png = await (await page.request.get(`/${src}`)).body();
    // PNG (ISO/IEC 15948), 11.2.2: width and height stand in the header
    expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
  }
  const session = await page.context().newCDPSession(page);
  const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
  expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([]);
});

test('the server says what the page may do', async ({ page }) => {
  const answer = await page.request.get('/');
  expect(answer.headers()['content-security-policy']).toMatch(/script-src 'self';.*frame-ancestors 'none'/);
  expect(answer.headers()['cache-control']).toBe('no-cache');
  const worker = await page.request.get('/offline-worker.js');
  expect(worker.headers()['cache-control']).toBe('no-cache');
  expect(worker.headers()['content-type']).toMatch(/^text\/javascript/);
});
