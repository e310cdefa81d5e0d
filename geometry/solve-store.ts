import { trim, type UnitStore } from './bridges/unit-store.ts';
import type { ProofStore } from './checks/prove-units.ts';
import { createKept } from './kept.ts';
import type { LayoutStore } from './layout/lay-out.ts';
import { createOutlineStore, type OutlineStore } from './openings/outline-store.ts';

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
}

/** Shapes whose layouts are kept: a dozen full plates; some tens of megabytes with all that hangs on them. */
const MOST_SHAPES = 4000;

/** mostShapes: fewer for whoever makes one design after another and looks back at none. */
export function createStore(mostShapes = MOST_SHAPES): SolveStore {
  return {
    layouts: createKept(mostShapes, (laid) => 1 + laid.shapes.length),
    outlines: createOutlineStore(),
    units: new Map(),
    proofs: new Map(),
    solved: 0,
    reused: 0,
  };
}

/** Lets go of the oldest entries when there are too many; to be called between plates. */
export function trimStore(store: SolveStore): void {
  trim(store.outlines.regions);
  trim(store.units);
  trim(store.proofs);
}
