import { describe, expect, it } from 'vitest';
import { createLatestWins } from '../../web/worker/latest-wins.ts';

/** A job that ends when told to. */
function gate() {
  let open: () => void = () => undefined;
  const passed = new Promise<void>((resolve) => (open = resolve));
  return { passed, open };
}

/** Lets all that is ready to run, run. */
const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

describe('latest wins', () => {
  it('runs one job at a time and skips all but the newest of those that waited', async () => {
    const gates = new Map([1, 2, 3, 4].map((n) => [n, gate()]));
    const begun: number[] = [];
    let running = 0;
    let mostRunning = 0;
    const queue = createLatestWins<number>(async (job) => {
      begun.push(job);
      mostRunning = Math.max(mostRunning, ++running);
      await gates.get(job)?.passed;
      running -= 1;
    });
    for (const job of [1, 2, 3, 4]) queue.submit(job);
    await settle();
    expect(begun).toEqual([1]);
    gates.get(1)?.open();
    await settle();
    expect(begun).toEqual([1, 4]);
    gates.get(4)?.open();
    await queue.whenIdle();
    expect(begun).toEqual([1, 4]);
    expect(mostRunning).toBe(1);
    expect(queue.idle()).toBe(true);
  });

  it('tells a running job that it is stale, so that its result is dropped', async () => {
    const first = gate();
    const shown: string[] = [];
    const queue = createLatestWins<string>(async (job, stale) => {
      if (job === 'old') await first.passed;
      if (!stale()) shown.push(job);
    });
    queue.submit('old');
    queue.submit('new');
    first.open();
    await queue.whenIdle();
    expect(shown).toEqual(['new']);
  });

  it('is not stale when nothing newer came', async () => {
    const shown: string[] = [];
    const queue = createLatestWins<string>(async (job, stale) => {
      await settle();
      if (!stale()) shown.push(job);
    });
    queue.submit('a');
    await queue.whenIdle();
    queue.submit('b');
    await queue.whenIdle();
    expect(shown).toEqual(['a', 'b']);
  });

  it('goes on after a job that throws', async () => {
    const done: string[] = [];
    const queue = createLatestWins<string>(async (job) => {
      await settle();
      if (job === 'bad') throw new Error('broken');
      done.push(job);
    });
    queue.submit('bad');
    queue.submit('good');
    await queue.whenIdle();
    queue.submit('better');
    await queue.whenIdle();
    expect(done).toEqual(['good', 'better']);
  });
});
