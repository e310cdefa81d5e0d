import type { Box, Point, Region, Ring } from '../shapes.ts';

/** Signed area by the shoelace formula: positive when the ring runs counter-clockwise. */
export function signedAreaMm2(ring: Ring): number {
  let twice = 0;
  let a = ring[ring.length - 1];
  if (!a) return 0;
  for (const b of ring) {
    twice += a.x * b.y - b.x * a.y;
    a = b;
  }
  return twice / 2;
}

/** Centre of the area within; NaN for a ring without area. */
export function centroid(ring: Ring): Point {
  let [x, y, twice] = [0, 0, 0];
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const cross = a.x * b.y - b.x * a.y;
    x += cross * (a.x + b.x);
    y += cross * (a.y + b.y);
    twice += cross;
    a = b;
  }
  return { x: x / (3 * twice), y: y / (3 * twice) };
}

/** Length all the way round. */
export function perimeterMm(ring: Ring): number {
  let sum = 0;
  let a = ring[ring.length - 1];
  if (!a) return 0;
  for (const b of ring) {
    sum += Math.hypot(b.x - a.x, b.y - a.y);
    a = b;
  }
  return sum;
}

/** Area of an outer ring less its holes, whatever way they run. */
export function regionAreaMm2(region: Region): number {
  return region.holes.reduce((sum, hole) => sum - Math.abs(signedAreaMm2(hole)), Math.abs(signedAreaMm2(region.outer)));
}

export function ringBox(ring: Ring): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of ring) {
    if (p.x < minX) minX = p.x;
    if (p.y < minY) minY = p.y;
    if (p.x > maxX) maxX = p.x;
    if (p.y > maxY) maxY = p.y;
  }
  return { minX, minY, maxX, maxY };
}

/** Smallest box around several; for none, a box that holds nothing (its minimum is above its maximum). */
export function joinBoxes(boxes: Iterable<Box>): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const b of boxes) {
    minX = Math.min(minX, b.minX);
    minY = Math.min(minY, b.minY);
    maxX = Math.max(maxX, b.maxX);
    maxY = Math.max(maxY, b.maxY);
  }
  return { minX, minY, maxX, maxY };
}

/** True when the boxes come nearer to each other than the given distance. */
export function boxesWithin(a: Box, b: Box, distanceMm: number): boolean {
  return (
    a.minX - b.maxX < distanceMm &&
    b.minX - a.maxX < distanceMm &&
    a.minY - b.maxY < distanceMm &&
    b.minY - a.maxY < distanceMm
  );
}

/** Even-odd test; a point on the ring itself may fall on either side. */
export function ringHolds(ring: Ring, p: Point): boolean {
  let inside = false;
  let a = ring[ring.length - 1];
  if (!a) return false;
  for (const b of ring) {
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
    a = b;
  }
  return inside;
}

/** In the outer ring and in none of the holes. */
export function regionHolds(region: Region, p: Point): boolean {
  return ringHolds(region.outer, p) && !region.holes.some((hole) => ringHolds(hole, p));
}
