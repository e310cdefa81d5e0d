import type ClipperLib from 'clipper-lib';
import { isSpent, spend } from '../measure/counted-work.ts';

/** What of the library's inside is looked at, to count what it does. */
interface Inside {
  m_ActiveEdges: { NextInAEL: Inside['m_ActiveEdges'] } | null;
  /** Ours: lowest points put in their places so far. */
  lowest?: number;
  m_PolyOuts: readonly unknown[];
}

type Method = (this: Inside, ...args: unknown[]) => unknown;

/** Lines of the sweep are looked at one in so many: counting shall not cost what it counts. */
const EVERY = 8;
/** A crossing makes and sorts several records. */
const CROSSING = 8;

/**
 * Lets the library tell what it does (counted-work.ts), so that a drawing of a million crossings ends with a sentence.
 * Its own errors are thrown: as it comes, it would show them in a window of the browser and go on.
 */
export function countClipper(library: typeof ClipperLib): void {
  (library as unknown as { Error: (message: string) => never }).Error = (message) => {
    throw new Error(message);
  };
  const methods = library.Clipper.prototype as unknown as Record<string, Method>;
  const around = (name: string, cost: (self: Inside) => number): void => {
    const inner = methods[name]!;
    methods[name] = function (...args) {
      spend(cost(this));
      return inner.apply(this, args);
    };
  };
  let line = 0;
  around('ProcessIntersections', (self) => (++line % EVERY === 0 ? EVERY * activeEdges(self) : 1));
  around('IntersectPoint', () => CROSSING);
  for (const name of ['FixupFirstLefts1', 'FixupFirstLefts2', 'FixupFirstLefts3'])
    around(name, (self) => self.m_PolyOuts.length);
  // Each lowest point is put in its place along a list of those before it.
  around('InsertLocalMinima', (self) => (self.lowest = (self.lowest ?? 0) + 1) / 32);
  const crossings = methods['ProcessIntersections']!;
  methods['ProcessIntersections'] = function (...args) {
    try {
      return crossings.apply(this, args);
    } catch (error) {
      // The library caught what spend() threw and told of an error of its own.
      if (isSpent()) spend(0);
      throw error;
    }
  };
}

function activeEdges(self: Inside): number {
  let count = 1;
  for (let edge = self.m_ActiveEdges; edge !== null; edge = edge.NextInAEL) count++;
  return count;
}
