import type { SolvedUnit } from './solve-unit.ts';

/** Units already bridged, by unit and rule; nothing in here depends on a place on a plate. */
export interface UnitStore {
  readonly units: Map<string, SolvedUnit>;
  /** Units bridged, and units taken from the store, since it was made: counted work for tests and bench. */
  solved: number;
  reused: number;
}

/** Above this many entries the oldest half is let go, so that a long session does not grow without end. */
const MOST_KEPT = 6000;

/** Lets go of the oldest half of a map that has grown too large. */
export function trim(map: Map<string, unknown>): void {
  if (map.size <= MOST_KEPT) return;
  let drop = map.size / 2;
  for (const key of map.keys()) {
    if (drop-- <= 0) break;
    map.delete(key);
  }
}
