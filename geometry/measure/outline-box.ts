import type { Box, Outline, Point } from '../shapes.ts';
import { NO_BEND } from '../units.ts';

/** The box of an outline, its curves' true extremes included; undefined when it draws nothing. */
export function outlineBox(outline: Outline): Box | undefined {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = (p: Point): void => {
    minX = Math.min(minX, p.x);
    maxX = Math.max(maxX, p.x);
    minY = Math.min(minY, p.y);
    maxY = Math.max(maxY, p.y);
  };
  let at: Point = { x: 0, y: 0 };
  for (const c of outline) {
    if (c.type === 'Z') continue;
    if (c.type === 'Q' || c.type === 'C') {
      const points = c.type === 'Q' ? [at, p(c.x1, c.y1), c] : [at, p(c.x1, c.y1), p(c.x2, c.y2), c];
      for (const axis of ['x', 'y'] as const)
        for (const t of turningPoints(points.map((q) => q[axis]))) take(pointAt(points, t));
    }
    take(c);
    at = c;
  }
  return maxX >= minX ? { minX, minY, maxX, maxY } : undefined;
}

function p(x: number, y: number): Point {
  return { x, y };
}

/** Where a Bezier curve of degree 2 or 3 turns back in one coordinate: roots of its derivative within 0 to 1. */
function turningPoints(v: readonly number[]): number[] {
  const d = v.slice(1).map((value, i) => value - v[i]!);
  const [d0, d1] = [d[0]!, d[1]!];
  if (d.length === 2) return inside(d0 === d1 ? [] : [d0 / (d0 - d1)]);
  const d2 = d[2]!;
  const [a, b] = [d0 - 2 * d1 + d2, d1 - d0];
  if (Math.abs(a) < NO_BEND) return inside(b === 0 ? [] : [-d0 / (2 * b)]);
  const root = b * b - a * d0;
  if (root < 0) return [];
  return inside([(-b + Math.sqrt(root)) / a, (-b - Math.sqrt(root)) / a]);
}

function inside(ts: readonly number[]): number[] {
  return ts.filter((t) => t > 0 && t < 1);
}

/** By de Casteljau's steps. */
function pointAt(points: readonly Point[], t: number): Point {
  let row = points;
  while (row.length > 1)
    row = row.slice(1).map((q, i) => ({ x: row[i]!.x + t * (q.x - row[i]!.x), y: row[i]!.y + t * (q.y - row[i]!.y) }));
  return row[0]!;
}
