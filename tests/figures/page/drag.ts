import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { chromium, type CDPSession, type Page } from '@playwright/test';

/** What dragging one text of the demo head over the stage came to, counted in the browser. */
export interface DragMeasured {
  /** Frames a second while the hand moves, by the clock on the wall. */
  readonly framesPerSecond: number;
  /** Time of the page's main thread for one frame of the drag: half of all frames take less. */
  readonly frameMs: number;
  /** Its tasks that took longer than 50 ms of its own time, from taking hold to the true plate; longest first. */
  readonly longTasksMs: readonly number[];
  readonly longestTaskMs: number;
}

const LONG_MS = 50;
const FRAMES = 180;
const PORT = 4780;

/**
 * Drags with a hand that moves at each frame. Undefined where there is no browser. Tasks are measured by the time the
 * thread itself ran (the tracing of the browser's own tools), so that other work on the machine does not count.
 */
export async function measureDrag(): Promise<DragMeasured | undefined> {
  const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
  if (!existsSync(executablePath)) return undefined;
  const { address, end } = await servePage();
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(address);
    // Past the pictures of the beginnings, which a first visit draws: they are no part of a drag.
    await page.getByRole('button', { name: /What shall it say/ }).click();
    await page.waitForFunction(() => !document.querySelector('[data-busy]'), undefined, { timeout: 120_000 });
    return await dragOn(page, FRAMES);
  } finally {
    await browser.close();
    end();
  }
}

/** The server that `npm start` gives a user, on a port of its own; it builds the page when that is stale. */
async function servePage(): Promise<{ readonly address: string; readonly end: () => void }> {
  const start = fileURLToPath(new URL('../../../web/serve/start.mjs', import.meta.url));
  const server = spawn(process.execPath, [start, '--port', String(PORT)], { stdio: ['ignore', 'pipe', 'inherit'] });
  for await (const line of createInterface({ input: server.stdout })) {
    const address = /http:\S+/.exec(line)?.[0];
    if (address !== undefined) return { address, end: () => server.kill() };
  }
  throw new Error('the page could not be served');
}

/** The same on a page that is open and at rest. */
export async function dragOn(page: Page, frames: number): Promise<DragMeasured> {
  await page.locator('[data-plate-stage]').focus();
  // The first ring text from the rim in; what was chosen has its own picture, so that this is not part of the drag.
  for (let i = 0; i < 2; i++) await page.keyboard.press('Tab');
  await page.waitForTimeout(1500);
  // The runner (tsx) names inner functions by a helper that a page does not have.
  await page.evaluate('globalThis.__name ??= (f) => f');
  const session = await page.context().newCDPSession(page);
  const events = await traced(session, async () => {
    await page.evaluate(hand, { frames });
    await page.waitForFunction(() => !document.querySelector('[data-dragging], [data-busy]'), undefined, {
      timeout: 60_000,
    });
    await page.waitForTimeout(500);
  });
  const times = await page.evaluate(() => (window as unknown as { dragFrames: number[] }).dragFrames);
  const tasks = mainTasks(events);
  const moved = tasks.filter((task) => task.moved).map((task) => task.ms);
  const long = tasks.map((task) => task.ms).filter((ms) => ms > LONG_MS);
  const seconds = ((times.at(-1) ?? 0) - (times[0] ?? 0)) / 1000;
  return {
    framesPerSecond: (times.length - 1) / seconds,
    frameMs: moved.sort((a, b) => a - b)[Math.floor(moved.length / 2)] ?? NaN,
    longTasksMs: long.sort((a, b) => b - a),
    longestTaskMs: Math.max(0, ...tasks.map((task) => task.ms)),
  };
}

/** Runs in the page: takes hold of the chosen ring text at the top, and moves with each frame. */
function hand({ frames }: { readonly frames: number }): Promise<void> {
  const stage = document.querySelector<HTMLElement>('[data-plate-stage]');
  if (!stage) throw new Error('no stage');
  // A pointer that is no real one can't be captured; nothing else of the page is touched.
  stage.setPointerCapture = () => undefined;
  const box = stage.getBoundingClientRect();
  const [cx, cy] = [box.left + box.width / 2, box.top + box.height / 2];
  const plate = Math.min(box.width, box.height) / 2 - 34;
  const radius = (plate / 1.045 / 1.115) * 0.75;
  const send = (type: string, deg: number) => {
    const rad = (deg * Math.PI) / 180;
    const at = { clientX: cx + radius * Math.sin(rad), clientY: cy - radius * Math.cos(rad) };
    const init = { ...at, pointerId: 1, pointerType: 'mouse', button: 0, buttons: 1, bubbles: true, cancelable: true };
    stage.dispatchEvent(new PointerEvent(type, init));
  };
  const times: number[] = [];
  (window as unknown as { dragFrames: number[] }).dragFrames = times;
  return new Promise((resolve) => {
    let n = 0;
    send('pointerdown', 0);
    const step = (now: number) => {
      performance.mark('hand-moves');
      times.push(now);
      n += 1;
      send('pointermove', 40 * Math.sin(n / 20) + n / 9);
      if (n < frames) requestAnimationFrame(step);
      else {
        send('pointerup', 0);
        resolve();
      }
    };
    requestAnimationFrame(step);
  });
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  /** Time that the thread itself ran, in millionths of a second. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

async function traced(session: CDPSession, work: () => Promise<void>): Promise<readonly TraceEvent[]> {
  const events: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: {
      includedCategories: ['__metadata', 'toplevel', 'disabled-by-default-devtools.timeline', 'blink.user_timing'],
    },
  });
  await work();
  const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.end');
  await complete;
  return events;
}

/** Tasks of the thread on which the hand moved, in ms of its own time. */
function mainTasks(events: readonly TraceEvent[]): { readonly ms: number; readonly moved: boolean }[] {
  const marks = events.filter((e) => e.name === 'hand-moves');
  const [first] = marks;
  if (!first) throw new Error('the browser traced nothing of the drag');
  const mine = events.filter((e) => e.name === 'RunTask' && e.pid === first.pid && e.tid === first.tid);
  return mine.map((task) => ({
    ms: (task.tdur ?? task.dur ?? 0) / 1000,
    moved: marks.some((m) => m.ts >= task.ts && m.ts <= task.ts + (task.dur ?? 0)),
  }));
}
