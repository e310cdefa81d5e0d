import type { Ring } from '../shapes.ts';

/**
 * A ring with fewer points, for drawing: a point is left out where the line without it runs no farther off than `mostOff`,
 * after Douglas and Peucker (Cartographica 10, 1973). Never for what is cut. In and out in the same unit.
 */
export function thinRing(ring: Ring, mostOff: number): Ring {
  const [first] = ring;
  if (!first) return [];
  const half = Math.floor(ring.length / 2);
  const closed = [...ring, first];
  const kept = new Uint8Array(closed.length);
  kept[0] = 1;
  kept[half] = 1;
  // a list of its own instead of calls within calls: a plate has ten thousand points, and a hand may be typing
  const spans = [0, half, half, ring.length];
  while (spans.length > 0) {
    const to = spans.pop() ?? 0;
    const from = spans.pop() ?? 0;
    const farthest = farthestOff(closed, mostOff, from, to);
    if (farthest < 0) continue;
    kept[farthest] = 1;
    spans.push(from, farthest, farthest, to);
  }
  return ring.filter((_, i) => kept[i] === 1);
}

/** The point between two others that is farthest from the line between them, when that is more than mostOff; else -1. */
function farthestOff(points: Ring, mostOff: number, from: number, to: number): number {
  const [a, b] = [points[from], points[to]];
  if (!a || !b) return -1;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length2 = dx * dx + dy * dy;
  let [farthest, off2] = [-1, mostOff * mostOff];
  for (let i = from + 1; i < to; i++) {
    const p = points[i] ?? a;
    const [px, py] = [p.x - a.x, p.y - a.y];
    const along = length2 === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / length2));
    const [ex, ey] = [px - along * dx, py - along * dy];
    const distance2 = ex * ex + ey * ey;
    if (distance2 > off2) [farthest, off2] = [i, distance2];
  }
  return farthest;
}
