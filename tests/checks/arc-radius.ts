import type { Contour } from '../../geometry/shapes.ts';

/** Radius of a contour's first arc: chord (1 + b^2) / (4 b) for bulge b (DXF reference, group 42). */
export function arcRadius(contour: Contour): number {
  const [a, b] = [contour[0], contour[1]];
  if (!a || !b || a.bulge === 0) return NaN;
  return (Math.hypot(b.x - a.x, b.y - a.y) * (1 + a.bulge * a.bulge)) / (4 * Math.abs(a.bulge));
}
