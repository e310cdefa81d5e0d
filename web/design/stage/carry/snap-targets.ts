import type { Point } from '../../../../geometry/shapes.ts';
import { SAME_PLACE } from '../../../../geometry/units.ts';

/** What is shown where something dragged comes to rest; millimetres in the plate's frame, clock degrees. */
export type Guide =
  | { readonly kind: 'upright'; readonly x: number }
  | { readonly kind: 'level'; readonly y: number }
  | { readonly kind: 'ray'; readonly deg: number }
  | { readonly kind: 'ring'; readonly radiusMm: number }
  /** One of two or more equal distances. */
  | { readonly kind: 'gap'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'arc'; readonly radiusMm: number; readonly fromDeg: number; readonly toDeg: number };

/** A place that draws: how far it is to it, and what is then shown. Pure. */
export interface Target {
  readonly by: number;
  readonly guides: readonly Guide[];
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The nearest of the places within reach, with the guides of all that come to the same. */
export function nearest(targets: readonly Target[], reach: number): Target | undefined {
  let best: Target | undefined;
  for (const target of targets) {
    if (Math.abs(target.by) <= (best ? Math.abs(best.by) : reach)) best = target;
  }
  if (!best) return undefined;
  const { by } = best;
  const same = targets.filter((t) => Math.abs(t.by - by) < SAME_PLACE);
  return { by, guides: distinct(same.flatMap((t) => t.guides)) };
}

/**
 * Along one line: moves that leave equal gaps to the neighbours on both sides, or as much to the one as that has to
 * the next beyond it. Neighbours that are run into do not count.
 */
export function gapTargets(mine: Span, others: readonly Span[]): { by: number; gaps: Span[] }[] {
  const middle = (mine.from + mine.to) / 2;
  const size = mine.to - mine.from;
  const below = others.filter((o) => o.to <= middle).sort((a, b) => b.to - a.to);
  const above = others.filter((o) => o.from >= middle).sort((a, b) => a.from - b.from);
  const targets: { by: number; gaps: Span[] }[] = [];
  const [low, lower] = [below[0], below.find((o) => below[0] && o.to <= below[0].from)];
  const [high, higher] = [above[0], above.find((o) => above[0] && o.from >= above[0].to)];
  if (low && high && high.from - low.to > size) {
    const gap = (high.from - low.to - size) / 2;
    const from = low.to + gap;
    targets.push({
      by: from - mine.from,
      gaps: [
        { from: low.to, to: from },
        { from: from + size, to: high.from },
      ],
    });
  }
  if (low && lower && low.from > lower.to) {
    const gap = low.from - lower.to;
    const gaps = [
      { from: lower.to, to: low.from },
      { from: low.to, to: low.to + gap },
    ];
    targets.push({ by: low.to + gap - mine.from, gaps });
  }
  if (high && higher && higher.from > high.to) {
    const gap = higher.from - high.to;
    const gaps = [
      { from: high.from - gap, to: high.from },
      { from: high.to, to: higher.from },
    ];
    targets.push({ by: high.from - gap - mine.to, gaps });
  }
  return targets;
}

function distinct(guides: readonly Guide[]): Guide[] {
  const seen = new Map(guides.map((g) => [JSON.stringify(g), g]));
  return [...seen.values()];
}
