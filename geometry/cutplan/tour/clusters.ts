/** Stands for no cluster. */
export const LOOSE = -1;

/** Whether a round visits each cluster in one go. */
export function keepsClusters(clusters: readonly (string | undefined)[], sequence: readonly number[]): boolean {
  const numbers = new Map<string, number>();
  for (const cluster of clusters)
    if (cluster !== undefined && !numbers.has(cluster)) numbers.set(cluster, numbers.size);
  const numberOf = (g: number): number => numbers.get(clusters[g] ?? '') ?? LOOSE;
  return numbers.size < 2 || countPassages(sequence, numberOf) <= numbers.size;
}

/** How often one goes from cluster to cluster along a round. */
export function countPassages(sequence: readonly number[], clusterOf: (group: number) => number): number {
  let [first, last, count] = [LOOSE, LOOSE, 0];
  for (const g of sequence) {
    const cluster = clusterOf(g);
    if (cluster === LOOSE || cluster === last) continue;
    if (last === LOOSE) first = cluster;
    else count++;
    last = cluster;
  }
  return last === first ? count : count + 1;
}
