/** Random numbers from a seed (mulberry32, Tommy Ettinger, public domain; from memory): the same on every machine. */
export interface Seeded {
  /** 0 up to 1. */
  next(): number;
  between(low: number, high: number): number;
  /** A whole number from low to high, both included. */
  whole(low: number, high: number): number;
  pick<T>(from: readonly T[]): T;
}

export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (low: number, high: number) => low + (high - low) * next();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const pick = <T>(from: readonly T[]): T => from[whole(0, from.length - 1)]!;
  return { next, between, whole, pick };
}
