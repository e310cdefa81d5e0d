import type { Cache } from '../../geometry/cache.ts';
import type { SolveStore } from '../../geometry/pipeline/solve-store.ts';

const MOST_KEYS = 50_000;

/**
 * The same store, which tells whenever work turns to another element, letter or proof: whoever makes plates asks it at
 * each step. told gets the id of the element, where that is known.
 */
export function watchStore(store: SolveStore, told: (elementId: string | undefined) => void): SolveStore {
  const elementOf = new Map<string, string>();

  function watch<V>(cache: Cache<V>, whose: (key: string) => string | undefined): Cache<V> {
    return {
      ...cache,
      get(key) {
        told(whose(key));
        return cache.get(key);
      },
      getOrMake(key, make, fits) {
        told(whose(key));
        return cache.getOrMake(key, make, fits);
      },
    };
  }

  const whoseUnit = (key: string): string | undefined => elementOf.get(firstShape(key.slice(key.indexOf('#') + 1)));
  const layouts = watch(store.layouts, (key) => /"id":"([^"]+)"/.exec(key)?.[1]);
  return {
    ...store,
    layouts: {
      ...layouts,
      getOrMake(key, make, fits) {
        const laid = layouts.getOrMake(key, make, fits);
        if (elementOf.size > MOST_KEYS) elementOf.clear();
        for (const { storeKey, elementId } of laid.shapes) elementOf.set(firstShape(storeKey), elementId);
        return laid;
      },
    },
    outlines: { ...store.outlines, regions: watch(store.outlines.regions, whoseUnit) },
    units: watch(store.units, whoseUnit),
    proofs: watch(store.proofs, whoseUnit),
  };
}

/** Keys of units begin with that of their first shape, up to where it stands and what was done by hand. */
function firstShape(key: string): string {
  return /^[^@+!]*/.exec(key)?.[0] ?? key;
}
