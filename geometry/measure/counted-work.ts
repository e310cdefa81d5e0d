/**
 * Work that is counted while it is done and given up when there is too much of it. Counted, not timed: the same input
 * is refused on every machine. A step is about what one edge costs in one line of a sweep: some 20 to 100 ns.
 */

/** Thrown out of the middle of work that has used up its steps; only doWithin catches it. */
class TooMuchWork extends Error {}

/** Steps left. Libraries call back into spend() and can be handed nothing, so it stands here and not in a parameter. */
let left = Infinity;

/** Tells that so many steps are done now; ends the work around it when that was too many. */
export function spend(steps: number): void {
  left -= steps;
  if (left < 0) throw new TooMuchWork('too much work');
}

/** True when the work in hand has used up its steps: for whoever caught what spend() threw. */
export function isSpent(): boolean {
  return left < 0;
}

/** Does the work; undefined when it needs more steps than `most`. Work inside other such work also counts there. */
export function doWithin<T>(most: number, work: () => T): T | undefined {
  const outer = left;
  const given = Math.min(most, outer);
  left = given;
  try {
    return work();
  } catch (error) {
    if (!(error instanceof TooMuchWork) || outer <= most) throw error;
    return undefined;
  } finally {
    left = outer - (given - left);
    if (outer === Infinity) left = Infinity;
  }
}

/** The same, and how many steps it took: for tests and figures. */
export function countSteps<T>(work: () => T): { readonly result: T; readonly steps: number } {
  const outer = left;
  left = Number.MAX_SAFE_INTEGER;
  try {
    const result = work();
    return { result, steps: Number.MAX_SAFE_INTEGER - left };
  } finally {
    left = outer;
  }
}
