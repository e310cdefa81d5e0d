import { expect } from '@playwright/test';
import { downloadNamed, fillIn, goTo, openPage, test, worked } from './walk.ts';

test('after the first visit everything works without a network, files too', async ({ page, context }) => {
  test.setTimeout(240_000);
  await openPage(page);
  // as long as everything that was built is being fetched, the worker is not active yet
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);

  await page.reload();
  await worked(page);
  await fillIn(page, 'Ring text, top', 'NO NETWORK HERE');
  await worked(page);
  // a face that was not looked at before, the barrel, the list: all parts that are loaded late
  await goTo(page, 'look');
  await page
    .getByRole('radio', { name: /Great Vibes/ })
    .first()
    .check({ force: true });
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

test('a newer version says so, waits to be asked, and keeps the open design', async ({ page, context }) => {
  test.setTimeout(240_000);
  let newer = false;
  await context.route('**/offline-worker.js', async (route) => {
    const answer = await route.fetch();
    const text = await answer.text();
    await route.fulfill({ response: answer, body: newer ? text.replace(/version:`\w+`/, 'version:`newer`') : text });
  });
  await openPage(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await fillIn(page, 'Ring text, top', 'STAYS OPEN');
  await page.waitForTimeout(600);
  newer = true;
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
});

test('the page can be installed', async ({ page }) => {
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
