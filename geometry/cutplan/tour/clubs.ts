/** Stands for no club. */
export const LOOSE = -1;

/** Whether a round visits each club in one go. */
export function keepsClubs(clubs: readonly (string | undefined)[], order: readonly number[]): boolean {
  const numbers = new Map<string, number>();
  for (const club of clubs) if (club !== undefined && !numbers.has(club)) numbers.set(club, numbers.size);
  const numberOf = (g: number): number => numbers.get(clubs[g] ?? '') ?? LOOSE;
  return numbers.size < 2 || passages(order, numberOf) <= numbers.size;
}

/** How often one goes from club to club along a round. */
export function passages(order: readonly number[], clubOf: (group: number) => number): number {
  let [first, last, count] = [LOOSE, LOOSE, 0];
  for (const g of order) {
    const club = clubOf(g);
    if (club === LOOSE || club === last) continue;
    if (last === LOOSE) first = club;
    else count++;
    last = club;
  }
  return last === first ? count : count + 1;
}
