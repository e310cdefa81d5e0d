/** The first of `word-1`, `word-2`, ... that none of the things has: the same design gives the same id. */
export function freeId(things: readonly { readonly id: string }[], word: string): string {
  const taken = new Set(things.map((t) => t.id));
  let n = 1;
  while (taken.has(`${word}-${n}`)) n += 1;
  return `${word}-${n}`;
}
