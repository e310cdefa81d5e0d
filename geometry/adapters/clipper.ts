import ClipperLib from 'clipper-lib';
import type { Path, PolyNode } from 'clipper-lib';
import type { Point, Region, Ring } from '../shapes.ts';
import { spend } from '../measure/counted-work.ts';
import { GRID_MM, ROUND_JOIN_ERROR_MM } from '../units.ts';
import { countClipper } from './count-clipper.ts';

/**
 * Booleans and offsets of polygons, the only importer of clipper-lib.
 *
 * Takes rings in mm (outer counter-clockwise, holes clockwise; for union any direction, filled non-zero) and gives
 * regions in mm on a grid of GRID_MM. Rings with fewer than three points, or thinner than the grid, vanish.
 * Coordinates must stay within 4.7 m of the origin: the library's exact range at this grid.
 */

const SCALE = 1 / GRID_MM;

countClipper(ClipperLib);

/** All area covered by any of the rings, filled non-zero. */
export function union(rings: readonly Ring[]): Region[] {
  return combine(ClipperLib.ClipType.ctUnion, rings, []);
}

/** First area less second. */
export function subtract(subject: readonly Region[], taken: readonly Ring[]): Region[] {
  return combine(ClipperLib.ClipType.ctDifference, ringsOf(subject), taken);
}

/** Area common to both. */
export function intersect(a: readonly Region[], b: readonly Ring[]): Region[] {
  return combine(ClipperLib.ClipType.ctIntersection, ringsOf(a), b);
}

/** Area in one of the two but not in both. */
export function exclusive(a: readonly Region[], b: readonly Region[]): Region[] {
  return combine(ClipperLib.ClipType.ctXor, ringsOf(a), ringsOf(b));
}

/**
 * Grown (positive) or shrunk (negative) by deltaMm with round corners. A grown circle's true outline is missed by at
 * most roundErrorMm, always towards the inside of the round.
 */
export function offset(regions: readonly Region[], deltaMm: number, roundErrorMm = ROUND_JOIN_ERROR_MM): Region[] {
  const grower = new ClipperLib.ClipperOffset(2, roundErrorMm * SCALE);
  grower.AddPaths(ringsOf(regions).map(toPath), ClipperLib.JoinType.jtRound, ClipperLib.EndType.etClosedPolygon);
  const tree = new ClipperLib.PolyTree();
  grower.Execute(tree, deltaMm * SCALE);
  return toRegions(tree);
}

/** How the stroke of a line is finished; names as in SVG 2, 13.5. */
export interface Stroke {
  readonly widthMm: number;
  readonly cap: 'butt' | 'round' | 'square';
  readonly join: 'miter' | 'round' | 'bevel';
  /** Longest mitre as a multiple of the width; longer ones are cut off square. */
  readonly miterLimit?: number;
}

/** The area a stroke covers along lines, open or closed, united. */
export function strokeArea(
  lines: readonly { readonly points: readonly Point[]; readonly closed: boolean }[],
  stroke: Stroke,
): Region[] {
  const { JoinType, EndType } = ClipperLib;
  const grower = new ClipperLib.ClipperOffset(stroke.miterLimit ?? 4, ROUND_JOIN_ERROR_MM * SCALE);
  const join = { miter: JoinType.jtMiter, round: JoinType.jtRound, bevel: JoinType.jtSquare }[stroke.join];
  const end = { butt: EndType.etOpenButt, round: EndType.etOpenRound, square: EndType.etOpenSquare }[stroke.cap];
  for (const { points, closed } of lines) grower.AddPath(toPath(points), join, closed ? EndType.etClosedLine : end);
  const tree = new ClipperLib.PolyTree();
  grower.Execute(tree, (stroke.widthMm / 2) * SCALE);
  return toRegions(tree);
}

/** All area inside the rings, filled even-odd. */
export function evenOdd(rings: readonly Ring[]): Region[] {
  const clipper = new ClipperLib.Clipper();
  clipper.AddPaths(rings.map(toPath), ClipperLib.PolyType.ptSubject, true);
  const tree = new ClipperLib.PolyTree();
  const rule = ClipperLib.PolyFillType.pftEvenOdd;
  clipper.Execute(ClipperLib.ClipType.ctUnion, tree, rule, rule);
  return toRegions(tree);
}

/** Outer rings and holes of regions in one list. */
export function ringsOf(regions: readonly Region[]): Ring[] {
  return regions.flatMap((r) => [r.outer, ...r.holes]);
}

function combine(kind: number, subject: readonly Ring[], clip: readonly Ring[]): Region[] {
  const clipper = new ClipperLib.Clipper();
  clipper.AddPaths(subject.map(toPath), ClipperLib.PolyType.ptSubject, true);
  if (clip.length > 0) clipper.AddPaths(clip.map(toPath), ClipperLib.PolyType.ptClip, true);
  const tree = new ClipperLib.PolyTree();
  const nonZero = ClipperLib.PolyFillType.pftNonZero;
  clipper.Execute(kind, tree, nonZero, nonZero);
  return toRegions(tree);
}

function toPath(ring: Ring): Path {
  spend(ring.length);
  return ring.map((p) => ({ X: Math.round(p.x * SCALE), Y: Math.round(p.y * SCALE) }));
}

function toRing(path: Path): Ring {
  return path.map((p) => ({ x: p.X / SCALE, y: p.Y / SCALE }));
}

function toRegions(tree: PolyNode): Region[] {
  const regions: Region[] = [];
  const walk = (node: PolyNode) => {
    for (const outer of node.Childs()) {
      regions.push({
        outer: toRing(outer.Contour()),
        holes: outer.Childs().map((hole) => toRing(hole.Contour())),
      });
      for (const hole of outer.Childs()) walk(hole);
    }
  };
  walk(tree);
  return regions;
}
