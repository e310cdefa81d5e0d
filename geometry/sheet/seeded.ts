/**
 * Numbers from 0 to below 1 that look like chance and are the same each time (Weyl sequence through the 32-bit finaliser
 * of MurmurHash3, which is in the public domain). Searches begin from them; nothing else of the kernel may.
 */
export function seeded(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let x = state ^ (state >>> 16);
    x = Math.imul(x, 0x85ebca6b);
    x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
    return ((x ^ (x >>> 16)) >>> 0) / 2 ** 32;
  };
}
