import { arcOf, pointOnArc, sides } from '../measure/arc.ts';
import type { Contour, Placement, Point, Vertex } from '../shapes.ts';
import type { Run } from './sheet-plan.ts';

/** A place on a contour: so far along one of its sides; and the unit direction in which the contour runs there. */
export interface Station {
  readonly side: number;
  readonly share: number;
  readonly at: Point;
  readonly along: Point;
}

/** So many places on a contour, the same way apart, from its first vertex plus half a step. */
export function placeStations(contour: Contour, count: number): Station[] {
  const lengths = sides(contour).map(([a, b]) => sideLengthMm(a, b));
  const total = lengths.reduce((sum, mm) => sum + mm, 0);
  const stations: Station[] = [];
  let [side, before] = [0, 0];
  for (let i = 0; i < count; i++) {
    const mm = ((i + 0.5) / count) * total;
    while (side < lengths.length - 1 && before + lengths[side]! < mm) before += lengths[side++]!;
    stations.push(stationAt(contour, side, lengths[side]! > 0 ? Math.min(1, (mm - before) / lengths[side]!) : 0));
  }
  return stations;
}

export function stationAt(contour: Contour, side: number, share: number): Station {
  const [a, b] = sides(contour)[side]!;
  const arc = arcOf(a, b);
  if (arc) {
    const rad = arc.startRad + arc.sweepRad * share;
    const way = arc.sweepRad > 0 ? 1 : -1;
    return { side, share, at: pointOnArc(arc, share), along: { x: -Math.sin(rad) * way, y: Math.cos(rad) * way } };
  }
  const mm = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return {
    side,
    share,
    at: { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share },
    along: { x: (b.x - a.x) / mm, y: (b.y - a.y) / mm },
  };
}

/** The same contour, begun at a place on one of its sides. */
export function startContourAt(contour: Contour, { side, share, at }: Station): Contour {
  const n = contour.length;
  const around = (i: number): Vertex => contour[(side + i) % n]!;
  if (share <= 0) return contour.map((_, i) => around(i));
  if (share >= 1) return contour.map((_, i) => around(i + 1));
  const sweep = 4 * Math.atan(around(0).bulge);
  return [
    { ...at, bulge: Math.tan((sweep * (1 - share)) / 4) },
    ...contour.slice(1).map((_, i) => around(i + 1)),
    { ...around(0), bulge: Math.tan((sweep * share) / 4) },
  ];
}

export function sideLengthMm(a: Vertex, b: Point): number {
  const arc = arcOf(a, b);
  return arc ? arc.radiusMm * Math.abs(arc.sweepRad) : Math.hypot(b.x - a.x, b.y - a.y);
}

/** How far along a contour its vertex of that number lies; the number of its sides gives the whole length. */
export function contourLengthTo(contour: Contour, vertex: number): number {
  let sum = 0;
  for (let i = 0; i < vertex; i++) sum += sideLengthMm(contour[i]!, contour[(i + 1) % contour.length]!);
  return sum;
}

export function runLengthMm(run: Run): number {
  let sum = 0;
  for (let i = 0; i + 1 < run.length; i++) sum += sideLengthMm(run[i]!, run[i + 1]!);
  return sum;
}

/** Vertices moved rigidly, as placeRing moves points; bulges stay. */
export function placeVertices(vertices: readonly Vertex[], at: Placement): Vertex[] {
  const rad = (at.turnDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(rad), Math.sin(rad)];
  return vertices.map((p) => ({ x: p.x * c + p.y * s + at.x, y: p.y * c - p.x * s + at.y, bulge: p.bulge }));
}

/** A run as points, no farther apart than the step. */
export function sampleRun(run: Run, stepMm: number): Point[] {
  const points: Point[] = run[0] ? [{ x: run[0].x, y: run[0].y }] : [];
  for (let i = 0; i + 1 < run.length; i++) {
    const [a, b] = [run[i]!, run[i + 1]!];
    const arc = arcOf(a, b);
    const pieces = Math.max(1, Math.ceil(sideLengthMm(a, b) / stepMm));
    for (let k = 1; k <= pieces; k++) {
      const share = k / pieces;
      points.push(arc ? pointOnArc(arc, share) : { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
    }
  }
  return points;
}

/** A contour, all the way round, as a run. */
export function closeRun(contour: Contour): Run {
  return contour[0] ? [...contour, { ...contour[0], bulge: 0 }] : [];
}
