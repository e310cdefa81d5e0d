import type { Point } from '../shapes.ts';
import { clearanceAcross, type ClearanceGraph, halfedgeEnds, openingAt } from './clearance-graph.ts';

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
 * circle (Gabriel pairs), within 1 % for gaps wider than three sample steps.
 */
export function measureGaps(g: ClearanceGraph, webBelowMm: number, slotBelowMm: number): Gaps {
  const webs: Narrow[] = [];
  const slots: Narrow[] = [];
  const limit = Math.max(webBelowMm, slotBelowMm);
  for (let h = 0; h < g.halfedges.length; h++) {
    const twin = g.halfedges[h]!;
    if (twin < h) continue;
    const [i, j] = halfedgeEnds(g, h);
    const from = { x: g.xy[2 * i]!, y: g.xy[2 * i + 1]! };
    const to = { x: g.xy[2 * j]!, y: g.xy[2 * j + 1]! };
    const mm = Math.hypot(to.x - from.x, to.y - from.y);
    if (mm >= limit) continue;
    const [ci, cj] = [g.contour[i]!, g.contour[j]!];
    const openings = [g.openingOf[ci]!, g.openingOf[cj]!] as const;
    if (ci === cj) {
      const straight = Math.abs(g.along[i]! - g.along[j]!);
      const around = Math.min(straight, g.contourLength[ci]! - straight);
      if (mm >= slotBelowMm || around < ALONGSIDE * mm) continue;
    } else if (mm >= webBelowMm && openings[0] !== openings[1]) continue;
    // A pair whose circle holds other samples is not across a gap but past its end.
    if (Math.abs(clearanceAcross(g, h) - mm / 2) > 1e-9) continue;
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const narrow = { mm, from, to, openings };
    if (openings[0] !== openings[1]) webs.push(narrow);
    else if (openings[0] >= 0 && openingAt(g, middle) >= 0) slots.push(narrow);
  }
  const byWidth = (p: Narrow, q: Narrow) => p.mm - q.mm;
  return { webs: webs.sort(byWidth), slots: slots.sort(byWidth) };
}
