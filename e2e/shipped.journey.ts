import { expect } from '@playwright/test';
import { filesOfFirstVisit, MOST_KB, sumOf } from '../tests/figures/page/first-load.ts';
import { serveBuilt } from '../tests/figures/page/serve-page.ts';
import { openPage, test } from './walk.ts';

const PORT = 4610;

test('the built page brings its licences and looks nowhere else', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await openPage(page);
  expect(asked.filter((url) => /^https?:/.test(url)).every((url) => new URL(url).hostname === '127.0.0.1')).toBe(true);

  const link = page.getByRole('link', { name: 'Licences of all parts' });
  await expect(link).toHaveAttribute('href', './licences.txt');
  const licences = await (await page.request.get('/licences.txt')).text();
  expect(licences).not.toMatch(/no licen[cs]e file in/);
  // One name each: page code, code that only the worker has, a lettering face.
  for (const name of ['react', 'clipper-lib', 'zod', '@fontsource/stardos-stencil']) {
    expect(licences).toMatch(new RegExp(`^${name} \\d`, 'm'));
  }
  expect(licences).toContain('SIL OPEN FONT LICENSE');
});

test('a first visit asks for no more than it is allowed until the first plate', async ({ page }) => {
  const served = await serveBuilt(PORT);
  try {
    const loaded = await filesOfFirstVisit(page, served);
    const told = loaded.map(({ path, kB }) => `${kB.toFixed(1)} KB ${path}`).join('\n');
    // the worker's script and a face at least, or nothing was counted
    expect(told).toMatch(/plate-worker[^]*\.woff/);
    expect(sumOf(loaded), told).toBeLessThanOrEqual(MOST_KB);
  } finally {
    await served.end();
  }
});
