import { describe, expect, it, vi } from 'vitest';
import { createWorkMark } from '../../../web/state/work-mark.ts';

function storage(): Storage {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  } as unknown as Storage;
}

describe('the mark of work that has begun', () => {
  it('is found by the next visit when the page ended over the work, and only for that design', () => {
    const there = storage();
    createWorkMark(
      () => there,
      () => 'a',
    ).begin();
    const next = createWorkMark(
      () => there,
      () => 'a',
    );
    expect(next.found()).toBe(true);
    expect(
      createWorkMark(
        () => there,
        () => 'b',
      ).found(),
    ).toBe(false);
    next.forget();
    expect(next.found()).toBe(false);
  });

  it('is no obstacle for the visit that set it, and goes a while after the work, when it has been painted', () => {
    vi.useFakeTimers();
    const there = storage();
    const mark = createWorkMark(
      () => there,
      () => 'a',
    );
    mark.begin();
    expect(mark.found()).toBe(false);
    mark.end();
    expect(
      createWorkMark(
        () => there,
        () => 'a',
      ).found(),
    ).toBe(true);
    vi.advanceTimersByTime(1100);
    expect(
      createWorkMark(
        () => there,
        () => 'a',
      ).found(),
    ).toBe(false);
    vi.useRealTimers();
  });

  it('is taken away by a page that is closed as usual, unless the work had given no sign for a while', () => {
    const there = storage();
    const found = (): boolean =>
      createWorkMark(
        () => there,
        () => 'a',
      ).found();
    const mark = createWorkMark(
      () => there,
      () => 'a',
    );
    mark.begin();
    mark.leave(0.5);
    expect(found()).toBe(false);
    mark.begin();
    mark.leave(12);
    expect(found()).toBe(true);
  });

  it('stops nothing where storage is shut', () => {
    const mark = createWorkMark(
      () => {
        throw new Error('shut');
      },
      () => 'a',
    );
    mark.begin();
    mark.end();
    mark.leave(0);
    expect(mark.found()).toBe(false);
  });
});
