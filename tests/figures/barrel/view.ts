import { once, rounded, type Claim } from '../claim.ts';
import { NO_BROWSER } from '../page/serve-page.ts';
import { held, openBarrel, pickState, shown, showsOther, visit, withPage } from './open-barrel.ts';

const MOST_MS = 2000;
const VISITS = 3;
const EDITS = 50;

const opened = once(() =>
  withPage(4791, async (served) => {
    const times: number[] = [];
    let busyMs = Infinity;
    const system = await served.browser.newBrowserCDPSession();
    const busy = async () => {
      const { processInfo } = await system.send('SystemInfo.getProcessInfo');
      return processInfo.reduce((sum, { cpuTime }) => sum + cpuTime * 1000, 0);
    };
    for (let i = 0; i < VISITS; i++) {
      const page = await visit(served);
      const before = await busy();
      times.push(await openBarrel(page));
      busyMs = Math.min(busyMs, (await busy()) - before);
      await page.context().close();
    }
    return { times, busyMs };
  }),
);

/** Texts typed one after the other, half of them while the plate is shown and half while its mark is. */
const edited = once(() =>
  withPage(4792, async (served) => {
    const page = await visit(served);
    await openBarrel(page);
    const field = page.getByRole('textbox', { name: 'Ring text, top' });
    const text = await field.inputValue();
    let shows = await shown(page);
    const now = async (work: () => Promise<void>) => {
      await work();
      shows = await showsOther(page, shows);
    };
    await now(() => pickState(page, 'Painted'));
    await now(() => pickState(page, 'Plate in place'));
    const before = await held(page);
    for (let i = 1; i <= EDITS; i++) {
      if (i === EDITS / 2) await now(() => pickState(page, 'Painted'));
      await now(() => field.fill(`NUMBER ${i}`));
    }
    await now(() => field.fill(text));
    await now(() => pickState(page, 'Plate in place'));
    return { before, after: await held(page) };
  }),
);

/** The barrel in three dimensions: how soon it is there, and what it keeps. */
export const VIEW_CLAIMS: readonly Claim[] = [
  {
    name: 'view-opens',
    wanted: `within ${MOST_MS} ms of the press in software WebGL; the best of ${VISITS} visits, each with nothing kept from the last`,
    timed: true,
    async measure() {
      const found = await opened();
      if (!found) return NO_BROWSER;
      const { times, busyMs } = found;
      const best = Math.min(...times);
      return {
        value: rounded(best),
        unit: `ms of ${times.map((ms) => rounded(ms)).join(', ')}; all of the browser's processes worked ${rounded(busyMs)} ms for it`,
        ok: best <= MOST_MS,
      };
    },
  },
  {
    name: 'view-memory',
    wanted: `geometries/textures after ${EDITS} edits as many as before`,
    async measure() {
      const counts = await edited();
      if (!counts) return NO_BROWSER;
      return { value: counts.after, unit: `after, ${counts.before} before`, ok: counts.after === counts.before };
    },
  },
];
