import { nearestOnSegment } from '../measure/distance.ts';
import { castRay, type EdgeGrid } from '../measure/edge-grid.ts';
import { centroid, perimeterMm, ringHolds } from '../measure/ring.ts';
import type { Point } from '../shapes.ts';
import type { Piece } from './find-pieces.ts';

/**
 * Bars are tried at this many places around an island, or at a multiple of it that keeps them about a width apart:
 * a number with many divisors, so that bars spread along a long edge find places evenly apart.
 */
const PLACES = 48;
const ROUND_PLACES = 240;
const MOST_PLACES = 720;

/** Upright and level: the ways a bar looks right. */
export const AXES: readonly Point[] = [
  { x: 0, y: 1 },
  { x: 0, y: -1 },
  { x: 1, y: 0 },
  { x: -1, y: 0 },
];

/** A place on a piece's edge where a bar may start. */
export interface EdgePlace {
  readonly at: Point;
  /** Unit direction out of the piece. */
  readonly out: Point;
  /** Distance along the edge from its start, mm. */
  readonly along: number;
}

/** Evenly spaced places along the piece's edge, about a bridge's width apart, the first at its top. */
export function placesAlong(piece: Piece, widthMm: number): EdgePlace[] {
  const ring = piece.edge;
  const around = perimeterMm(ring);
  const wanted = around / widthMm;
  const unit = wanted > ROUND_PLACES ? ROUND_PLACES : PLACES;
  const count = Math.min(MOST_PLACES, unit * Math.max(1, Math.round(wanted / unit)));
  const step = around / count;
  const top = alongAt(piece, { x: piece.at.x, y: piece.at.y + around });
  const places: EdgePlace[] = [];
  let along = 0;
  let next = top % step;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length > 0) {
      const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
      for (; next < along + length && places.length < count; next += step) {
        const t = next - along;
        places.push({ at: { x: a.x + ux * t, y: a.y + uy * t }, out: { x: -uy, y: ux }, along: next });
      }
    }
    along += length;
    a = b;
  }
  return places;
}

/** Where the upright and the level line through the island's middle leave it: the places a type designer looks first. */
export function placesOnAxes(piece: Piece, middle: Point, shrunk: EdgeGrid): EdgePlace[] {
  const places: EdgePlace[] = [];
  for (const axis of AXES) {
    const hit = castRay(shrunk, middle, axis.x, axis.y).find((h) => h.owner === piece.id);
    if (!hit) continue;
    const at = { x: middle.x + axis.x * hit.at, y: middle.y + axis.y * hit.at };
    places.push({ at, out: axis, along: alongAt(piece, at) });
  }
  return places;
}

/** The island's centre of area, which the eye takes for its middle; where that lies outside it, a point well inside. */
export function middleOf(piece: Piece): Point {
  const centre = centroid(piece.edge);
  return ringHolds(piece.edge, centre) ? centre : piece.at;
}

/** Distance along the edge of the point of it nearest to p. */
export function alongAt(piece: Piece, p: Point): number {
  let best = { mm: Infinity, along: 0 };
  let along = 0;
  let a = piece.edge[piece.edge.length - 1]!;
  for (const b of piece.edge) {
    const q = nearestOnSegment(p, a, b);
    const mm = Math.hypot(q.x - p.x, q.y - p.y);
    if (mm < best.mm) best = { mm, along: along + Math.hypot(q.x - a.x, q.y - a.y) };
    along += Math.hypot(b.x - a.x, b.y - a.y);
    a = b;
  }
  return best.along;
}
