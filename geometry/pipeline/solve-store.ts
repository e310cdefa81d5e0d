import type { UnitStore } from '../bridges/unit-store.ts';
import type { ProofStore } from '../checks/prove-units.ts';
import { createCache } from '../cache.ts';
import type { LayoutStore } from '../layout/lay-out.ts';
import { createOutlineStore, type OutlineStore } from '../openings/outline-store.ts';

/**
 * What was worked out before and serves again. Belongs to whoever makes plates (the worker, the command, a test).
 *
 * - layouts: elements on a plate, by element, radius and rules.
 * - outlines: flattened and united, by the shape's key.
 * - units, proofs: bridged units and their proofs, by unit, rule, manner and edits.
 *
 * What is no longer asked for is evicted in time. Only layouts know a place on a plate.
 *
 * An element laid out before gives the very same shapes again. Whatever is worked out for things in their places
 * (placed rings and boxes, units, openings, bridges, gaps between two openings) hangs weakly on those objects, is found
 * again by them, and is gone when the layout is. So a keystroke does anew what stands elsewhere than before, no more.
 */
export interface SolveStore extends UnitStore {
  readonly layouts: LayoutStore;
  readonly outlines: OutlineStore;
  readonly proofs: ProofStore;
}

export interface StoreLimits {
  /** Shapes whose layouts are held, at least. */
  readonly shapes: number;
  /** Bridged units, and as many proofs and outlines, at most. */
  readonly units: number;
}

/** A dozen full plates; a bridged unit with what hangs on it takes about a tenth of a megabyte. */
const USUAL: StoreLimits = { shapes: 4000, units: 6000 };

/** most: less for whoever makes one design after another and looks back at none. */
export function createStore(most = USUAL): SolveStore {
  return {
    layouts: createCache(most.shapes, (laid) => 1 + laid.shapes.length),
    outlines: createOutlineStore(most.units / 2),
    units: createCache(most.units / 2),
    proofs: createCache(most.units / 2),
    solved: 0,
    reused: 0,
  };
}
