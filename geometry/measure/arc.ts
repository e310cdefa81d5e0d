import type { Contour, Point, Ring, Vertex } from '../shapes.ts';

/** One side of a contour that bends: the circle it belongs to, and how far it goes round (radians, + counter-clockwise). */
export interface Arc {
  readonly centre: Point;
  readonly radiusMm: number;
  readonly startRad: number;
  readonly sweepRad: number;
}

/**
 * Circle of the side from a to b with a's bulge; undefined where the side is straight or has no length.
 * Bulge = tan(sweep / 4), radius = chord (1 + bulge^2) / (4 |bulge|) (DXF reference, group 42).
 */
export function arcOf(a: Vertex, b: Point): Arc | undefined {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const chord = Math.hypot(dx, dy);
  if (a.bulge === 0 || chord === 0) return undefined;
  const radiusMm = (chord * (1 + a.bulge * a.bulge)) / (4 * Math.abs(a.bulge));
  // Signed distance of the centre from the chord's middle, to the left of a-b.
  const aside = (chord * (1 - a.bulge * a.bulge)) / (4 * a.bulge);
  const centre = { x: (a.x + b.x) / 2 - (dy / chord) * aside, y: (a.y + b.y) / 2 + (dx / chord) * aside };
  return {
    centre,
    radiusMm,
    startRad: Math.atan2(a.y - centre.y, a.x - centre.x),
    sweepRad: 4 * Math.atan(a.bulge),
  };
}

/** Length all the way round, arcs exact. */
export function contourLengthMm(contour: Contour): number {
  let sum = 0;
  for (const [a, b] of sides(contour)) {
    const arc = arcOf(a, b);
    sum += arc ? arc.radiusMm * Math.abs(arc.sweepRad) : Math.hypot(b.x - a.x, b.y - a.y);
  }
  return sum;
}

/** Signed area, positive counter-clockwise: shoelace of the vertices plus the exact segment under each arc. */
export function contourAreaMm2(contour: Contour): number {
  let sum = 0;
  for (const [a, b] of sides(contour)) {
    sum += (a.x * b.y - b.x * a.y) / 2;
    const arc = arcOf(a, b);
    if (arc) sum += (arc.radiusMm * arc.radiusMm * (arc.sweepRad - Math.sin(arc.sweepRad))) / 2;
  }
  return sum;
}

/** Contour to a closed polyline whose chords stay within maxErrorMm of its arcs (sagitta = radius (1 - cos(step / 2))). */
export function contourToRing(contour: Contour, maxErrorMm: number): Ring {
  const ring: Point[] = [];
  for (const [a, b] of sides(contour)) {
    ring.push({ x: a.x, y: a.y });
    const arc = arcOf(a, b);
    if (!arc) continue;
    const step = 2 * Math.acos(Math.max(0, 1 - maxErrorMm / arc.radiusMm));
    const pieces = Math.ceil(Math.abs(arc.sweepRad) / step);
    for (let i = 1; i < pieces; i++) ring.push(pointOnArc(arc, i / pieces));
  }
  return ring;
}

/** Point after a share of the arc, 0 at its start and 1 at its end. */
export function pointOnArc(arc: Arc, share: number): Point {
  const rad = arc.startRad + arc.sweepRad * share;
  return { x: arc.centre.x + arc.radiusMm * Math.cos(rad), y: arc.centre.y + arc.radiusMm * Math.sin(rad) };
}

/** Every vertex with the next one round. */
export function sides(contour: Contour): [Vertex, Vertex][] {
  return contour.map((a, i) => [a, contour[(i + 1) % contour.length] ?? a]);
}

/** A circle as two half circles, begun at its right end; counter-clockwise, with a bulge of -1 clockwise. */
export function circleContour(radiusMm: number, at: Point = { x: 0, y: 0 }, bulge: 1 | -1 = 1): Contour {
  return [
    { x: at.x + radiusMm, y: at.y, bulge },
    { x: at.x - radiusMm, y: at.y, bulge },
  ];
}
