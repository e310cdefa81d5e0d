import type { Outline, PathCommand, Point } from '../../shapes.ts';

/** A point a line runs through: smoothly, or with a corner. */
export type Knot = readonly [x: number, y: number] | readonly [x: number, y: number, corner: 'corner'];

/**
 * The closed outline through knots, smooth except at corners; straight between two corners.
 * Curves are J. D. Hobby's ("Smooth, Easy to Compute Interpolating Splines", 1986; tension 1, curl 1 at corners).
 */
export function closedSpline(knots: readonly Knot[]): Outline {
  const corner = knots.findIndex((k) => k[2] === 'corner');
  if (corner < 0) return [...splineThrough(knots.map(point), true), { type: 'Z' }];
  const turned = [...knots.slice(corner), ...knots.slice(0, corner), knots[corner]!];
  return [...openSpline(turned), { type: 'Z' }];
}

/** The same for an open line. */
export function openSpline(knots: readonly Knot[]): PathCommand[] {
  const out: PathCommand[] = [{ type: 'M', x: knots[0]![0], y: knots[0]![1] }];
  let from = 0;
  for (let i = 1; i < knots.length; i++) {
    if (knots[i]![2] !== 'corner' && i < knots.length - 1) continue;
    out.push(...splineThrough(knots.slice(from, i + 1).map(point), false).slice(1));
    from = i;
  }
  return out;
}

function point([x, y]: Knot): Point {
  return { x, y };
}

function splineThrough(points: readonly Point[], closed: boolean): PathCommand[] {
  const n = points.length;
  const spans = closed ? n : n - 1;
  const at = (i: number): Point => points[((i % n) + n) % n]!;
  const chord = Array.from({ length: spans }, (_, i) => ({ x: at(i + 1).x - at(i).x, y: at(i + 1).y - at(i).y }));
  const out: PathCommand[] = [{ type: 'M', x: at(0).x, y: at(0).y }];
  if (spans === 1) return [...out, { type: 'L', x: at(1).x, y: at(1).y }];
  const long = chord.map((c) => Math.hypot(c.x, c.y));
  const angle = chord.map((c) => Math.atan2(c.y, c.x));
  /** Turn from the span before knot i to the span after it. */
  const turn = Array.from({ length: n }, (_, i) =>
    !closed && (i === 0 || i === n - 1) ? 0 : wrap(angle[i % spans]! - angle[(i + spans - 1) % spans]!),
  );
  const theta = solve(equations(n, closed, long, turn));
  for (let i = 0; i < spans; i++) {
    const j = (i + 1) % n;
    const [t, p] = [theta[i]!, -turn[j]! - theta[j]!];
    const [r, s] = [velocity(t, p) / 3, velocity(p, t) / 3];
    const [a, b, d] = [at(i), at(i + 1), long[i]!];
    const [out1, in2] = [angle[i]! + t, angle[i]! - p];
    out.push({
      type: 'C',
      x1: a.x + r * d * Math.cos(out1),
      y1: a.y + r * d * Math.sin(out1),
      x2: b.x - s * d * Math.cos(in2),
      y2: b.y - s * d * Math.sin(in2),
      x: b.x,
      y: b.y,
    });
  }
  return out;
}

/** Mock curvature the same on both sides of each knot; at open ends the same as at their neighbour (curl 1). */
function equations(n: number, closed: boolean, long: readonly number[], turn: readonly number[]): number[][] {
  const spans = long.length;
  return Array.from({ length: n }, (_, i) => {
    const row = new Array<number>(n + 1).fill(0);
    if (!closed && i === 0) {
      row[0] = 1;
      row[1] = 1;
      row[n] = -turn[1]!;
      return row;
    }
    if (!closed && i === n - 1) {
      row[n - 2] = 1;
      row[n - 1] = 1;
      row[n] = 0;
      return row;
    }
    const [h, k] = [(i + n - 1) % n, (i + 1) % n];
    const [before, after] = [1 / long[(i + spans - 1) % spans]!, 1 / long[i % spans]!];
    row[h]! += before;
    row[i]! += 2 * before + 2 * after;
    row[k]! += after;
    row[n] = -2 * before * turn[i]! - after * turn[k]!;
    return row;
  });
}

/** Gauss with pivots; each row carries its right side last. */
function solve(rows: number[][]): number[] {
  const n = rows.length;
  for (let c = 0; c < n; c++) {
    let best = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(rows[r]![c]!) > Math.abs(rows[best]![c]!)) best = r;
    [rows[c], rows[best]] = [rows[best]!, rows[c]!];
    for (let r = 0; r < n; r++) {
      const by = r === c ? 0 : rows[r]![c]! / rows[c]![c]!;
      if (by !== 0) for (let k = c; k <= n; k++) rows[r]![k]! -= by * rows[c]![k]!;
    }
  }
  return rows.map((row, i) => row[n]! / row[i]!);
}

/** Hobby's velocity function. */
function velocity(theta: number, phi: number): number {
  const [st, ct, sp, cp] = [Math.sin(theta), Math.cos(theta), Math.sin(phi), Math.cos(phi)];
  const top = 2 + Math.SQRT2 * (st - sp / 16) * (sp - st / 16) * (ct - cp);
  const fifth = Math.sqrt(5);
  return top / (1 + 0.5 * (fifth - 1) * ct + 0.5 * (3 - fifth) * cp);
}

function wrap(a: number): number {
  return a - 2 * Math.PI * Math.round(a / (2 * Math.PI));
}
