/** Members of two lists that are the same one, before and after. */
export interface Pairs<T> {
  readonly both: readonly (readonly [before: T, after: T])[];
  readonly gone: readonly T[];
  readonly come: readonly T[];
  /** Those that are in both lists follow each other otherwise. */
  readonly reordered: boolean;
}

/**
 * Pairs by id; what is left on both sides by what it is (asCut), since ids may be given anew without anything being
 * cut otherwise.
 */
export function pairUp<T extends { readonly id: string }>(
  before: readonly T[],
  after: readonly T[],
  asCut: (member: T) => string,
): Pairs<T> {
  const byId = new Map(before.map((m) => [m.id, m]));
  const partner = new Map<T, T>();
  for (const member of after) {
    const was = byId.get(member.id);
    if (was) partner.set(member, was);
  }
  const free = new Set(before.filter((m) => !after.some((a) => a.id === m.id)));
  for (const member of after) {
    if (partner.has(member)) continue;
    const was = [...free].find((m) => asCut(m) === asCut(member));
    if (!was) continue;
    partner.set(member, was);
    free.delete(was);
  }
  const both = after.flatMap((m) => {
    const was = partner.get(m);
    return was ? [[was, m] as const] : [];
  });
  const places = both.map(([was]) => before.indexOf(was));
  return {
    both,
    gone: [...free],
    come: after.filter((m) => !partner.has(m)),
    reordered: places.some((place, i) => place < (places[i - 1] ?? -1)),
  };
}
