import type { Point, Region } from '../shapes.ts';
import {
  clearanceAcross,
  type ClearanceGraph,
  clearanceGraph,
  exactClearanceAcross,
  openingAt,
  windingNumber,
} from './clearance-graph.ts';

/**
 * The proof, sharing no code with the maker of bridges.
 *
 * In: the plate's diameter, the openings as they will be cut, the least bridge width; mm. Proves:
 * 1. no opening holds another contour: the metal is one piece as it is cut;
 * 2. the metal is still one piece when shrunk by PROOF_SHARE of half the least bridge;
 * 3. no opening leaves the plate.
 * Not proved: that contours do not cross each other (the maker's booleans give clean rings; the written file is
 * judged again by an independent library in the tests).
 */
export interface Proof {
  readonly onePiece: boolean;
  /** Metal that would fall out or hang by too little; a point in each. */
  readonly loose: readonly Point[];
  readonly graph: ClearanceGraph;
}

/** Just under the maker's own share (0.98), so that sampling never accuses what is right. */
const PROOF_SHARE = 0.96;

/** Metal that outgrows the shrinking by less than this share is a bulge of a neck, not a piece. */
const BULGE = 1.1;

/**
 * Samples stand this close, as a share of the shrinking. Less than 2, or ways would lead through the contours;
 * what it makes uncertain (up to SLACK) is measured on the contours' edges themselves.
 */
const STEP_SHARE = 0.8;
const SLACK = Math.hypot(1, STEP_SHARE / 2);

export function verifyPlate(diameterMm: number, openings: readonly Region[], leastBridgeMm: number): Proof {
  const shrinkMm = (PROOF_SHARE * leastBridgeMm) / 2;
  const graph = clearanceGraph(diameterMm, openings, STEP_SHARE * shrinkMm);
  const loose = [...findNested(openings), ...findOutside(diameterMm, openings), ...findPartsBeyondRim(graph, shrinkMm)];
  return { onePiece: loose.length === 0, loose, graph };
}

/** A hole in an opening, or an opening within another, is metal with nothing to hold it. */
function findNested(openings: readonly Region[]): Point[] {
  const holes = openings.flatMap((o) => o.holes.map((h) => h[0]!));
  const boxes = openings.map((o) => boxOf(o.outer));
  const inner = openings.flatMap(({ outer }, i) => {
    const p = outer[0]!;
    const around = openings.some(
      (other, j) => j !== i && boxHolds(boxes[j]!, boxes[i]!) && windingNumber(other.outer, p) !== 0,
    );
    return around ? [p] : [];
  });
  return [...holes, ...inner];
}

type Box = readonly [number, number, number, number];

function boxOf(ring: readonly Point[]): Box {
  const [xs, ys] = [ring.map((p) => p.x), ring.map((p) => p.y)];
  const least = (values: number[]) => values.reduce((a, b) => Math.min(a, b), Infinity);
  const most = (values: number[]) => values.reduce((a, b) => Math.max(a, b), -Infinity);
  return [least(xs), least(ys), most(xs), most(ys)];
}

function boxHolds(outer: Box, inner: Box): boolean {
  return outer[0] <= inner[0] && outer[1] <= inner[1] && outer[2] >= inner[2] && outer[3] >= inner[3];
}

function findOutside(diameterMm: number, openings: readonly Region[]): Point[] {
  return openings.flatMap((o) => o.outer.find((p) => Math.hypot(p.x, p.y) >= diameterMm / 2) ?? []);
}

/** Parts of the shrunk metal other than the largest, by joining Voronoi vertices along wide enough ways. */
function findPartsBeyondRim(g: ClearanceGraph, reach: number): Point[] {
  const count = g.clearance.length;
  const parent = Int32Array.from({ length: count }, (_, i) => i);
  const root = (i: number): number => {
    while (parent[i] !== i) i = parent[i] = parent[parent[i]!]!;
    return i;
  };
  for (let h = 0; h < g.halfedges.length; h++) {
    const twin = g.halfedges[h]!;
    if (twin < h) continue;
    const [t, u] = [Math.floor(h / 3), Math.floor(twin / 3)];
    if (g.clearance[t]! < reach || g.clearance[u]! < reach) continue;
    const way = clearanceAcross(g, h);
    if (way < reach) continue;
    if (way < SLACK * reach && exactClearanceAcross(g, h) < reach) continue;
    parent[root(t)] = root(u);
  }
  const widest = new Map<number, number>();
  const size = new Map<number, number>();
  for (let t = 0; t < count; t++) {
    if (g.clearance[t]! < reach) continue;
    const r = root(t);
    size.set(r, (size.get(r) ?? 0) + 1);
    if (g.clearance[t]! > g.clearance[widest.get(r) ?? t]! || !widest.has(r)) widest.set(r, t);
  }
  const metal = [...widest.values()]
    .filter((t) => g.clearance[t]! >= BULGE * reach)
    .map((t) => ({ x: g.cx[t]!, y: g.cy[t]!, size: size.get(root(t))! }))
    .filter((p) => openingAt(g, p) < 0)
    .sort((p, q) => q.size - p.size);
  return metal.slice(1).map(({ x, y }) => ({ x, y }));
}
