import type { Outline, PathCommand, Point, Ring } from '../shapes.ts';
import { NO_HANDLE_SHARE } from '../units.ts';

/**
 * Closed polylines to smooth outlines of lines and cubic curves (after P. J. Schneider, "An Algorithm for Automatically
 * Fitting Digitized Curves", Graphics Gems, 1990).
 *
 * In: rings, the greatest distance a point may lie off its curve, the turn in degrees that counts as a corner.
 * Out: one subpath for each ring, going the same way round; corners and straight edges stay exactly where they are.
 * Rings of fewer than three points draw nothing. Where the points come from pixels, one point's turn says little:
 * `around` is how far before and after a point its turn is looked for.
 */
export function fitCurves(rings: readonly Ring[], maxError: number, cornerDeg: number, around = 0): Outline {
  return rings.flatMap((ring) => (ring.length < 3 ? [] : fitRing(ring, maxError, cornerDeg, around)));
}

function fitRing(given: Ring, maxError: number, cornerDeg: number, around: number): PathCommand[] {
  const ring = withoutNoise(given, maxError);
  const n = ring.length;
  if (n < 3) return [];
  const at = (i: number): Point => ring[((i % n) + n) % n]!;
  const edge = ring.map((p, i) => minus(at(i + 1), p));
  const long = edge.map(length);
  // An edge much longer than all near it was straight in the drawing: it stays a line, exactly.
  const near = (i: number): number[] => [1, 2, 3, 4].flatMap((k) => [long[(i + n * 4 - k) % n]!, long[(i + k) % n]!]);
  const straight = long.map((l, i) => n > 8 && l > STRAIGHT * Math.max(...near(i)));
  const limit = Math.cos((cornerDeg * Math.PI) / 180);
  const corner =
    around > 0
      ? sharpest(ring, long, around, limit)
      : edge.map((e, i) => dot(unit(edge[(i + n - 1) % n]!), unit(e)) < limit);
  const breaks = ring.flatMap((_, i) => (corner[i] || straight[i] || straight[(i + n - 1) % n] ? [i] : []));
  const first = breaks[0] ?? 0;
  const ends = [...(breaks.length > 0 ? breaks : [0]), first + n];
  const out: PathCommand[] = [{ type: 'M', x: at(first).x, y: at(first).y }];
  /** Which way the line leaves point i, or arrives at it (backwards): along a straight edge that runs into it smoothly. */
  const leaving = (i: number): Point | undefined =>
    !corner[i % n] && straight[(i + n - 1) % n] ? unit(edge[(i + n - 1) % n]!) : undefined;
  const arriving = (i: number): Point | undefined =>
    !corner[i % n] && straight[i % n] ? scale(unit(edge[i % n]!), -1) : undefined;
  const across = unit(minus(at(first + 1), at(first - 1)));
  for (let k = 0; k + 1 < ends.length; k++) {
    const [i, j] = [ends[k]!, ends[k + 1]!];
    const run = withMiddles(Array.from({ length: j - i + 1 }, (_, m) => at(i + m)));
    const from =
      breaks.length === 0 ? across : (leaving(i) ?? endTangent(at(i), at(i + 1), j - i > 1 ? at(i + 2) : undefined));
    const to =
      breaks.length === 0
        ? scale(across, -1)
        : (arriving(j) ?? endTangent(at(j), at(j - 1), j - i > 1 ? at(j - 2) : undefined));
    if (j - i === 1) out.push({ type: 'L', x: at(j).x, y: at(j).y });
    else fitRun(run, from, to, maxError, out);
  }
  out.push({ type: 'Z' });
  return out;
}

/** Corners by the turn between what lies so far before a point and so far after it; of several near each other the sharpest. */
function sharpest(ring: Ring, long: readonly number[], around: number, limit: number): boolean[] {
  const n = ring.length;
  const reach = (i: number, way: 1 | -1): { at: number; far: number } => {
    let [far, k] = [0, i];
    for (let steps = 0; far < around && steps < n >> 1; steps++) {
      const edge = way > 0 ? k : (k + n - 1) % n;
      far += long[edge]!;
      k = (k + way + n) % n;
    }
    return { at: k, far };
  };
  const turn = ring.map((p, i) => {
    const [back, on] = [ring[reach(i, -1).at]!, ring[reach(i, 1).at]!];
    return dot(unit(minus(p, back)), unit(minus(on, p)));
  });
  return turn.map((cos, i) => {
    if (cos >= limit) return false;
    for (const way of [1, -1] as const) {
      let [far, k] = [0, i];
      for (let steps = 0; steps < n; steps++) {
        far += long[way > 0 ? k : (k + n - 1) % n]!;
        k = (k + way + n) % n;
        if (far > around || k === i) break;
        if (turn[k]! < cos || (turn[k] === cos && k < i)) return false;
      }
    }
    return true;
  });
}

const STRAIGHT = 4;

/** Without points that hardly leave the line, and without edges so short that their direction is chance. */
function withoutNoise(ring: Ring, maxError: number): Point[] {
  const out: Point[] = [];
  ring.forEach((p, i) => {
    const before = out.at(-1) ?? ring.at(-1)!;
    const next = ring[(i + 1) % ring.length]!;
    const [back, whole] = [minus(p, before), minus(next, before)];
    const reach = length(whole);
    const off = reach === 0 ? length(back) : Math.abs(back.x * whole.y - back.y * whole.x) / reach;
    if (off > maxError * 0.02 && length(back) > maxError) out.push(p);
  });
  return out;
}

/** A point in the middle of each edge too, so that no curve leaves the line between its points. */
function withMiddles(run: readonly Point[]): Point[] {
  return run.flatMap((p, i) => {
    const next = run[i + 1];
    return next ? [p, { x: (p.x + next.x) / 2, y: (p.y + next.y) / 2 }] : [p];
  });
}

/** Direction at a of the circle through a, b and c; of the line a b where there is no third point. */
function endTangent(a: Point, b: Point, c: Point | undefined): Point {
  const ab = minus(b, a);
  if (!c) return unit(ab);
  const bc = minus(c, b);
  const turn = Math.atan2(ab.x * bc.y - ab.y * bc.x, dot(ab, bc));
  if (Math.abs(turn) > Math.PI / 3) return unit(ab);
  // Chords of a circle turn by half the arc on each side: the tangent leads the first chord by half its own arc.
  const lead = (-turn * length(ab)) / Math.max(length(ab) + length(bc), Number.MIN_VALUE);
  return unit({
    x: ab.x * Math.cos(lead) - ab.y * Math.sin(lead),
    y: ab.x * Math.sin(lead) + ab.y * Math.cos(lead),
  });
}

/** Appends what takes the pen from the run's first point to its last. */
function fitRun(run: readonly Point[], from: Point, to: Point, maxError: number, out: PathCommand[]): void {
  const last = run.at(-1)!;
  if (run.length === 2 || isStraight(run, maxError / 4)) {
    out.push({ type: 'L', x: last.x, y: last.y });
    return;
  }
  let u = chordShares(run);
  let worst = { at: run.length >> 1, error: Infinity };
  for (let round = 0; round < 5; round++) {
    const curve = bestCubic(run, u, from, to);
    worst = worstPoint(run, u, curve);
    if (worst.error <= maxError) {
      out.push({ type: 'C', x1: curve[1].x, y1: curve[1].y, x2: curve[2].x, y2: curve[2].y, x: last.x, y: last.y });
      return;
    }
    if (worst.error > 16 * maxError) break;
    u = u.map((t, i) => nearer(curve, run[i]!, t));
  }
  const cut = Math.min(run.length - 2, Math.max(1, worst.at));
  const middle = unit(minus(run[cut - 1]!, run[cut + 1]!));
  fitRun(run.slice(0, cut + 1), from, middle, maxError, out);
  fitRun(run.slice(cut), scale(middle, -1), to, maxError, out);
}

type Cubic = readonly [Point, Point, Point, Point];

/** The least-squares cubic with the given end directions. */
function bestCubic(run: readonly Point[], u: readonly number[], from: Point, to: Point): Cubic {
  const [a, d] = [run[0]!, run.at(-1)!];
  let [c00, c01, c11, x0, x1] = [0, 0, 0, 0, 0];
  run.forEach((p, i) => {
    const t = u[i]!;
    const s = 1 - t;
    const [b0, b1, b2, b3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
    const [a0, a1] = [scale(from, b1), scale(to, b2)];
    const rest = { x: p.x - a.x * (b0 + b1) - d.x * (b2 + b3), y: p.y - a.y * (b0 + b1) - d.y * (b2 + b3) };
    c00 += dot(a0, a0);
    c01 += dot(a0, a1);
    c11 += dot(a1, a1);
    x0 += dot(a0, rest);
    x1 += dot(a1, rest);
  });
  const det = c00 * c11 - c01 * c01;
  const chord = length(minus(d, a));
  let left = det === 0 ? 0 : (x0 * c11 - x1 * c01) / det;
  let right = det === 0 ? 0 : (c00 * x1 - c01 * x0) / det;
  const least = NO_HANDLE_SHARE * chord;
  // Handles that vanish or run wild make loops: a third of the chord each is the fall-back of the paper.
  if (!(left > least) || !(right > least) || left > 4 * chord || right > 4 * chord) left = right = chord / 3;
  return [a, plus(a, scale(from, left)), plus(d, scale(to, right)), d];
}

function worstPoint(run: readonly Point[], u: readonly number[], curve: Cubic): { at: number; error: number } {
  let worst = { at: run.length >> 1, error: 0 };
  for (let i = 1; i + 1 < run.length; i++) {
    const error = length(minus(pointAt(curve, u[i]!), run[i]!));
    if (error > worst.error) worst = { at: i, error };
  }
  return worst;
}

/** One step of Newton's towards the parameter of the curve's point nearest to p. */
function nearer(curve: Cubic, p: Point, t: number): number {
  const [a, b, c, d] = curve;
  const s = 1 - t;
  const off = minus(pointAt(curve, t), p);
  const first = {
    x: 3 * (s * s * (b.x - a.x) + 2 * s * t * (c.x - b.x) + t * t * (d.x - c.x)),
    y: 3 * (s * s * (b.y - a.y) + 2 * s * t * (c.y - b.y) + t * t * (d.y - c.y)),
  };
  const second = {
    x: 6 * (s * (c.x - 2 * b.x + a.x) + t * (d.x - 2 * c.x + b.x)),
    y: 6 * (s * (c.y - 2 * b.y + a.y) + t * (d.y - 2 * c.y + b.y)),
  };
  const slope = dot(first, first) + dot(off, second);
  return slope === 0 ? t : Math.min(1, Math.max(0, t - dot(off, first) / slope));
}

function pointAt([a, b, c, d]: Cubic, t: number): Point {
  const s = 1 - t;
  const [b0, b1, b2, b3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return { x: a.x * b0 + b.x * b1 + c.x * b2 + d.x * b3, y: a.y * b0 + b.y * b1 + c.y * b2 + d.y * b3 };
}

function chordShares(run: readonly Point[]): number[] {
  const along = [0];
  for (let i = 1; i < run.length; i++) along.push(along[i - 1]! + length(minus(run[i]!, run[i - 1]!)));
  const whole = along.at(-1)!;
  return along.map((v) => (whole === 0 ? 0 : v / whole));
}

function isStraight(run: readonly Point[], within: number): boolean {
  const [a, b] = [run[0]!, run.at(-1)!];
  const along = unit(minus(b, a));
  if (along.x === 0 && along.y === 0) return false;
  return run.every((p) => Math.abs((p.x - a.x) * along.y - (p.y - a.y) * along.x) <= within);
}

function plus(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

function scale(a: Point, by: number): Point {
  return { x: a.x * by, y: a.y * by };
}

function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

function length(a: Point): number {
  return Math.hypot(a.x, a.y);
}

function unit(a: Point): Point {
  const l = length(a);
  return l === 0 ? { x: 0, y: 0 } : { x: a.x / l, y: a.y / l };
}
