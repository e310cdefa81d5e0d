import { trim, type UnitStore } from './bridges/unit-store.ts';
import type { ProofStore } from './checks/prove-units.ts';
import { createOutlineStore, type OutlineStore } from './openings/outline-store.ts';

/**
 * What was worked out before and serves again: outlines by shape, bridged units and their proofs by unit
 * and rule.
 * Belongs to whoever makes plates (the worker, the command, a test).
 */
export interface SolveStore extends UnitStore {
  readonly outlines: OutlineStore;
  readonly proofs: ProofStore;
}

export function createStore(): SolveStore {
  return { outlines: createOutlineStore(), units: new Map(), proofs: new Map(), solved: 0, reused: 0 };
}

/** Lets go of the oldest entries when there are too many; to be called between plates. */
export function trimStore(store: SolveStore): void {
  trim(store.outlines.regions);
  trim(store.units);
  trim(store.proofs);
}
