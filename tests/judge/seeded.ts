import { seededRandom } from '../../web/barrel/painting/seeded.ts';

/** Random numbers from a seed, the same on every machine. */
export interface Seeded {
  /** 0 up to 1. */
  next(): number;
  between(low: number, high: number): number;
  /** A whole number from low to high, both included. */
  whole(low: number, high: number): number;
  pick<T>(from: readonly T[]): T;
}

export function seeded(seed: number): Seeded {
  const next = seededRandom(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const pick = <T>(from: readonly T[]): T => from[whole(0, from.length - 1)]!;
  return { next, between, whole, pick };
}
