import { nearestOnSegment } from '../measure/distance.ts';
import type { Point } from '../shapes.ts';
import type { Bar, Carried } from './bar.ts';
import type { Pieces } from './find-pieces.ts';

/** A straight part of a bar between two pieces of metal: each may fail alone. */
export interface Plank {
  readonly from: Point;
  readonly to: Point;
  readonly widthMm: number;
  /** Pieces at `from` and `to`. */
  readonly a: number;
  readonly b: number;
}

/** The bar as planks: one, or several meeting in the middles of the small islands that it carries. */
export function planksOf(bar: Bar): Plank[] {
  const far = (p: Point) => Math.hypot(p.x - bar.from.x, p.y - bar.from.y);
  const stops = [...(bar.carries ? [bar.carries] : []), ...(bar.also ?? [])].sort((p, q) => far(p.at) - far(q.at));
  const ends: Carried[] = [{ piece: bar.a, at: bar.from }, ...stops, { piece: bar.b, at: bar.to }];
  return ends.slice(1).map((end, i) => {
    const start = ends[i]!;
    return { from: start.at, to: end.at, widthMm: bar.widthMm, a: start.piece, b: end.piece };
  });
}

/** The bar with the small islands noted that it covers besides the one it was made for. */
export function withAllItCarries(bar: Bar, pieces: Pieces): Bar {
  const also = pieces.pieces.flatMap((piece): Carried[] => {
    if (!piece.small || piece.id === bar.carries?.piece || !under(bar, piece.at)) return [];
    const at = middleUnder(bar, piece.hole);
    return at ? [{ piece: piece.id, at }] : [];
  });
  if (also.length > 0) return { ...bar, also };
  if (!bar.also) return bar;
  const { also: _old, ...rest } = bar;
  return rest;
}

/** An island whose middle is not under the bar hangs on it by an edge: that carries nothing. */
function under(bar: Bar, p: Point): boolean {
  const q = nearestOnSegment(p, bar.from, bar.to);
  return Math.hypot(p.x - q.x, p.y - q.y) < bar.widthMm / 2;
}

/** Middle of the stretch of the bar's middle line beside which the ring lies under the bar. */
function middleUnder(bar: Bar, ring: readonly Point[]): Point | undefined {
  const length = Math.hypot(bar.to.x - bar.from.x, bar.to.y - bar.from.y);
  const [dx, dy] = [(bar.to.x - bar.from.x) / length, (bar.to.y - bar.from.y) / length];
  let [low, high] = [Infinity, -Infinity];
  for (const p of ring) {
    const along = (p.x - bar.from.x) * dx + (p.y - bar.from.y) * dy;
    const aside = (p.x - bar.from.x) * dy - (p.y - bar.from.y) * dx;
    if (Math.abs(aside) >= bar.widthMm / 2 || along <= 0 || along >= length) continue;
    low = Math.min(low, along);
    high = Math.max(high, along);
  }
  if (low > high) return undefined;
  const middle = (low + high) / 2;
  return { x: bar.from.x + dx * middle, y: bar.from.y + dy * middle };
}
