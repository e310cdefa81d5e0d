import type { Point, Ring } from '../shapes.ts';
import { nearestOnSegment } from './distance.ts';

/**
 * A ring with fewer points, for drawing: a point is left out where the line without it runs no farther off than `mostOff`,
 * after Douglas and Peucker (Cartographica 10, 1973). Never for what is cut. In and out in the same unit.
 */
export function thinRing(ring: Ring, mostOff: number): Ring {
  const half = Math.floor(ring.length / 2);
  return [...thinned(ring, mostOff, 0, half), ...thinned([...ring, ...ring.slice(0, 1)], mostOff, half, ring.length)];
}

/** Points from one place up to and without another. */
function thinned(points: Ring, mostOff: number, from: number, to: number): readonly Point[] {
  const [a, b] = [points[from], points[to]];
  if (!a || !b) return [];
  let [farthest, off] = [-1, mostOff];
  for (let i = from + 1; i < to; i++) {
    const p = points[i] ?? a;
    const near = nearestOnSegment(p, a, b);
    const distance = Math.hypot(p.x - near.x, p.y - near.y);
    if (distance > off) [farthest, off] = [i, distance];
  }
  if (farthest < 0) return [a];
  return [...thinned(points, mostOff, from, farthest), ...thinned(points, mostOff, farthest, to)];
}
