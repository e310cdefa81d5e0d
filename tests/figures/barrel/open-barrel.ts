import type { Page } from '@playwright/test';
import { servePage, type ServedPage } from '../page/serve-page.ts';

/** Three dimensions drawn by the processor alone, as on a machine without any graphics card. */
const SOFTWARE_WEBGL = ['--use-angle=swiftshader', '--enable-unsafe-swiftshader'];
const LONGEST_MS = 180_000;

/** Serves the built page, does the work and ends; undefined where there is no browser. */
export async function withPage<T>(port: number, work: (served: ServedPage) => Promise<T>): Promise<T | undefined> {
  const served = await servePage(port, SOFTWARE_WEBGL);
  if (!served) return undefined;
  try {
    return await work(served);
  } finally {
    await served.end();
  }
}

/** A visit of its own, past the first pictures, all plates made, the page kept for later, and the machine at rest. */
export async function visit(served: ServedPage): Promise<Page> {
  const context = await served.browser.newContext({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(LONGEST_MS);
  await page.goto(served.address);
  await page.getByRole('button', { name: /What shall it say/ }).click();
  await page.waitForFunction(() => !document.querySelector('[data-busy]'));
  await page.evaluate('navigator.serviceWorker?.ready.then(() => undefined)');
  await page.waitForTimeout(1000);
  return page;
}

/** Opens the view of the barrel; gives the milliseconds from the press until it has been drawn. */
export async function openBarrel(page: Page): Promise<number> {
  const ms = await page.evaluate(`new Promise((done) => {
    const label = [...document.querySelectorAll('label')].find((l) => l.textContent === 'On the barrel');
    const start = performance.now();
    const look = () =>
      document.querySelector('[data-barrel][data-shows]') ? done(performance.now() - start) : requestAnimationFrame(look);
    label.click();
    look();
  })`);
  return Number(ms);
}

/** What the view says it shows, once that differs from `before`. */
export async function showsOther(page: Page, before: string | null): Promise<string | null> {
  await page.waitForFunction(
    (was) => document.querySelector('[data-barrel]')?.getAttribute('data-shows') !== was,
    before,
  );
  return shown(page);
}

export function shown(page: Page): Promise<string | null> {
  return page.locator('[data-barrel]').getAttribute('data-shows');
}

/** Geometries and textures that the graphics card holds. */
export async function held(page: Page): Promise<string> {
  const counts = await page.locator('[data-barrel]').getAttribute('data-held');
  if (counts === null) throw new Error('the view does not say what it holds');
  return counts;
}

export function pickState(page: Page, name: string): Promise<void> {
  return page
    .locator('label')
    .filter({ has: page.getByRole('radio', { name, exact: true }) })
    .click();
}
