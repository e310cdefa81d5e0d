import type { UnitStore } from '../bridges/unit-store.ts';
import type { ProofStore } from '../checks/prove-units.ts';
import { createKept, letGoOldest } from '../kept.ts';
import type { LayoutStore } from '../layout/lay-out.ts';
import { createOutlineStore, type OutlineStore } from '../openings/outline-store.ts';

/**
 * What was worked out before and serves again. Belongs to whoever makes plates (the worker, the command, a test).
 *
 * - layouts: elements on a plate, by element, radius and rules. What is no longer asked for is let go in time.
 * - outlines: flattened and united, by the shape's key.
 * - units, proofs: bridged units and their proofs, by unit, rule, manner and edits. These three know no place on a
 *   plate and are trimmed, oldest first, when they are too many.
 *
 * An element laid out before gives the very same shapes again. Whatever is worked out for things in their places
 * (placed rings and boxes, units, openings, bridges, gaps between two openings) hangs weakly on those objects, is found
 * again by them, and is gone when the layout is. So a keystroke does anew what stands elsewhere than before, no more.
 */
export interface SolveStore extends UnitStore {
  readonly layouts: LayoutStore;
  readonly outlines: OutlineStore;
  readonly proofs: ProofStore;
  readonly most: StoreLimits;
}

export interface StoreLimits {
  /** Shapes whose layouts are kept. */
  readonly shapes: number;
  /** Bridged units, and as many proofs and outlines. */
  readonly units: number;
}

/** A dozen full plates; a bridged unit with what hangs on it takes about a tenth of a megabyte. */
const USUAL: StoreLimits = { shapes: 4000, units: 6000 };

/** most: less for whoever makes one design after another and looks back at none. */
export function createStore(most = USUAL): SolveStore {
  return {
    most,
    layouts: createKept(most.shapes, (laid) => 1 + laid.shapes.length),
    outlines: createOutlineStore(),
    units: new Map(),
    proofs: new Map(),
    solved: 0,
    reused: 0,
  };
}

/** Lets go of what was not used for longest when there is too much; to be called between plates. */
export function trimStore({ outlines, units, proofs, most }: SolveStore): void {
  letGoOldest(outlines.regions, most.units);
  letGoOldest(units, most.units);
  letGoOldest(proofs, most.units);
}
