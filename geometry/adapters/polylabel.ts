import polylabel from 'polylabel';
import type { Point, Ring } from '../shapes.ts';
import { DEEPEST_ERROR_MM } from '../units.ts';

/** The point of a ring's inside farthest from its edge, and that distance; within DEEPEST_ERROR_MM of the best. */
export function deepestPoint(ring: Ring): { at: Point; depthMm: number } {
  const loop = [...ring, ring[0]!].map((p): [number, number] => [p.x, p.y]);
  const found = polylabel([loop], DEEPEST_ERROR_MM);
  return { at: { x: found[0], y: found[1] }, depthMm: found.distance };
}
