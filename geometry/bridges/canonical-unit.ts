import { joinBoxes, ringBox } from '../measure/ring.ts';
import type { Point, Region, Ring } from '../shapes.ts';
import { GRID_MM, LEANING_MOMENT } from '../units.ts';
import type { HandEdits } from './hand-edits.ts';

/** Openings as they are solved, and the way back into the frame they were given in. */
export interface CanonicalUnit {
  readonly regions: readonly Region[];
  readonly edits: HandEdits;
  readonly home: Motion;
}

/** A shift, with a mirroring left to right where the unit was mirrored; rings keep their winding. */
export interface Motion {
  readonly point: (p: Point) => Point;
  readonly ring: (ring: Ring) => Ring;
}

/**
 * The one form in which a drawing, the drawing shifted, mirrored left to right or listed in another order are all
 * solved: the very same numbers go in, so the very same bridges come out, but for that motion.
 *
 * In: openings of a unit and the edits on it, mm. Out: the openings from the corner of their box on, on the clipping
 * grid; of the drawing and its mirror image the one that is heavier to the right (of two that weigh the same, the one
 * whose list of points comes first); rings from their first point on, in order.
 */
export function canonicalUnit(drawn: readonly Region[], edits: HandEdits): CanonicalUnit {
  const box = joinBoxes(drawn.map((r) => ringBox(r.outer)));
  const wide = Math.round((box.maxX - box.minX) / GRID_MM);
  const steps = drawn.map((r) => mapRegion(r, (p) => toSteps(p, box.minX, box.minY)));
  const asDrawn = sortRegions(steps);
  const weight = thirdMoment(asDrawn, wide);
  const flip = (p: Point) => ({ x: wide - p.x, y: p.y });
  const image = weight > LEANING_MOMENT ? asDrawn : sortRegions(steps.map((r) => mapRegion(r, flip, true)));
  const mirrors = weight < -LEANING_MOMENT || (weight <= LEANING_MOMENT && compareRegions(image, asDrawn) < 0);
  const chosen = mirrors ? image : asDrawn;
  const widthMm = wide * GRID_MM;
  const there = (p: Point) => ({ x: mirrors ? widthMm - (p.x - box.minX) : p.x - box.minX, y: p.y - box.minY });
  const home = (p: Point) => ({ x: box.minX + (mirrors ? widthMm - p.x : p.x), y: box.minY + p.y });
  return {
    regions: chosen.map((r) => mapRegion(r, (p) => ({ x: p.x * GRID_MM, y: p.y * GRID_MM }))),
    edits: {
      keeps: edits.keeps.map((keep) => ({ ...keep, from: there(keep.from), to: there(keep.to) })),
      drops: edits.drops.map((drop) => ({ ...drop, at: there(drop.at) })),
    },
    home: { point: home, ring: (ring) => turnIf(ring.map(home), mirrors) },
  };
}

/** Third moment of the area about the upright through the box's middle, the box taken as 2 wide and its height as 1. */
function thirdMoment(regions: readonly Region[], wide: number): number {
  let sum = 0;
  let high = 1;
  for (const ring of regions.flatMap((r) => [r.outer, ...r.holes])) {
    let p = ring[ring.length - 1]!;
    for (const q of ring) {
      const [a, b] = [(2 * p.x) / wide - 1, (2 * q.x) / wide - 1];
      // Green: the integral of x^3 over the area is that of x^4 / 4 dy along its edge.
      sum += ((q.y - p.y) * (a ** 4 + a ** 3 * b + a * a * b * b + a * b ** 3 + b ** 4)) / 20;
      high = Math.max(high, q.y);
      p = q;
    }
  }
  return sum / high;
}

function toSteps(p: Point, left: number, low: number): Point {
  return { x: Math.round((p.x - left) / GRID_MM), y: Math.round((p.y - low) / GRID_MM) };
}

function mapRegion(region: Region, move: (p: Point) => Point, mirrors = false): Region {
  const ring = (r: Ring) => turnIf(r.map(move), mirrors);
  return { outer: ring(region.outer), holes: region.holes.map(ring) };
}

/** A mirror reverses the winding: run the other way round, the ring has its own again. */
function turnIf(ring: Point[], mirrors: boolean): Ring {
  return mirrors ? ring.reverse() : ring;
}

function sortRegions(regions: readonly Region[]): Region[] {
  return regions
    .map((r) => ({ outer: beginAtFirst(r.outer), holes: r.holes.map(beginAtFirst).sort(compareRings) }))
    .sort((p, q) => compareRings(p.outer, q.outer));
}

/** The ring begun at its leftmost, lowest point; where it passes there twice, at the pass that goes on leftmost. */
function beginAtFirst(ring: Ring): Ring {
  const n = ring.length;
  let first = 0;
  for (let i = 1; i < n; i++) {
    let [k, order] = [0, 0];
    while (k < n && (order = compare(ring[(i + k) % n]!, ring[(first + k) % n]!)) === 0) k++;
    if (order < 0) first = i;
  }
  return [...ring.slice(first), ...ring.slice(0, first)];
}

function compareRegions(p: readonly Region[], q: readonly Region[]): number {
  const rings = (regions: readonly Region[]) => regions.flatMap((r) => [r.outer, ...r.holes]);
  return compareLists(rings(p), rings(q), compareRings);
}

function compareRings(p: Ring, q: Ring): number {
  return compareLists(p, q, compare);
}

function compareLists<T>(p: readonly T[], q: readonly T[], compareOne: (a: T, b: T) => number): number {
  for (let i = 0; i < Math.min(p.length, q.length); i++) {
    const order = compareOne(p[i]!, q[i]!);
    if (order !== 0) return order;
  }
  return p.length - q.length;
}

function compare(p: Point, q: Point): number {
  return p.x - q.x || p.y - q.y;
}
