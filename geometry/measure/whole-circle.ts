import type { Contour, Point } from '../shapes.ts';
import { signedAreaMm2 } from './ring.ts';

/** Fewer points than a flattened circle ever has: a hexagon is a hexagon. */
const LEAST_POINTS = 8;

/**
 * The circle that the ring stands for, as two half circles going the same way round; undefined when no circle stays
 * within maxErrorMm of points and edges. Least squares of x^2 + y^2 + D x + E y + F (Kasa 1976), exact for true circles.
 */
export function wholeCircle(points: readonly Point[], maxErrorMm: number): Contour | undefined {
  const n = points.length;
  if (n < LEAST_POINTS) return undefined;
  const mx = points.reduce((sum, p) => sum + p.x, 0) / n;
  const my = points.reduce((sum, p) => sum + p.y, 0) / n;
  let [xx, xy, yy, xz, yz, zz] = [0, 0, 0, 0, 0, 0];
  for (const p of points) {
    const x = p.x - mx;
    const y = p.y - my;
    const z = x * x + y * y;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xz += x * z;
    yz += y * z;
    zz += z;
  }
  const det = xx * yy - xy * xy;
  if (det <= 0) return undefined;
  const cx = (xz * yy - yz * xy) / (2 * det);
  const cy = (yz * xx - xz * xy) / (2 * det);
  const radius = Math.sqrt(cx * cx + cy * cy + zz / n);
  let a = points[n - 1]!;
  let round = 0;
  for (const b of points) {
    const [ax, ay, bx, by] = [a.x - mx - cx, a.y - my - cy, b.x - mx - cx, b.y - my - cy];
    if (Math.abs(Math.hypot(bx, by) - radius) > maxErrorMm) return undefined;
    // The edge's foot is its deepest point; it may lie outside the edge, which then errs less than said here.
    const foot = Math.abs(ax * by - ay * bx) / Math.hypot(bx - ax, by - ay);
    if (radius - foot > maxErrorMm) return undefined;
    round += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    a = b;
  }
  if (Math.abs(Math.abs(round) - 2 * Math.PI) > 1) return undefined;
  const bulge = signedAreaMm2(points) > 0 ? 1 : -1;
  return [
    { x: mx + cx + radius, y: my + cy, bulge },
    { x: mx + cx - radius, y: my + cy, bulge },
  ];
}
