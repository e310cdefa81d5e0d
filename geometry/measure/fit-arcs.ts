/**
 * Closed polyline to the few lines and arcs it was meant as.
 *
 * In: a ring whose points lie on curves or straight edges (flattened, then through boolean operations on a grid, so that
 * near-collinear points and tiny edges occur). Out: a contour through some of the ring's own points, going the same way
 * round; no point or edge of the ring is farther than maxErrorMm from it, nor the other way round. A ring that is a circle
 * becomes two half circles of the true circle. Not promised: arcs that meet without a kink (the kink is as small as the
 * error makes it).
 *
 * 1. Noise of the grid is dropped: points closer together, or nearer to a straight line, than a fiftieth of the error.
 * 2. The ring is split where it must be: at corners that no arc within the error can round, and at the ends of long edges
 *    beside short ones, which are straight sides and stay lines exactly.
 * 3. Each run between splits is cut into the fewest arcs through its points: greedy from both ends gives the count and the
 *    window in which each cut may lie; in those windows the cuts with the least squared error are chosen.
 */
import type { Contour, Point, Ring, Vertex } from '../shapes.ts';
import { fitRun } from './arc-run.ts';
import { splitRun } from './split-run.ts';
import { signedAreaMm2 } from './ring.ts';
import { wholeCircle } from './whole-circle.ts';

/** Share of the error that the dropping of grid noise may use; the arcs get the rest. */
const NOISE_SHARE = 0.02;

/** Turns that would take a chord this many errors off its curve are corners: flattening never makes them. */
const CORNER_ERRORS = 1.5;

/** An edge this many times longer than both its neighbours was straight in the drawing. */
const STRAIGHT_EDGE_RATIO = 4;

/** The contour of lines and arcs; empty for a ring that encloses nothing. */
export function fitArcs(ring: Ring, maxErrorMm: number): Contour {
  if (!(maxErrorMm > 0)) throw new RangeError(`maxErrorMm must be above 0, not ${maxErrorMm}`);
  for (const p of ring) {
    if (!Number.isFinite(p.x) || !Number.isFinite(p.y)) throw new RangeError(`ring has a point at ${p.x}, ${p.y}`);
  }
  const points = withoutNoise(ring, maxErrorMm * NOISE_SHARE);
  if (points.length < 3 || signedAreaMm2(points) === 0) return [];
  const error = maxErrorMm * (1 - NOISE_SHARE);
  const circle = wholeCircle(points, error);
  if (circle) return circle;
  const splits = splitsOf(points, error);
  return splits.length === 0 ? fitSmooth(points, error) : fitBetween(points, splits, error);
}

/** A ring with no corner may begin anywhere: of the starts in the first arc, the one that needs the fewest arcs. */
function fitSmooth(points: readonly Point[], error: number): Contour {
  const n = points.length;
  const twice = [...points, ...points];
  let first = 1;
  while (first < n - 1 && fitRun(twice, 0, first + 1, error)) first++;
  let best: readonly Vertex[] = [];
  let bestError = Infinity;
  for (let start = 0; start < first; start++) {
    const run = twice.slice(start, start + n + 1);
    const cut = splitRun(run, error);
    if (
      best.length === 0 ||
      cut.vertices.length < best.length ||
      (cut.vertices.length === best.length && cut.squaredError < bestError)
    ) {
      best = cut.vertices;
      bestError = cut.squaredError;
    }
  }
  return best;
}

function fitBetween(points: readonly Point[], splits: readonly number[], error: number): Contour {
  const n = points.length;
  const twice = [...points, ...points];
  const out: Vertex[] = [];
  splits.forEach((from, i) => {
    const next = splits[i + 1] ?? splits[0]! + n;
    out.push(...splitRun(twice.slice(from, next + 1), error).vertices);
  });
  return out;
}

/** Indices of corners and of both ends of straight sides, in order. */
function splitsOf(points: readonly Point[], error: number): number[] {
  const n = points.length;
  const at = (i: number) => points[(i + n) % n]!;
  const lengths = points.map((p, i) => Math.hypot(at(i + 1).x - p.x, at(i + 1).y - p.y));
  const splits = new Set<number>();
  for (let i = 0; i < n; i++) {
    const before = lengths[(i + n - 1) % n]!;
    const here = lengths[i]!;
    const after = lengths[(i + 1) % n]!;
    if ((Math.min(before, here) * Math.abs(turnRad(at(i - 1), at(i), at(i + 1)))) / 8 > CORNER_ERRORS * error)
      splits.add(i);
    if (here > STRAIGHT_EDGE_RATIO * before && here > STRAIGHT_EDGE_RATIO * after) {
      splits.add(i);
      splits.add((i + 1) % n);
    }
  }
  return [...splits].sort((a, b) => a - b);
}

function turnRad(a: Point, b: Point, c: Point): number {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

/** Drops points nearer to the one kept before than noiseMm, and points that lie on the line between kept ones to noiseMm. */
function withoutNoise(ring: Ring, noiseMm: number): Point[] {
  const apart: Point[] = [];
  for (const p of ring) {
    const last = apart[apart.length - 1];
    if (!last || Math.hypot(p.x - last.x, p.y - last.y) > noiseMm) apart.push(p);
  }
  while (apart.length > 1 && Math.hypot(apart[0]!.x - apart.at(-1)!.x, apart[0]!.y - apart.at(-1)!.y) <= noiseMm)
    apart.pop();
  const n = apart.length;
  if (n < 4) return apart;
  // Begin at the point that turns most, so that the beginning itself never lies within a straight side.
  let start = 0;
  let most = -1;
  for (let i = 0; i < n; i++) {
    const turn = Math.abs(turnRad(apart[(i + n - 1) % n]!, apart[i]!, apart[(i + 1) % n]!));
    if (turn > most) [start, most] = [i, turn];
  }
  const out: Point[] = [];
  let i = 0;
  while (i < n) {
    const from = apart[(start + i) % n]!;
    out.push(from);
    let j = i + 1;
    while (j < n && lineCovers(apart, start + i, start + j + 1, noiseMm)) j++;
    i = j;
  }
  return out;
}

/** True when the points between lie on the segment from - to, going forward, to noiseMm. */
function lineCovers(points: readonly Point[], from: number, to: number, noiseMm: number): boolean {
  const n = points.length;
  const a = points[from % n]!;
  const b = points[to % n]!;
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length === 0) return false;
  const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
  let along = 0;
  for (let k = from + 1; k < to; k++) {
    const p = points[k % n]!;
    const [x, y] = [p.x - a.x, p.y - a.y];
    const u = x * ux + y * uy;
    if (Math.abs(y * ux - x * uy) > noiseMm || u < along || u > length) return false;
    along = u;
  }
  return true;
}
