import { createOutlineStore, type OutlineStore } from '../openings/outline-store.ts';
import type { SolvedUnit } from './solve-unit.ts';

/**
 * What was worked out before and serves again: outlines by shape, bridged units by unit and rule.
 * Belongs to whoever makes plates (the worker, the command, a test); nothing in here depends on a place on a plate.
 */
export interface SolveStore {
  readonly outlines: OutlineStore;
  readonly units: Map<string, SolvedUnit>;
  /** Units bridged, and units taken from the store, since it was made: counted work for tests and bench. */
  solved: number;
  reused: number;
}

/** Above this many entries the oldest half is let go, so that a long session does not grow without end. */
export const MOST_KEPT = 6000;

export function createStore(): SolveStore {
  return { outlines: createOutlineStore(), units: new Map(), solved: 0, reused: 0 };
}

/** Lets go of the oldest half of a map that has grown too large. */
export function trim(map: Map<string, unknown>): void {
  if (map.size <= MOST_KEPT) return;
  let drop = map.size / 2;
  for (const key of map.keys()) {
    if (drop-- <= 0) break;
    map.delete(key);
  }
}
