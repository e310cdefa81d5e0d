/**
 * Two ways to keep what was worked out: by a key, with a limit; and by an object, as long as that is in use anywhere.
 * Neither changes a result: a cached value is made from nothing but its key, and is never written to afterwards.
 */

/** Values by a key that says all they were made from. */
export interface Cache<V> {
  get(key: string): V | undefined;
  set(key: string, value: V): void;
  delete(key: string): void;
  /** The value of the key if there is one that fits; else one is made, and kept. */
  getOrMake(key: string, make: () => V, fits?: (value: V) => boolean): V;
}

/**
 * Holds values of a weight of about `most` to twice `most`. Whenever so much has come in, it evicts what was not asked
 * for since the last time. What is asked for again and again stays, however long the session.
 */
export function createCache<V>(most: number, weightOf: (value: V) => number = () => 1): Cache<V> {
  let young = new Map<string, V>();
  let old = new Map<string, V>();
  let weight = 0;

  function get(key: string): V | undefined {
    const known = young.get(key);
    if (known !== undefined) return known;
    const older = old.get(key);
    if (older !== undefined) set(key, older);
    return older;
  }

  function set(key: string, value: V): void {
    weight += weightOf(value);
    if (weight > most) {
      old = young;
      young = new Map();
      weight = weightOf(value);
    }
    young.set(key, value);
  }

  return {
    get,
    set,
    delete(key) {
      young.delete(key);
      old.delete(key);
    },
    getOrMake(key, make, fits = () => true) {
      const known = get(key);
      if (known !== undefined && fits(known)) return known;
      const value = make();
      set(key, value);
      return value;
    },
  };
}

/** The same function, run once for each object; keyOf: the object that stands for it, where it is not the argument. */
export function memoize<K extends object, V>(work: (of: K) => V, keyOf: (of: K) => object = (of) => of): (of: K) => V {
  const values = new WeakMap<object, V>();
  return (of) => {
    const key = keyOf(of);
    let value = values.get(key);
    if (value === undefined) {
      value = work(of);
      values.set(key, value);
    }
    return value;
  };
}
