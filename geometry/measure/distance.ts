import type { Box, Point, Ring } from '../shapes.ts';
import { boxesWithin, ringBox } from './ring.ts';

/** A shortest connection found between two shapes. */
export interface Gap {
  readonly mm: number;
  readonly from: Point;
  readonly to: Point;
}

/** Point of the segment a-b nearest to p. */
export function nearestOnSegment(p: Point, a: Point, b: Point): Point {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const lengthSq = dx * dx + dy * dy;
  if (lengthSq === 0) return a;
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / lengthSq));
  return { x: a.x + t * dx, y: a.y + t * dy };
}

/** True when the closed segments a-b and c-d share a point (collinear touching included). */
export function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  const o1 = cross(a, b, c);
  const o2 = cross(a, b, d);
  const o3 = cross(c, d, a);
  const o4 = cross(c, d, b);
  if (o1 * o2 < 0 && o3 * o4 < 0) return true;
  return (
    (o1 === 0 && within(a, b, c)) ||
    (o2 === 0 && within(a, b, d)) ||
    (o3 === 0 && within(c, d, a)) ||
    (o4 === 0 && within(c, d, b))
  );
}

/** Shortest connection between two closed segments; 0 where they meet. */
export function segmentGap(a: Point, b: Point, c: Point, d: Point): Gap {
  if (segmentsMeet(a, b, c, d)) {
    const at = nearestOnSegment(c, a, b);
    return { mm: 0, from: at, to: at };
  }
  const tries: [Point, Point][] = [
    [a, nearestOnSegment(a, c, d)],
    [b, nearestOnSegment(b, c, d)],
    [nearestOnSegment(c, a, b), c],
    [nearestOnSegment(d, a, b), d],
  ];
  let best: Gap = { mm: Infinity, from: a, to: c };
  for (const [from, to] of tries) {
    const mm = Math.hypot(to.x - from.x, to.y - from.y);
    if (mm < best.mm) best = { mm, from, to };
  }
  return best;
}

/**
 * Shortest connection between the edges of two groups of rings, looked for only below withinMm;
 * undefined when they stay farther apart. Whether one lies inside the other is not asked.
 */
export function ringsGap(as: readonly Ring[], bs: readonly Ring[], withinMm: number): Gap | undefined {
  let limit = withinMm;
  let best: Gap | undefined;
  for (const a of as) {
    const boxA = ringBox(a);
    for (const b of bs) {
      const boxB = ringBox(b);
      if (!boxesWithin(boxA, boxB, limit)) continue;
      const nearA = edgesNear(a, boxB, limit);
      const nearB = edgesNear(b, boxA, limit);
      for (const i of nearA) {
        const [p, q] = [a[i]!, a[(i + 1) % a.length]!];
        const [minX, maxX] = p.x < q.x ? [p.x, q.x] : [q.x, p.x];
        const [minY, maxY] = p.y < q.y ? [p.y, q.y] : [q.y, p.y];
        for (const j of nearB) {
          const r = b[j]!;
          const s = b[j + 1 === b.length ? 0 : j + 1]!;
          if ((r.x - maxX >= limit && s.x - maxX >= limit) || (minX - r.x >= limit && minX - s.x >= limit)) continue;
          if ((r.y - maxY >= limit && s.y - maxY >= limit) || (minY - r.y >= limit && minY - s.y >= limit)) continue;
          // First the distance alone: this loop runs millions of times, and a record for each would choke it.
          const sq = segmentDistanceSq(p, q, r, s);
          if (sq >= limit * limit) continue;
          best = segmentGap(p, q, r, s);
          limit = Math.min(limit, best.mm);
          if (limit === 0) return best;
        }
      }
    }
  }
  return best;
}

/** Square of the shortest distance between two closed segments. */
function segmentDistanceSq(a: Point, b: Point, c: Point, d: Point): number {
  if (segmentsMeet(a, b, c, d)) return 0;
  return Math.min(distanceSq(a, c, d), distanceSq(b, c, d), distanceSq(c, a, b), distanceSq(d, a, b));
}

function distanceSq(p: Point, a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const lengthSq = dx * dx + dy * dy;
  const t = lengthSq === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / lengthSq;
  const u = t < 0 ? 0 : t > 1 ? 1 : t;
  const x = a.x + u * dx - p.x;
  const y = a.y + u * dy - p.y;
  return x * x + y * y;
}

/** Numbers of the edges (from point i to the next) that come nearer to the box than the distance. */
function edgesNear(ring: Ring, box: Box, distance: number): number[] {
  const out: number[] = [];
  const [minX, maxX] = [box.minX - distance, box.maxX + distance];
  const [minY, maxY] = [box.minY - distance, box.maxY + distance];
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i]!;
    const b = ring[i + 1 === ring.length ? 0 : i + 1]!;
    if ((a.x < minX && b.x < minX) || (a.x > maxX && b.x > maxX)) continue;
    if ((a.y < minY && b.y < minY) || (a.y > maxY && b.y > maxY)) continue;
    out.push(i);
  }
  return out;
}

function cross(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

function within(a: Point, b: Point, p: Point): boolean {
  return (
    Math.min(a.x, b.x) <= p.x && p.x <= Math.max(a.x, b.x) && Math.min(a.y, b.y) <= p.y && p.y <= Math.max(a.y, b.y)
  );
}
