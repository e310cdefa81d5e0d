import { segmentsMeet } from '../measure/distance.ts';
import type { Point } from '../shapes.ts';
import type { Bar } from './bar.ts';
import type { Piece } from './find-pieces.ts';

/** True when the bar ends on the piece or carries it. */
export function attachedTo(bar: Bar, piece: number): boolean {
  return (
    bar.a === piece ||
    bar.b === piece ||
    bar.carries?.piece === piece ||
    (bar.also?.some((c) => c.piece === piece) ?? false)
  );
}

/** Where the bar meets the piece. */
export function footOn(bar: Bar, piece: number): Point {
  return bar.b === piece ? bar.to : bar.from;
}

/** True when two bars cross, or run along each other nearer than apartMm: neither could fail alone. */
export function sideBySide(p: Bar, q: Bar, apartMm: number): boolean {
  if (p === q) return true;
  if (segmentsMeet(p.from, p.to, q.from, q.to)) return true;
  const length = Math.hypot(p.to.x - p.from.x, p.to.y - p.from.y);
  const [ux, uy] = [(p.to.x - p.from.x) / length, (p.to.y - p.from.y) / length];
  const [qx, qy] = [q.to.x - q.from.x, q.to.y - q.from.y];
  if (Math.abs(qx * ux + qy * uy) < 0.5 * Math.hypot(qx, qy)) return false;
  const along = (r: Point) => (r.x - p.from.x) * ux + (r.y - p.from.y) * uy;
  const aside = (r: Point) => (r.x - p.from.x) * uy - (r.y - p.from.y) * ux;
  const [s, t] = [along(q.from), along(q.to)];
  if (Math.max(s, t) <= 0 || Math.min(s, t) >= length) return false;
  const [m, n] = [aside(q.from), aside(q.to)];
  return Math.min(Math.abs(m), Math.abs(n)) < apartMm;
}

/** Distance of two bars' middles, mm. */
export function middlesApart(p: Bar, q: Bar): number {
  return Math.hypot(
    (p.from.x + p.to.x) / 2 - (q.from.x + q.to.x) / 2,
    (p.from.y + p.to.y) / 2 - (q.from.y + q.to.y) / 2,
  );
}

/** 0 when the bars hold the piece from all sides, towards 1 as they gather on one. */
export function anglesApart(piece: Piece, bars: readonly Bar[]): number {
  const angles = bars
    .map((b) => footOn(b, piece.id))
    .map((f) => (Math.atan2(f.y - piece.at.y, f.x - piece.at.x) * 180) / Math.PI)
    .sort((p, q) => p - q);
  let widest = 0;
  angles.forEach((angle, i) => {
    const next = angles[(i + 1) % angles.length]! + (i + 1 === angles.length ? 360 : 0);
    widest = Math.max(widest, next - angle);
  });
  return Math.min(1, Math.max(0, (widest - 190) / 170));
}

/** 0 when two bars lie in one upright or level line, as one cut through the letter; 1 when a width or more aside. */
export function outOfLine(p: Bar, q: Bar): number {
  const middle = { x: (q.from.x + q.to.x) / 2, y: (q.from.y + q.to.y) / 2 };
  const length = Math.hypot(p.to.x - p.from.x, p.to.y - p.from.y);
  const [ux, uy] = [(p.to.x - p.from.x) / length, (p.to.y - p.from.y) / length];
  if (Math.min(Math.abs(ux), Math.abs(uy)) > SLANTED) return 1;
  const aside = Math.abs((middle.x - p.from.x) * uy - (middle.y - p.from.y) * ux);
  return Math.min(1, aside / p.widthMm);
}

/** Sine of the angle from which on a bar is neither upright nor level. */
const SLANTED = 0.03;

/** Bars nearer to each other than so many widths leave a crumb of stroke between them that looks like a slip. */
const TWIN_WIDTHS = 4.5;

/** 0 when no two bars stand on the piece close together; each pair adds up to 1 as they near each other. */
export function twins(piece: Piece, bars: readonly Bar[]): number {
  let sum = 0;
  bars.forEach((p, i) => {
    for (const q of bars.slice(i + 1)) {
      const [a, b] = [footOn(p, piece.id), footOn(q, piece.id)];
      const apart = Math.hypot(a.x - b.x, a.y - b.y) / Math.max(p.widthMm, q.widthMm);
      sum += Math.max(0, 1 - apart / TWIN_WIDTHS);
    }
  });
  return sum;
}
