import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSaver, type SavingState } from '../../../web/state/saving.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const full = (): Error => new DOMException('no room', 'QuotaExceededError');

describe('saving', () => {
  it('saves quick changes once, within 300 ms', async () => {
    const save = vi.fn(() => Promise.resolve());
    const told: SavingState[] = [];
    const saver = createSaver(save, (s) => told.push(s));
    for (let i = 0; i < 3; i++) saver.schedule();
    await vi.advanceTimersByTimeAsync(300);
    expect(save).toHaveBeenCalledTimes(1);
    expect(told.at(-1)).toBe('saved');
  });

  it('saves somebody who never pauses: at least every 300 ms', async () => {
    const times: number[] = [];
    const saver = createSaver(
      () => Promise.resolve(void times.push(Date.now())),
      () => undefined,
    );
    const start = Date.now();
    for (let ms = 0; ms < 3000; ms += 50) {
      saver.schedule();
      await vi.advanceTimersByTimeAsync(50);
    }
    const gaps = [start, ...times].slice(1).map((at, i) => at - ([start, ...times][i] ?? 0));
    expect(times.length).toBeGreaterThan(8);
    expect(Math.max(...gaps)).toBeLessThanOrEqual(300);
  });

  it('saves at once when the page is left, and not again', async () => {
    const save = vi.fn(() => Promise.resolve());
    const saver = createSaver(save, () => undefined);
    saver.schedule();
    await saver.flush();
    await vi.advanceTimersByTimeAsync(1000);
    expect(save).toHaveBeenCalledTimes(1);
  });

  it('says full or shut and goes on, and saves again when there is room', async () => {
    let fault: Error | undefined;
    const told: SavingState[] = [];
    const saver = createSaver(
      () => (fault ? Promise.reject(fault) : Promise.resolve()),
      (s) => told.push(s),
    );
    for (const [next, wanted] of [
      [full(), 'full'],
      [new Error('storage is switched off'), 'shut'],
      [undefined, 'saved'],
    ] as const) {
      fault = next;
      saver.schedule();
      await vi.advanceTimersByTimeAsync(300);
      expect(told.at(-1)).toBe(wanted);
    }
  });

  it('keeps what could not be saved for the next flush', async () => {
    let saved = 0;
    let fault: Error | undefined = full();
    const saver = createSaver(
      () => (fault ? Promise.reject(fault) : Promise.resolve(void saved++)),
      () => undefined,
    );
    saver.schedule();
    await saver.flush();
    fault = undefined;
    await saver.flush();
    expect(saved).toBe(1);
  });

  it('never writes twice at the same time', async () => {
    let [running, most] = [0, 0];
    const saver = createSaver(
      async () => {
        most = Math.max(most, ++running);
        await new Promise((resolve) => setTimeout(resolve, 500));
        running--;
      },
      () => undefined,
    );
    for (let i = 0; i < 6; i++) {
      saver.schedule();
      void saver.flush();
      await vi.advanceTimersByTimeAsync(100);
    }
    await vi.advanceTimersByTimeAsync(5000);
    expect(most).toBe(1);
  });
});
