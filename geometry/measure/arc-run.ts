import type { Point } from '../shapes.ts';

/**
 * Can one arc stand for a run of points? The arc goes through the run's first and last point, so only its bulge is free.
 *
 * In the frame of the chord (u along it from its middle, v to its left, half its length c) the signed distance of a point
 * from the circle is d(b) = c G / (S + c (1 + b^2) / 2), G = b (u^2 + v^2 - c^2) / c - v (1 - b^2),
 * S = |(b u, b v - c (1 - b^2) / 2)|: the usual r - R with the bulge b multiplied through, so that it holds for a straight
 * line (b = 0) as well. Positive on the right of the run; it falls as b grows.
 */

/** An arc of more than half a circle is written as two: some controllers refuse the long one. */
const GREATEST_BULGE = 1;

/** Share of the error under which a bend is no bend: such arcs have radii of hundreds of metres. */
const STRAIGHT_SHARE = 0.2;

export interface RunFit {
  readonly bulge: number;
  /** Greatest distance between run and arc, either way. */
  readonly errorMm: number;
}

/** Best arc from points[from] to points[to], or undefined when none stays within maxErrorMm of points and edges. */
export function fitRun(points: readonly Point[], from: number, to: number, maxErrorMm: number): RunFit | undefined {
  if (to - from === 1) return { bulge: 0, errorMm: 0 };
  const frame = frameOf(points[from]!, points[to]!);
  if (!frame) return undefined;
  const bulge = middleBulge(points, from, to, frame, maxErrorMm);
  if (bulge === undefined) return undefined;
  if (Math.abs(bulge) * frame.c <= maxErrorMm * STRAIGHT_SHARE) {
    const errorMm = runErrorMm(points, from, to, frame, 0, maxErrorMm);
    if (errorMm <= maxErrorMm) return { bulge: 0, errorMm };
  }
  const errorMm = runErrorMm(points, from, to, frame, bulge, maxErrorMm);
  return errorMm <= maxErrorMm ? { bulge, errorMm } : undefined;
}

interface Frame {
  readonly mx: number;
  readonly my: number;
  readonly ux: number;
  readonly uy: number;
  readonly c: number;
}

function frameOf(a: Point, b: Point): Frame | undefined {
  const chord = Math.hypot(b.x - a.x, b.y - a.y);
  if (chord === 0) return undefined;
  return {
    mx: (a.x + b.x) / 2,
    my: (a.y + b.y) / 2,
    ux: (b.x - a.x) / chord,
    uy: (b.y - a.y) / chord,
    c: chord / 2,
  };
}

/**
 * Each point, and each edge at its middle, allows a span of bulges: that of the arc right through it, give or take
 * maxErrorMm over the rate at which the arc moves there. Of what all allow, the bulge that suits the points best
 * (least squares of their distances); undefined when they allow nothing in common.
 */
function middleBulge(
  points: readonly Point[],
  from: number,
  to: number,
  frame: Frame,
  maxErrorMm: number,
): number | undefined {
  const { c } = frame;
  let low = -GREATEST_BULGE;
  let high = GREATEST_BULGE;
  let weights = 0;
  let weighted = 0;
  // Even steps are the run's edges at their middles, odd ones its inner points.
  for (let step = 0; step <= 2 * (to - from - 1); step++) {
    const p = points[from + Math.floor((step + 1) / 2)]!;
    const onPoint = step % 2 === 1;
    const o = onPoint ? p : points[from + step / 2 + 1]!;
    const x = (p.x + o.x) / 2 - frame.mx;
    const y = (p.y + o.y) / 2 - frame.my;
    const u = x * frame.ux + y * frame.uy;
    const v = y * frame.ux - x * frame.uy;
    const q = (c * c - u * u - v * v) / c;
    const reach = q + Math.sqrt(q * q + 4 * v * v);
    if (reach <= 0) {
      // On the chord's own line at or beyond an end: no arc comes nearer than that end.
      if (Math.abs(u) > c + maxErrorMm) return undefined;
      continue;
    }
    const b = (-2 * v) / reach;
    const rate = Math.abs((q - 2 * b * v) / (1 + b * b));
    if (rate === 0) continue;
    const slack = maxErrorMm / rate;
    if (b - slack > low) low = b - slack;
    if (b + slack < high) high = b + slack;
    if (low > high) return undefined;
    if (onPoint) {
      weights += rate * rate;
      weighted += b * rate * rate;
    }
  }
  const best = weights > 0 ? weighted / weights : 0;
  return Math.min(Math.max(best, low), high);
}

/** Greatest distance between the run and the arc, points and edges; Infinity when the run turns back or goes round twice. */
function runErrorMm(
  points: readonly Point[],
  from: number,
  to: number,
  frame: Frame,
  b: number,
  maxErrorMm: number,
): number {
  const { c } = frame;
  const half = (c * (1 - b * b)) / 2;
  const scaledRadius = (c * (1 + b * b)) / 2;
  const radius = b === 0 ? Infinity : scaledRadius / Math.abs(b);
  // The polyline may be no longer than the arc, or it goes round more than once.
  const longest = (b === 0 ? 2 * c : radius * 4 * Math.atan(Math.abs(b))) * 1.05 + 4 * maxErrorMm;
  let worst = 0;
  let length = 0;
  let pu = -c;
  let pv = 0;
  let pd = 0;
  for (let k = from + 1; k <= to; k++) {
    const p = points[k]!;
    const x = p.x - frame.mx;
    const y = p.y - frame.my;
    const u = x * frame.ux + y * frame.uy;
    const v = y * frame.ux - x * frame.uy;
    const G = (b * (u * u + v * v - c * c)) / c - v * (1 - b * b);
    const S = Math.hypot(b * u, b * v - half);
    const d = (c * G) / (S + scaledRadius);
    if (Math.abs(d) > worst) worst = Math.abs(d);
    const eu = u - pu;
    const ev = v - pv;
    const edge = Math.hypot(eu, ev);
    length += edge;
    // Advance along the arc: its direction at the edge's middle is the radius turned by a right angle.
    const wu = (b * (u + pu)) / 2;
    const wv = (b * (v + pv)) / 2 - half;
    if (-wv * eu + wu * ev < 0 && edge > maxErrorMm / 2) return Infinity;
    if (b !== 0) {
      const sag = deepestOfEdgeMm(edge, b > 0 ? pd : -pd, b > 0 ? d : -d, radius);
      if (sag > worst) worst = sag;
    }
    if (worst > maxErrorMm || length > longest) return Infinity;
    pu = u;
    pv = v;
    pd = d;
  }
  return worst;
}

/**
 * How far an edge dips inside the circle between ends that lie da and db outside it. Heron-free: with ends at radii
 * ra and rb the squared radius along the edge is a parabola with leading coefficient 1, so its least value is exact.
 */
function deepestOfEdgeMm(edge: number, da: number, db: number, radius: number): number {
  const ra = radius + da;
  const rb = radius + db;
  const t = (edge * edge + (da - db) * (ra + rb)) / 2 / edge;
  if (!(t > 0 && t < edge)) return 0;
  // r^2 at the foot = ra^2 - t^2; r - R = da - t^2 / (ra + sqrt(ra^2 - t^2)), free of cancellation.
  return (t * t) / (ra + Math.sqrt(Math.max(0, ra * ra - t * t))) - da;
}
