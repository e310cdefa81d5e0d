import { offset } from '../adapters/clipper.ts';
import { deepestPoint } from '../adapters/polylabel.ts';
import { edgeGrid, type EdgeGrid } from '../measure/edge-grid.ts';
import { ringHolds, signedAreaMm2 } from '../measure/ring.ts';
import type { Point, Region, Ring } from '../shapes.ts';
import { SPECK_MM2 } from '../units.ts';

/**
 * Pieces of metal that must be joined by bars.
 *
 * In: the openings of one unit (its frame, mm, united). The metal is shrunk by shrinkMm, just under half the least
 * bridge. What is then still joined is joined by metal wide enough; each separate part is a *piece*:
 *
 * - piece 0 reaches outward to the rim;
 * - a true island: metal with openings all around it;
 * - a near island: it still hangs on by a neck thinner than a bridge (a stencil face's own bridge at a small size,
 *   the mouth of a small e). `metal` is equal for pieces that such necks join;
 * - a small island: an island so narrow that shrinking leaves nothing of it. It will lie wholly on a bar.
 *
 * A disc of radius shrinkMm about any point of a piece lies wholly in metal. So a bar between points of two pieces
 * joins them by metal at least 2 shrinkMm wide: that is why bars are sought between the shrunk pieces.
 */
export interface Piece {
  readonly id: number;
  /** Outer edge of the shrunk piece (clockwise); empty for piece 0 and small islands. */
  readonly edge: Ring;
  /** 0 for metal that reaches the rim, else the number of the island it is part of. */
  readonly metal: number;
  /** A point well inside. */
  readonly at: Point;
  readonly areaMm2: number;
  readonly small: boolean;
  /** A small island's own edge; empty for others. */
  readonly hole: Ring;
}

export interface Pieces {
  readonly pieces: readonly Piece[];
  /** Edges of all shrunk pieces with the piece they belong to: the metal lies on their right. */
  readonly edges: readonly { readonly ring: Ring; readonly owner: number }[];
  /** The same edges for casting rays, owned by piece id. */
  readonly shrunk: EdgeGrid;
  /** Edges of the openings. */
  readonly open: EdgeGrid;
  /** Holes so small that no bar can hold them: they drop out with the slug and cannot be kept. */
  readonly specks: readonly Ring[];
}

/** An island narrower than this share of a bridge can't be kept: it is fly-dirt beside the bar that would hold it. */
const SPECK_SHARE = 0.3;

export function findPieces(regions: readonly Region[], shrinkMm: number): Pieces {
  const holes = regions.flatMap((r) => r.holes);
  const grown = offset(regions, shrinkMm);
  const cores = grown.flatMap((r) => r.holes).filter((h) => Math.abs(signedAreaMm2(h)) > SPECK_MM2);
  const pieces: Piece[] = [
    { id: 0, edge: [], metal: 0, at: { x: 0, y: 0 }, areaMm2: Infinity, small: false, hole: [] },
  ];
  const kept = new Set<number>();
  for (const edge of cores) {
    const metal = findInnermost(holes, edge[0]!) + 1;
    kept.add(metal);
    const { at } = deepestPoint(edge);
    pieces.push({ id: pieces.length, edge, metal, at, areaMm2: Math.abs(signedAreaMm2(edge)), small: false, hole: [] });
  }
  const specks: Ring[] = [];
  holes.forEach((hole, i) => {
    if (kept.has(i + 1)) return;
    const { at, depthMm } = deepestPoint(hole);
    if (depthMm < SPECK_SHARE * shrinkMm) specks.push(hole);
    else
      pieces.push({
        id: pieces.length,
        edge: [],
        metal: i + 1,
        at,
        areaMm2: Math.abs(signedAreaMm2(hole)),
        small: true,
        hole,
      });
  });
  const edges = [
    ...pieces.filter((p) => p.edge.length > 0).map((p) => ({ ring: p.edge, owner: p.id })),
    ...grown.map(({ outer }) => ({ ring: outer, owner: findInnermost(cores, outer[0]!) + 1 })),
  ];
  const openRings = regions.flatMap((r) => [r.outer, ...r.holes]);
  // Most passes find nothing to bridge and need no grid.
  const shrunk = memoize(() =>
    edgeGrid(
      edges.map((e) => e.ring),
      edges.map((e) => e.owner),
    ),
  );
  const open = memoize(() =>
    edgeGrid(
      openRings,
      openRings.map(() => 0),
    ),
  );
  return {
    pieces,
    edges,
    get shrunk() {
      return shrunk();
    },
    get open() {
      return open();
    },
    specks,
  };
}

/** What is worked out at the first call only. */
function memoize<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}

/** Index of the smallest ring that holds the point, -1 for none. */
function findInnermost(rings: readonly Ring[], p: Point): number {
  let best = -1;
  let least = Infinity;
  rings.forEach((ring, i) => {
    const area = Math.abs(signedAreaMm2(ring));
    if (area < least && ringHolds(ring, p)) {
      best = i;
      least = area;
    }
  });
  return best;
}
