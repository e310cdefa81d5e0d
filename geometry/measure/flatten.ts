import type { Outline, PathCommand, Point, Ring } from '../shapes.ts';

/**
 * Curves to closed rings, none farther from the curve than maxErrorMm. Rings of fewer than three different points are
 * dropped: they enclose nothing.
 */
export function flattenOutline(outline: Outline, maxErrorMm: number): Ring[] {
  const rings: Ring[] = [];
  let ring: Point[] = [];
  let at: Point = { x: 0, y: 0 };
  const close = () => {
    const cleaned = withoutRepeats(ring);
    if (cleaned.length >= 3) rings.push(cleaned);
    ring = [];
  };
  for (const c of outline) {
    switch (c.type) {
      case 'M':
        close();
        at = { x: c.x, y: c.y };
        ring.push(at);
        break;
      case 'L':
        at = { x: c.x, y: c.y };
        ring.push(at);
        break;
      case 'Q':
      case 'C':
        addCurve(ring, at, c, maxErrorMm);
        at = { x: c.x, y: c.y };
        break;
      case 'Z':
        close();
        break;
    }
  }
  close();
  return rings;
}

/**
 * Adds the points of a curve from `from` on, the last its end, none of their chords farther from it than maxErrorMm.
 *
 * A cubic in n even steps errs by at most max|B''|/(8 n^2), and |B''| is at most 6 M with M the larger of
 * |P0 - 2 P1 + P2| and |P1 - 2 P2 + P3|: n = ceil(sqrt(0.75 M / error)). A quadratic likewise with
 * |B''| = 2 |P0 - 2 P1 + P2|.
 */
export function addCurve(
  points: Point[],
  from: Point,
  c: Extract<PathCommand, { type: 'Q' | 'C' }>,
  maxErrorMm: number,
): void {
  if (c.type === 'Q') {
    const bend = Math.hypot(from.x - 2 * c.x1 + c.x, from.y - 2 * c.y1 + c.y);
    const n = Math.max(1, Math.ceil(Math.sqrt((0.25 * bend) / maxErrorMm)));
    for (let i = 1; i <= n; i++) {
      const t = i / n;
      const u = 1 - t;
      points.push({
        x: u * u * from.x + 2 * u * t * c.x1 + t * t * c.x,
        y: u * u * from.y + 2 * u * t * c.y1 + t * t * c.y,
      });
    }
    return;
  }
  const bend = Math.max(
    Math.hypot(from.x - 2 * c.x1 + c.x2, from.y - 2 * c.y1 + c.y2),
    Math.hypot(c.x1 - 2 * c.x2 + c.x, c.y1 - 2 * c.y2 + c.y),
  );
  const n = Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / maxErrorMm)));
  for (let i = 1; i <= n; i++) {
    const t = i / n;
    const u = 1 - t;
    const [a, b, d, e] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    points.push({
      x: a * from.x + b * c.x1 + d * c.x2 + e * c.x,
      y: a * from.y + b * c.y1 + d * c.y2 + e * c.y,
    });
  }
}

function withoutRepeats(points: readonly Point[]): Point[] {
  const out: Point[] = [];
  for (const p of points) {
    const last = out[out.length - 1];
    if (!last || last.x !== p.x || last.y !== p.y) out.push(p);
  }
  const first = out[0];
  const last = out[out.length - 1];
  if (out.length > 1 && first && last && first.x === last.x && first.y === last.y) out.pop();
  return out;
}
