import type { Bar } from './bar.ts';
import type { Pieces } from './find-pieces.ts';
import { planksOf } from './planks.ts';
import { findReached, findWeakLinks, type Link } from './two-ways.ts';

/** Nodes are groups of pieces already joined; node 0 holds the rim. */
export class HoldingGraph {
  readonly nodes: number;
  private readonly node: readonly number[];

  constructor(pieces: Pieces, group: readonly number[]) {
    const names = [...new Set(group)];
    this.nodes = names.length;
    this.node = pieces.pieces.map((p) => names.indexOf(group[p.id]!));
  }

  private links(bars: readonly Bar[]): Link[] {
    return bars.flatMap((bar) => planksOf(bar).map(({ a, b }) => ({ a: this.node[a]!, b: this.node[b]! })));
  }

  /** How far a set is from holding twice over: pieces out of reach count more than weak links. */
  deficit(bars: readonly Bar[]): number {
    const links = this.links(bars);
    const { whole, weak } = findWeakLinks(this.nodes, links);
    if (whole) return weak.length;
    const met = findReached(this.nodes, links).filter(Boolean).length;
    return (this.nodes - met) * 1000 + weak.length;
  }
}

/** For every piece the number of the group that bars along necks join it to. */
export function groupJoined(pieces: Pieces, bars: readonly Bar[]): number[] {
  const group = pieces.pieces.map((p) => p.id);
  for (const bar of bars) {
    if (!bar.widens) continue;
    const [low, high] = [Math.min(group[bar.a]!, group[bar.b]!), Math.max(group[bar.a]!, group[bar.b]!)];
    group.forEach((g, i) => {
      if (g === high) group[i] = low;
    });
  }
  return group;
}
