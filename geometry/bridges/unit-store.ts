import type { Cache } from '../cache.ts';
import type { SolvedUnit } from './solved-unit.ts';

/** Units already bridged, by unit and rule; nothing in here depends on a place on a plate. */
export interface UnitStore {
  readonly units: Cache<SolvedUnit>;
  /** Units bridged, and units taken from the store, since it was made: counted work for tests and bench. */
  solved: number;
  reused: number;
}
