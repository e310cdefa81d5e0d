import type { Point } from '../shapes.ts';
import { clearanceAcross, type ClearanceGraph, halfedgeEnds, openingAt, widthAcross } from './clearance-graph.ts';
import { ROUNDING } from '../units.ts';

/** A narrow place: its two sides and how wide it is, mm. */
export interface Narrow {
  readonly mm: number;
  readonly from: Point;
  readonly to: Point;
  /** Openings on its sides; -1 is the rim. */
  readonly openings: readonly [number, number];
}

export interface Gaps {
  /** Metal between two openings or an opening and the rim, below the width asked about; narrowest first. */
  readonly webs: readonly Narrow[];
  /** Openings narrower than asked about, where their two sides run along each other; narrowest first. */
  readonly slots: readonly Narrow[];
}

/** Two sides of one opening run along each other when the way around is this many times the way across. */
const ALONGSIDE = 7;

/**
 * Narrow places of the plate, from the graph of the proof: pairs of samples that see each other across their own
 * circle (Gabriel pairs), each measured on the contours' edges. Of all slots only the narrowest is given.
 */
export function measureGaps(g: ClearanceGraph, webBelowMm: number, slotBelowMm: number): Gaps {
  const webs: Narrow[] = [];
  const across: Pair[] = [];
  for (let h = 0; h < g.halfedges.length; h++) {
    if (g.halfedges[h]! < h) continue;
    const [i, j] = halfedgeEnds(g, h);
    const [ci, cj] = [g.contour[i]!, g.contour[j]!];
    const web = g.openingOf[ci] !== g.openingOf[cj];
    const rough = Math.hypot(g.xy[2 * j]! - g.xy[2 * i]!, g.xy[2 * j + 1]! - g.xy[2 * i + 1]!);
    if (rough >= (web ? webBelowMm : slotBelowMm)) continue;
    if (!web && (ci !== cj || aroundMm(g, i, j) < ALONGSIDE * rough)) continue;
    // A pair whose circle holds other samples is not across a gap but past its end.
    if (Math.abs(clearanceAcross(g, h) - rough / 2) > ROUNDING) continue;
    if (web) webs.push(narrow(g, i, j));
    else across.push({ i, j, rough });
  }
  const slot = across
    .sort((p, q) => p.rough - q.rough)
    .find(({ i, j }) => g.openingOf[g.contour[i]!]! >= 0 && openingAt(g, middle(g, i, j)) >= 0);
  return { webs: webs.sort((p, q) => p.mm - q.mm), slots: slot ? [narrow(g, slot.i, slot.j)] : [] };
}

interface Pair {
  readonly i: number;
  readonly j: number;
  readonly rough: number;
}

function narrow(g: ClearanceGraph, i: number, j: number): Narrow {
  return {
    mm: widthAcross(g, i, j),
    from: { x: g.xy[2 * i]!, y: g.xy[2 * i + 1]! },
    to: { x: g.xy[2 * j]!, y: g.xy[2 * j + 1]! },
    openings: [g.openingOf[g.contour[i]!]!, g.openingOf[g.contour[j]!]!],
  };
}

/** Shorter way along the contour from one of its samples to another. */
function aroundMm(g: ClearanceGraph, i: number, j: number): number {
  const straight = Math.abs(g.along[i]! - g.along[j]!);
  return Math.min(straight, g.contourLength[g.contour[i]!]! - straight);
}

function middle(g: ClearanceGraph, i: number, j: number): Point {
  return { x: (g.xy[2 * i]! + g.xy[2 * j]!) / 2, y: (g.xy[2 * i + 1]! + g.xy[2 * j + 1]!) / 2 };
}
