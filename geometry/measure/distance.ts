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
      for (const [p, q] of nearA) {
        const box = {
          minX: Math.min(p.x, q.x),
          maxX: Math.max(p.x, q.x),
          minY: Math.min(p.y, q.y),
          maxY: Math.max(p.y, q.y),
        };
        for (const [r, s] of nearB) {
          if (Math.min(r.x, s.x) - box.maxX >= limit || box.minX - Math.max(r.x, s.x) >= limit) continue;
          if (Math.min(r.y, s.y) - box.maxY >= limit || box.minY - Math.max(r.y, s.y) >= limit) continue;
          const gap = segmentGap(p, q, r, s);
          if (gap.mm < limit) {
            best = gap;
            limit = gap.mm;
            if (limit === 0) return best;
          }
        }
      }
    }
  }
  return best;
}

function edgesNear(ring: Ring, box: Box, distance: number): [Point, Point][] {
  const out: [Point, Point][] = [];
  let a = ring[ring.length - 1];
  if (!a) return out;
  for (const b of ring) {
    const edge = {
      minX: Math.min(a.x, b.x),
      maxX: Math.max(a.x, b.x),
      minY: Math.min(a.y, b.y),
      maxY: Math.max(a.y, b.y),
    };
    if (boxesWithin(edge, box, distance)) out.push([a, b]);
    a = b;
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
