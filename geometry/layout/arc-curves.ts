import { clockPoint } from '../measure/clock.ts';
import type { Outline, PathCommand, Point } from '../shapes.ts';

/**
 * Circular arcs as cubics. A cubic over an angle a with handles of 4/3 tan(a/4) radii strays from the circle by
 * about 4/27 sin^6(a/4)/cos^2(a/4) of the radius (T. Dokken et al., Computer Aided Geometric Design 7, 1990):
 * at 22.5 degrees a piece less than 1e-7 of it, under a tenth of a micrometre on any plate.
 */
const GREATEST_PIECE_DEG = 22.5;

/** From the first clock angle to the second (clockwise when it is larger) about a centre; without the start point. */
export function arcCurves(centre: Point, radiusMm: number, fromDeg: number, toDeg: number): PathCommand[] {
  const pieces = Math.max(1, Math.ceil(Math.abs(toDeg - fromDeg) / GREATEST_PIECE_DEG));
  const step = (toDeg - fromDeg) / pieces;
  const handle = (4 / 3) * Math.tan((step * Math.PI) / 720) * radiusMm;
  const out: PathCommand[] = [];
  for (let i = 0; i < pieces; i++) {
    const a = fromDeg + i * step;
    // The last piece ends on the asked angle itself, so that closed runs close to the last digit.
    const b = i === pieces - 1 ? toDeg : a + step;
    const [p, q] = [clockPoint(radiusMm, a), clockPoint(radiusMm, b)];
    const [pt, qt] = [clockPoint(handle, a + 90), clockPoint(handle, b + 90)];
    out.push({
      type: 'C',
      x1: centre.x + p.x + pt.x,
      y1: centre.y + p.y + pt.y,
      x2: centre.x + q.x - qt.x,
      y2: centre.y + q.y - qt.y,
      x: centre.x + q.x,
      y: centre.y + q.y,
    });
  }
  return out;
}

/** A whole circle; counter-clockwise as an outer edge, clockwise as a hole. */
export function circleCurves(centre: Point, radiusMm: number, hole: boolean): Outline {
  const curves = arcCurves(centre, radiusMm, 0, hole ? 360 : -360);
  const start = { x: centre.x, y: centre.y + radiusMm };
  const last = curves.pop();
  const closed = last?.type === 'C' ? [...curves, { ...last, ...start }] : curves;
  return [{ type: 'M', ...start }, ...closed, { type: 'Z' }];
}
