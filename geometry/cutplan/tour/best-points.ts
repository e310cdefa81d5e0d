/** From a point of one group to a point of the next, all by number. */
export type GapOf = (from: number, fromPoint: number, to: number, toPoint: number) => number;

/**
 * For a given sequence, round, the best points of all groups (given by how many each has) together: the shortest way through layers, from each point of
 * the smallest group. The gap may differ by direction.
 */
export function chooseBestPoints(sizes: readonly number[], sequence: readonly number[], gap: GapOf): number[] {
  const n = sequence.length;
  const taken = sizes.map(() => 0);
  if (n < 2) return taken;
  const sizeOf = (at: number) => sizes[sequence[at]!]!;
  let first = 0;
  for (let at = 1; at < n; at++) if (sizeOf(at) < sizeOf(first)) first = at;
  const ring = [...sequence.slice(first), ...sequence.slice(0, first)];
  const gaps = ring.map((g, k) => {
    const next = ring[(k + 1) % n]!;
    return range(sizes[g]!).map((i) => range(sizes[next]!).map((j) => gap(g, i, next, j)));
  });
  let best = Infinity;
  for (const start of range(sizes[ring[0]!]!)) {
    const { mm, path } = throughLayers(gaps, start);
    if (mm >= best) continue;
    best = mm;
    ring.forEach((g, k) => (taken[g] = path[k]!));
  }
  return taken;
}

function throughLayers(
  gaps: readonly (readonly (readonly number[])[])[],
  start: number,
): { mm: number; path: number[] } {
  let cost = gaps[0]!.map((_, i) => (i === start ? 0 : Infinity));
  const froms: number[][] = [];
  for (const layer of gaps) {
    const into = layer[0]!.map(() => Infinity);
    const from = layer[0]!.map(() => 0);
    for (let i = 0; i < layer.length; i++) {
      if (cost[i] === Infinity) continue;
      const row = layer[i]!;
      for (let j = 0; j < row.length; j++) {
        const mm = cost[i]! + row[j]!;
        if (mm < into[j]!) [into[j], from[j]] = [mm, i];
      }
    }
    froms.push(from);
    cost = into;
  }
  const path: number[] = [];
  let end = start;
  for (let k = froms.length - 1; k >= 0; k--) path.unshift((end = froms[k]![end]!));
  return { mm: cost[start]!, path };
}

function range(count: number): number[] {
  return Array.from({ length: count }, (_, i) => i);
}
