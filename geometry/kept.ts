/**
 * Three ways to keep what was worked out, so that it serves again. Neither ever changes a result: what is kept was made
 * from nothing but its key, and is never written to afterwards.
 */

/** Kept by a key that says all that the value was made from. */
export interface Kept<V> {
  /** What was kept for the key, if it still fits; else what is made now. */
  once(key: string, make: () => V, fits?: (value: V) => boolean): V;
}

/**
 * Holds values of a weight of about `most` to twice `most`: whenever so much has come in, what was not asked for since
 * the last time is let go. What is asked for again and again stays, however long the session.
 */
export function createKept<V>(most: number, weightOf: (value: V) => number): Kept<V> {
  let now = new Map<string, V>();
  let before = new Map<string, V>();
  let weight = 0;
  return {
    once(key, make, fits = () => true) {
      const known = now.get(key);
      if (known !== undefined && fits(known)) return known;
      const older = before.get(key);
      const value = older !== undefined && fits(older) ? older : make();
      weight += weightOf(value);
      if (weight > most) {
        before = now;
        now = new Map();
        weight = weightOf(value);
      }
      now.set(key, value);
      return value;
    },
  };
}

/** What a map has for a key, which is its youngest entry from then on. */
export function recalled<V>(map: Map<string, V>, key: string): V | undefined {
  const value = map.get(key);
  if (value === undefined) return undefined;
  map.delete(key);
  map.set(key, value);
  return value;
}

/** Lets go of the half of a map that was recalled longest ago, once it holds more than so many. */
export function letGoOldest(map: Map<string, unknown>, most: number): void {
  if (map.size <= most) return;
  let drop = map.size / 2;
  for (const key of map.keys()) {
    if (drop-- <= 0) break;
    map.delete(key);
  }
}

/** The same function, each thing looked at once: its answer is kept as long as the thing itself is in use anywhere. */
export function keptWith<K extends object, V>(work: (of: K) => V): (of: K) => V {
  const answers = new WeakMap<K, V>();
  return (of) => {
    let answer = answers.get(of);
    if (answer === undefined) {
      answer = work(of);
      answers.set(of, answer);
    }
    return answer;
  };
}
