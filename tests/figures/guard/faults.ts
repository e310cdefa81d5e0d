import type { Browser, BrowserContext, Page } from '@playwright/test';
import { seeded } from '../../judge/seeded.ts';
import type { Claim } from '../claim.ts';
import { NO_BROWSER, servePage } from '../page/serve-page.ts';
import { PAGE_FAULTS, type PageFault } from './page-faults.ts';

const PORT = 4798;
const SEED = 20_290_114;
const KILLS = 20;
/** Letters typed so long before a tab is killed are there again. */
const SAFE_MS = 100;
/** The longest that a worker without a sign of life is waited for, and some room for a busy machine. */
const LONGEST_TOLD_MS = 60_000;

interface Ended {
  readonly name: string;
  readonly blank: boolean;
  readonly untold: boolean;
  readonly lost: number;
}

/** Everything that can go wrong under the page, each in a browser profile of its own. */
export const FAULT_CLAIMS: readonly Claim[] = [
  {
    name: 'faults',
    wanted: `${PAGE_FAULTS.length} page faults and a tab killed at ${KILLS} moments: 0 blank pages, 0 untold, 0 letters lost older than ${SAFE_MS} ms`,
    async measure() {
      const served = await servePage(PORT);
      if (!served) return NO_BROWSER;
      try {
        const only = new RegExp(process.env['FAULT'] ?? '');
        const ends: Ended[] = [];
        for (const fault of PAGE_FAULTS) {
          if (!only.test(fault.name)) continue;
          ends.push(await inProfile(served.browser, served.address, (context) => endOf(fault, context)));
          report(ends.at(-1));
        }
        const chance = seeded(SEED);
        for (let i = 0; i < (only.test('killed') ? KILLS : 0); i++) {
          const afterMs = 50 + Math.floor(chance.next() * 1500);
          ends.push(await inProfile(served.browser, served.address, (context) => endOfKilled(context, i, afterMs)));
          report(ends.at(-1));
        }
        const blank = ends.filter((end) => end.blank).length;
        const untold = ends.filter((end) => end.untold).length;
        const lost = ends.reduce((sum, end) => sum + end.lost, 0);
        return {
          value: `${ends.length} faults: ${blank} blank, ${untold} untold, ${lost}`,
          unit: 'letters lost',
          ok: blank + untold + lost === 0 && ends.length >= PAGE_FAULTS.length + KILLS,
        };
      } finally {
        await served.end();
      }
    },
  },
];

function report(end: Ended | undefined): void {
  if (process.env['FAULT_LOG']) console.log(`  ${JSON.stringify(end)}`);
  else if (end && (end.blank || end.untold || end.lost > 0)) console.log(`  ${JSON.stringify(end)}`);
}

async function inProfile<T>(browser: Browser, address: string, work: (context: BrowserContext) => Promise<T>) {
  // what a service worker has kept would hide what is missing
  const context = await browser.newContext({ baseURL: address, serviceWorkers: 'block', locale: 'en' });
  try {
    return await work(context);
  } finally {
    await context.close();
  }
}

async function endOf(fault: PageFault, context: BrowserContext): Promise<Ended> {
  const text = 'COOPER 1907';
  const page = await context.newPage();
  const under = fault.keepsNothing ?? fault.lasts;
  if (under) await fault.arm(context);
  await openText(page);
  await field(page).fill('');
  await field(page).pressSequentially(text, { delay: 20 });
  await rest(page, SAFE_MS);
  if (!under) await fault.arm(context);
  if (!fault.keepsNothing) await page.reload();
  await page.waitForTimeout(300);
  let untold = false;
  try {
    if (fault.act) await page.locator('nav button').first().waitFor({ timeout: 40_000 });
    await fault.act?.(page);
    if (fault.told !== undefined) await page.locator(fault.told).first().waitFor({ timeout: LONGEST_TOLD_MS });
  } catch {
    untold = true;
  }
  await page
    .waitForFunction(() => document.body.innerText.trim().length > 20, undefined, { timeout: 15_000 })
    .catch(() => 0);
  const blank = await isBlank(page);
  let found = page;
  if (!fault.keepsNothing) {
    if (!fault.lasts) await context.unrouteAll({ behavior: 'ignoreErrors' });
    await page.close();
    found = await context.newPage();
    await openText(found);
  }
  return { name: fault.name, blank, untold, lost: lostOf(text, await valueOf(found)) };
}

async function endOfKilled(context: BrowserContext, number: number, afterMs: number): Promise<Ended> {
  const page = await context.newPage();
  const typed: { readonly atMs: number; readonly value: string }[] = [];
  page.on('console', (message) => {
    const [, atMs, value] = /^typed (\d+) (.*)$/.exec(message.text()) ?? [];
    if (value !== undefined) typed.push({ atMs: Number(atMs), value });
  });
  await openText(page);
  await field(page).fill('');
  await page.evaluate(() => {
    document.addEventListener('input', ({ target }) => {
      console.debug(`typed ${Date.now()} ${(target as HTMLInputElement).value}`);
    });
  });
  const typing = field(page).pressSequentially('THE QUICK BROWN FOX JUMPS OVER THE DOG', { delay: 35 });
  typing.catch(() => undefined);
  await page.waitForTimeout(afterMs);
  const killedMs = Date.now();
  const gone = page.waitForEvent('crash', { timeout: 20_000 });
  // the renderer is shot down: no handler of the page runs
  (await context.newCDPSession(page)).send('Page.crash').catch(() => undefined);
  await gone;
  await page.close();
  const wanted = typed.filter(({ atMs }) => atMs <= killedMs - SAFE_MS).at(-1)?.value ?? '';
  const next = await context.newPage();
  await openText(next);
  const blank = await isBlank(next);
  const name = `killed ${number} after ${afterMs} ms`;
  return { name, blank, untold: false, lost: wanted === '' ? 0 : lostOf(wanted, await valueOf(next)) };
}

/** The question where letters are typed. */
async function openText(page: Page): Promise<void> {
  await page.goto('./');
  await page.locator('nav').last().getByRole('button').first().click({ timeout: 40_000 });
  await field(page)
    .waitFor({ timeout: 40_000 })
    .catch(() => undefined);
}

function field(page: Page) {
  return page.getByRole('textbox', { name: 'Ring text, top', exact: true });
}

async function valueOf(page: Page): Promise<string> {
  return field(page)
    .inputValue({ timeout: 20_000 })
    .catch(() => '');
}

/** By the page's own clock: on a busy machine it lags behind ours. */
async function rest(page: Page, ms: number): Promise<void> {
  await page.evaluate((ms) => new Promise((done) => setTimeout(done, ms)), ms);
}

async function isBlank(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    const box = document.getElementById('page')?.getBoundingClientRect();
    return document.body.innerText.trim().length <= 20 || box === undefined || box.height < 50;
  });
}

function lostOf(typed: string, found: string): number {
  let same = 0;
  while (same < typed.length && typed[same] === found[same]) same++;
  return typed.length - same;
}
