import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSaver, readAside, readSaved, setAside, type Keep, type SavingState } from '../../web/state/saving.ts';

/** A browser's store in memory; fails as long as `fault` is set. */
class FakeKeep implements Keep {
  readonly values = new Map<string, unknown>();
  readonly writes: unknown[] = [];
  fault: Error | undefined;

  get(key: string): Promise<unknown> {
    return this.fault === undefined ? Promise.resolve(this.values.get(key)) : Promise.reject(this.fault);
  }

  set(key: string, value: unknown): Promise<void> {
    if (this.fault !== undefined) return Promise.reject(this.fault);
    this.values.set(key, value);
    this.writes.push(value);
    return Promise.resolve();
  }
}

const full = (): Error => new DOMException('no room', 'QuotaExceededError');

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

describe('saving', () => {
  it('saves the newest of quick changes within 300 ms, once', async () => {
    const keep = new FakeKeep();
    const told: SavingState[] = [];
    const saver = createSaver(keep, (s) => told.push(s));
    for (const text of ['a', 'ab', 'abc']) saver.schedule(text);
    await vi.advanceTimersByTimeAsync(300);
    expect(keep.writes).toEqual(['abc']);
    expect(told.at(-1)).toBe('saved');
    expect(await readSaved(keep)).toBe('abc');
  });

  it('saves at once when the page is left', async () => {
    const keep = new FakeKeep();
    const saver = createSaver(keep, () => undefined);
    saver.schedule('last words');
    await saver.flush();
    expect(keep.writes).toEqual(['last words']);
    await vi.advanceTimersByTimeAsync(1000);
    expect(keep.writes).toEqual(['last words']);
  });

  it('says full or shut and goes on, and saves again when there is room', async () => {
    const keep = new FakeKeep();
    const told: SavingState[] = [];
    const saver = createSaver(keep, (s) => told.push(s));
    keep.fault = full();
    saver.schedule('one');
    await vi.advanceTimersByTimeAsync(300);
    expect(told.at(-1)).toBe('full');
    keep.fault = new Error('storage is switched off');
    saver.schedule('two');
    await vi.advanceTimersByTimeAsync(300);
    expect(told.at(-1)).toBe('shut');
    keep.fault = undefined;
    saver.schedule('three');
    await vi.advanceTimersByTimeAsync(300);
    expect(told.at(-1)).toBe('saved');
    expect(keep.writes).toEqual(['three']);
  });

  it('never lets an older text land on a newer one', async () => {
    const keep = new FakeKeep();
    let finish: (() => void) | undefined;
    const slow: Keep = {
      get: (key) => keep.get(key),
      set: async (key, value) => {
        if (value === 'old') await new Promise<void>((resolve) => (finish = resolve));
        await keep.set(key, value);
      },
    };
    const saver = createSaver(slow, () => undefined);
    saver.schedule('old');
    const first = saver.flush();
    await vi.advanceTimersByTimeAsync(0);
    saver.schedule('new');
    const second = saver.flush();
    await vi.advanceTimersByTimeAsync(0);
    finish?.();
    await Promise.all([first, second]);
    expect(keep.writes).toEqual(['old', 'new']);
  });

  it('reads nothing from a store that fails', async () => {
    const keep = new FakeKeep();
    keep.fault = full();
    expect(await readSaved(keep)).toBeUndefined();
  });
});

describe('a damaged entry', () => {
  it('is set aside beside earlier ones, each once, and survives later saves', async () => {
    const keep = new FakeKeep();
    expect(await setAside(keep, '{"broken')).toBe(true);
    expect(await setAside(keep, '{"broken')).toBe(true);
    expect(await setAside(keep, 'other')).toBe(true);
    const saver = createSaver(keep, () => undefined);
    saver.schedule('fresh');
    await saver.flush();
    expect(await readAside(keep)).toEqual(['{"broken', 'other']);
  });

  it('is reported when it cannot be set aside', async () => {
    const keep = new FakeKeep();
    keep.fault = full();
    expect(await setAside(keep, 'x')).toBe(false);
  });
});
