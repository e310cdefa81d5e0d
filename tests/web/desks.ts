import type { OfferNumberParts } from '../../web/state/own/offer-numbers.ts';

/** A browser with a storage of its own, locks that let one in at a time, and chance that is told beforehand. */
export function createDesk(seed: number): OfferNumberParts {
  const kept = new Map<string, string>();
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  } as unknown as Storage;
  let before: Promise<unknown> = Promise.resolve();
  const request = (_: string, work: () => unknown): Promise<unknown> => {
    before = before.then(work);
    return before;
  };
  // A linear congruential generator (Numerical Recipes).
  let state = seed;
  const random = (count: number): Uint8Array =>
    Uint8Array.from({ length: count }, () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return state >>> 24;
    });
  return { storage: () => storage, locks: { request } as unknown as LockManager, random };
}
