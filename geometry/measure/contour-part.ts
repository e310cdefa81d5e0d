import type { Contour, Vertex } from '../shapes.ts';
import { arcOf, pointOnArc, sides } from './arc.ts';

/**
 * The run of a contour between two lengths along it, mm, both within one round from its first vertex; an arc that is
 * parted stays an arc. The bulge of the last vertex means nothing. Empty when nothing is between.
 */
export function contourPart(contour: Contour, fromMm: number, toMm: number): Vertex[] {
  const run: Vertex[] = [];
  let at = 0;
  for (const [a, b] of sides(contour)) {
    const arc = arcOf(a, b);
    const long = arc ? arc.radiusMm * Math.abs(arc.sweepRad) : Math.hypot(b.x - a.x, b.y - a.y);
    const [from, to] = [Math.max(fromMm, at) - at, Math.min(toMm, at + long) - at];
    if (long > 0 && to > from) {
      const point = (mm: number) => {
        const share = mm / long;
        return arc ? pointOnArc(arc, share) : { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
      };
      // A part of an arc bends as much less as it is shorter: bulge = tan(a quarter of its angle).
      const bulge = arc ? Math.tan((arc.sweepRad * (to - from)) / long / 4) : 0;
      run.push({ ...(from === 0 ? { x: a.x, y: a.y } : point(from)), bulge });
      if (toMm <= at + long) return [...run, { ...(to === long ? { x: b.x, y: b.y } : point(to)), bulge: 0 }];
    }
    at += long;
  }
  // To the very end of the round, or past it by rounding.
  const first = contour[0];
  return run.length > 0 && first ? [...run, { x: first.x, y: first.y, bulge: 0 }] : [];
}
