import { expect } from '@playwright/test';
import { openPage, test } from './walk.ts';

test('the built page brings its licences and looks nowhere else', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await openPage(page);
  expect(asked.filter((url) => /^https?:/.test(url)).every((url) => new URL(url).hostname === '127.0.0.1')).toBe(true);

  const licences = await (await page.request.get('/licences.txt')).text();
  // One name each: page code, code that only the worker has, a lettering face.
  for (const name of ['react', 'clipper-lib', 'zod', '@fontsource/stardos-stencil']) {
    expect(licences).toMatch(new RegExp(`^${name} \\d`, 'm'));
  }
  expect(licences).toContain('SIL OPEN FONT LICENSE');
});
