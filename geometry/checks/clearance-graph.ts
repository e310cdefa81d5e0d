import Delaunator from 'delaunator';
import type { Point, Region, Ring } from '../shapes.ts';
import { ROUNDING } from '../units.ts';

/**
 * Free width everywhere between the contours of a plate, by another road than the one that made it: no offsets, no
 * booleans. The contours are sampled densely; the Delaunay triangulation of the samples gives the Voronoi graph,
 * whose vertices are the points locally farthest from all contours (clearance = the circumradius) and whose edges are
 * the ways between them. What is joined by ways of clearance r or more is what stays joined when shrunk by r.
 *
 * Sampled every stepMm, a clearance r is overestimated by at most sqrt(r^2 + stepMm^2 / 4) - r; `widthAcross` takes
 * the contours' own edges instead and is exact.
 */
export interface ClearanceGraph {
  /** Sample coordinates, x and y in turn, mm. */
  readonly xy: Float64Array;
  /** Number of the contour a sample lies on; 0 is the rim. */
  readonly contour: Int32Array;
  /** Distance of the sample along its contour from the contour's start, mm. */
  readonly along: Float64Array;
  readonly contourLength: readonly number[];
  /** Samples of contour c are start[c] up to start[c + 1], in order around it. */
  readonly start: readonly number[];
  readonly triangles: Uint32Array;
  readonly halfedges: Int32Array;
  /** Circumcentre of each triangle and its clearance. */
  readonly cx: Float64Array;
  readonly cy: Float64Array;
  readonly clearance: Float64Array;
  /** The rings by contour number. */
  readonly rings: readonly Ring[];
  /** Opening that a contour bounds; -1 for the rim. */
  readonly openingOf: readonly number[];
}

export function clearanceGraph(diameterMm: number, openings: readonly Region[], stepMm: number): ClearanceGraph {
  const rings: Ring[] = [rimRing(diameterMm, openings, stepMm)];
  const openingOf: number[] = [-1];
  openings.forEach((region, i) => {
    for (const ring of [region.outer, ...region.holes]) {
      rings.push(ring);
      openingOf.push(i);
    }
  });
  const parts = rings.map((ring, c) =>
    ring.map((a, i) => {
      const b = ring[(i + 1) % ring.length]!;
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      return { a, b, length, n: c === 0 ? 1 : Math.max(1, Math.ceil(length / stepMm)) };
    }),
  );
  const total = parts.reduce((sum, ring) => ring.reduce((n, part) => n + part.n, sum), 0);
  const xy = new Float64Array(2 * total);
  const contour = new Int32Array(total);
  const along = new Float64Array(total);
  const start: number[] = [];
  const contourLength: number[] = [];
  let s = 0;
  parts.forEach((ring, c) => {
    start.push(s);
    let run = 0;
    for (const { a, b, length, n } of ring) {
      for (let k = 0; k < n; k++, s++) {
        xy[2 * s] = a.x + ((b.x - a.x) * k) / n;
        xy[2 * s + 1] = a.y + ((b.y - a.y) * k) / n;
        contour[s] = c;
        along[s] = run + (length * k) / n;
      }
      run += length;
    }
    contourLength.push(run);
  });
  start.push(total);
  const { triangles, halfedges } = new Delaunator(xy);
  const count = triangles.length / 3;
  const [cx, cy, clearance] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  for (let t = 0; t < count; t++) {
    const [i, j, k] = [triangles[3 * t]! * 2, triangles[3 * t + 1]! * 2, triangles[3 * t + 2]! * 2];
    const [ax, ay] = [xy[i]!, xy[i + 1]!];
    const [dx, dy, ex, ey] = [xy[j]! - ax, xy[j + 1]! - ay, xy[k]! - ax, xy[k + 1]! - ay];
    const [bl, cl, d] = [dx * dx + dy * dy, ex * ex + ey * ey, 0.5 / (dx * ey - dy * ex)];
    const [x, y] = [(ey * bl - dy * cl) * d, (dx * cl - ex * bl) * d];
    cx[t] = ax + x;
    cy[t] = ay + y;
    // Flat triangles on the hull have no centre to speak of: nothing passes there.
    clearance[t] =
      Number.isFinite(x) && Number.isFinite(y) && Math.hypot(cx[t]!, cy[t]!) < diameterMm / 2 ? Math.hypot(x, y) : 0;
  }
  return {
    xy,
    contour,
    along,
    start,
    contourLength,
    triangles,
    halfedges,
    cx,
    cy,
    clearance,
    rings,
    openingOf,
  };
}

/** Least clearance on the way across a half-edge, from its triangle to the neighbour; 0 at the hull. */
export function clearanceAcross(g: ClearanceGraph, halfedge: number): number {
  const twin = g.halfedges[halfedge]!;
  if (twin < 0) return 0;
  const [t, u] = [Math.floor(halfedge / 3), Math.floor(twin / 3)];
  const [i, j] = halfedgeEnds(g, halfedge);
  const [ax, ay, bx, by] = [g.xy[2 * i]!, g.xy[2 * i + 1]!, g.xy[2 * j]!, g.xy[2 * j + 1]!];
  const side = (x: number, y: number) => (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  const opposite = side(g.cx[t]!, g.cy[t]!) > 0 !== side(g.cx[u]!, g.cy[u]!) > 0;
  return opposite ? Math.hypot(bx - ax, by - ay) / 2 : Math.min(g.clearance[t]!, g.clearance[u]!);
}

/**
 * Least clearance on the way across a half-edge, measured on the contours' edges next to the samples: at the middle
 * of the pair where the way squeezes between them, else at its narrower end.
 */
export function exactClearanceAcross(g: ClearanceGraph, halfedge: number): number {
  const twin = g.halfedges[halfedge]!;
  if (twin < 0) return 0;
  const [i, j] = halfedgeEnds(g, halfedge);
  const half = Math.hypot(g.xy[2 * j]! - g.xy[2 * i]!, g.xy[2 * j + 1]! - g.xy[2 * i + 1]!) / 2;
  if (Math.abs(clearanceAcross(g, halfedge) - half) <= ROUNDING) {
    const [x, y] = [(g.xy[2 * i]! + g.xy[2 * j]!) / 2, (g.xy[2 * i + 1]! + g.xy[2 * j + 1]!) / 2];
    return exactClearance(g, x, y, [i, j]);
  }
  const centre = (t: number) => exactClearance(g, g.cx[t]!, g.cy[t]!, [...g.triangles.subarray(3 * t, 3 * t + 3)]);
  return Math.min(centre(Math.floor(halfedge / 3)), centre(Math.floor(twin / 3)));
}

/** Distance of a point from the contours' edges that meet at the given samples. */
function exactClearance(g: ClearanceGraph, x: number, y: number, samples: readonly number[]): number {
  let least = Infinity;
  for (const s of samples) for (const n of neighbours(g, s)) least = Math.min(least, pointToEdge(g, x, y, s, n));
  return least;
}

/** Distance between the contours' edges that meet at the two samples: the true width of the gap between them. */
export function widthAcross(g: ClearanceGraph, i: number, j: number): number {
  const [before, after] = [neighbours(g, i), neighbours(g, j)];
  let least = Infinity;
  for (const p of before) {
    for (const q of after) {
      least = Math.min(
        least,
        toSegment(g, i, j, q),
        toSegment(g, p, j, q),
        toSegment(g, j, i, p),
        toSegment(g, q, i, p),
      );
    }
  }
  return least;
}

/** The samples before and after one on its contour. */
function neighbours(g: ClearanceGraph, i: number): [number, number] {
  const c = g.contour[i]!;
  const [from, to] = [g.start[c]!, g.start[c + 1]!];
  return [i === from ? to - 1 : i - 1, i + 1 === to ? from : i + 1];
}

/** Distance of sample p from the edge between samples a and b. */
function toSegment(g: ClearanceGraph, p: number, a: number, b: number): number {
  return pointToEdge(g, g.xy[2 * p]!, g.xy[2 * p + 1]!, a, b);
}

function pointToEdge(g: ClearanceGraph, x: number, y: number, a: number, b: number): number {
  const [ax, ay] = [g.xy[2 * a]!, g.xy[2 * a + 1]!];
  const [dx, dy] = [g.xy[2 * b]! - ax, g.xy[2 * b + 1]! - ay];
  const [px, py] = [x - ax, y - ay];
  const lengthSq = dx * dx + dy * dy;
  const t = lengthSq === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / lengthSq));
  return Math.hypot(px - t * dx, py - t * dy);
}

/** Samples at the two ends of a half-edge. */
export function halfedgeEnds(g: ClearanceGraph, halfedge: number): [number, number] {
  const next = halfedge % 3 === 2 ? halfedge - 2 : halfedge + 1;
  return [g.triangles[halfedge]!, g.triangles[next]!];
}

/** Opening that holds the point, or -1 where there is metal. By the winding number (Sunday 2001). */
export function openingAt(g: ClearanceGraph, p: Point): number {
  const winding = new Map<number, number>();
  for (let c = 1; c < g.rings.length; c++) {
    const turns = windingNumber(g.rings[c]!, p);
    if (turns !== 0) winding.set(g.openingOf[c]!, (winding.get(g.openingOf[c]!) ?? 0) + turns);
  }
  for (const [opening, turns] of winding) if (turns !== 0) return opening;
  return -1;
}

/** Times the ring runs around the point, counter-clockwise. */
export function windingNumber(ring: Ring, p: Point): number {
  let turns = 0;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const left = (b.x - a.x) * (p.y - a.y) - (p.x - a.x) * (b.y - a.y);
    if (a.y <= p.y) {
      if (b.y > p.y && left > 0) turns++;
    } else if (b.y <= p.y && left < 0) turns--;
    a = b;
  }
  return turns;
}

/** The rim as points: fine only when an opening comes near it. */
function rimRing(diameterMm: number, openings: readonly Region[], stepMm: number): Ring {
  const radius = diameterMm / 2;
  let reach = 0;
  for (const { outer } of openings) for (const p of outer) reach = Math.max(reach, Math.hypot(p.x, p.y));
  const room = Math.max(stepMm, (radius - reach) / 4);
  const n = Math.min(20000, Math.max(64, Math.ceil((Math.PI * diameterMm) / room)));
  return Array.from({ length: n }, (_, i) => {
    const a = (2 * Math.PI * i) / n;
    return { x: radius * Math.cos(a), y: radius * Math.sin(a) };
  });
}
