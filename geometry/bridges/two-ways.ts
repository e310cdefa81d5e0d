/**
 * Graph questions on pieces (nodes) and bars (edges).
 */
export interface Link {
  readonly a: number;
  readonly b: number;
}

/**
 * Links whose loss would part the graph, and whether it hangs together at all.
 * Tarjan's bridge-finding (1974), by depth-first search; parallel links count as different ones.
 */
export function findWeakLinks(nodes: number, links: readonly Link[]): { whole: boolean; weak: number[] } {
  const next: { to: number; link: number }[][] = Array.from({ length: nodes }, () => []);
  links.forEach(({ a, b }, link) => {
    if (a === b) return;
    next[a]!.push({ to: b, link });
    next[b]!.push({ to: a, link });
  });
  const order = new Int32Array(nodes).fill(-1);
  const low = new Int32Array(nodes);
  const weak: number[] = [];
  let count = 0;
  const stack: { node: number; via: number; i: number }[] = [{ node: 0, via: -1, i: 0 }];
  order[0] = low[0] = count++;
  while (stack.length > 0) {
    const top = stack[stack.length - 1]!;
    const step = next[top.node]![top.i++];
    if (step) {
      if (step.link === top.via) continue;
      if (order[step.to]! < 0) {
        order[step.to] = low[step.to] = count++;
        stack.push({ node: step.to, via: step.link, i: 0 });
      } else low[top.node] = Math.min(low[top.node]!, order[step.to]!);
      continue;
    }
    stack.pop();
    const parent = stack[stack.length - 1];
    if (!parent) continue;
    low[parent.node] = Math.min(low[parent.node]!, low[top.node]!);
    if (low[top.node]! > order[parent.node]!) weak.push(top.via);
  }
  return { whole: count === nodes, weak };
}

/** Nodes reached from node 0. */
export function findReached(nodes: number, links: readonly Link[]): boolean[] {
  const seen = Array.from({ length: nodes }, (_, i) => i === 0);
  for (let grew = true; grew;) {
    grew = false;
    for (const { a, b } of links) {
      if (seen[a] !== seen[b]) {
        seen[a] = seen[b] = true;
        grew = true;
      }
    }
  }
  return seen;
}
