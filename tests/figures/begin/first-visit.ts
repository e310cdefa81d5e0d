import type { Page } from '@playwright/test';
import { loadavg } from 'node:os';
import { once } from '../claim.ts';
import { servePage, type ServedPage } from '../page/serve-page.ts';
import { slowLine, type Line } from './slow-line.ts';

/** A phone of the slower kind: Lighthouse's "slow 4G" and four times slower than this machine. */
const LINE: Line = { roundTripMs: 150, bitsPerSecond: 1_600_000 };
const SLOWER = 4;
const PORT = 4797;
const VISITS = 3;
/** Names that nobody's plate has: each letter is one key. */
const TYPED = 'Maple & Rowan';
const BETWEEN_KEYS_MS = 150;
const PATIENCE_MS = 60_000;

/** One visit without any cache, in ms since the address was entered. */
export interface Visit {
  readonly firstPictureMs: number;
  readonly allPicturesMs: number;
  /** A beginning was pressed as soon as it was seen, and its first field has taken a letter. */
  readonly readyMs: number;
  /** From the press of a key to the next paint, as the browser's Event Timing tells it (W3C), in steps of 8. */
  readonly keysMs: readonly { readonly beginning: string; readonly ms: number }[];
}

export interface Visits {
  readonly visits: readonly Visit[];
  /** How busy the machine was meanwhile: load divided by its cores tells how far to believe the figures. */
  readonly load: number;
}

/** Visits under the conditions of a slow phone; undefined where there is no browser. */
export const firstVisits = once(async (): Promise<Visits | undefined> => {
  const served = await servePage(PORT);
  if (!served) return undefined;
  const line = await slowLine(Number(new URL(served.address).port), LINE);
  try {
    const visits: Visit[] = [];
    for (let i = 0; i < VISITS; i++) visits.push(await visit(served, line.port));
    return { visits, load: loadavg()[0] ?? NaN };
  } finally {
    line.end();
    await served.end();
  }
});

async function visit({ browser }: ServedPage, port: number): Promise<Visit> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    await page.addInitScript(WATCH);
    await page.goto(`http://127.0.0.1:${port}/`, { waitUntil: 'commit' });
    const seen = (name: string): Promise<number> => seenAt(page, name);
    const firstPictureMs = await seen('first');
    await page.locator(CARD).first().click();
    const field = page.locator('#questions input[type=text]').first();
    await field.press('R', { timeout: PATIENCE_MS });
    await page.evaluate('seen.later("ready")');
    const readyMs = await seen('ready');
    const allPicturesMs = await seen('all');
    return { firstPictureMs, allPicturesMs, readyMs, keysMs: await typeAll(page) };
  } finally {
    await context.close();
  }
}

/** Types into the first field of each beginning, with the plates being worked out meanwhile. */
async function typeAll(page: Page): Promise<{ beginning: string; ms: number }[]> {
  const keys: { beginning: string; ms: number }[] = [];
  for (let i = 0, beginnings = 1; i < beginnings; i++) {
    await page
      .getByRole('button', { name: 'Begin anew' })
      .or(page.locator('#questions button').first())
      .first()
      .click();
    const card = page.locator(CARD).nth(i);
    const beginning = await card.innerText();
    beginnings = await page.locator(CARD).count();
    await card.click();
    const field = page.locator('#questions input[type=text]').first();
    await field.click();
    await page.evaluate('seen.keys.length = 0');
    await page.keyboard.type(TYPED, { delay: BETWEEN_KEYS_MS });
    await page.waitForTimeout(400);
    const ms = await page.evaluate('Math.max(0, ...seen.keys)');
    keys.push({ beginning, ms: Number(ms) });
  }
  return keys;
}

async function seenAt(page: Page, name: string): Promise<number> {
  for (const givenUpMs = Date.now() + PATIENCE_MS; Date.now() < givenUpMs; await page.waitForTimeout(50)) {
    const at = Number(await page.evaluate(`seen.at[${JSON.stringify(name)}]`));
    if (at > 0) return at;
  }
  throw new Error(`${name} was never seen`);
}

const CARD = 'li button:has(svg circle)';

/** Runs in the page: tells when pictures were painted, and each key's time to the next paint. */
const WATCH = `
globalThis.seen = {
  at: {},
  keys: [],
  // the second frame comes when the first has been painted
  later(name) {
    if (name in this.at) return;
    this.at[name] = 0;
    requestAnimationFrame(() => requestAnimationFrame(() => (this.at[name] = performance.now())));
  },
};
new MutationObserver(() => {
  const cards = document.querySelectorAll('${CARD}');
  const drawn = [...cards].filter((card) => card.querySelector('path')?.getAttribute('d'));
  if (drawn.length > 0) seen.later('first');
  if (drawn.length > 0 && drawn.length === cards.length) seen.later('all');
}).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['d'] });
new PerformanceObserver((list) => {
  for (const { interactionId, name, duration } of list.getEntries())
    if (interactionId > 0 && name.startsWith('key')) seen.keys.push(duration);
}).observe({ type: 'event', durationThreshold: 16 });
`;
