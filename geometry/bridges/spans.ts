import { perimeterMm } from '../measure/ring.ts';
import type { Bar, ChoiceRule } from './bar.ts';
import { alongAt } from './edge-places.ts';
import type { Piece, Pieces } from './find-pieces.ts';
import { attachedTo, footOn, sideBySide } from './neighbours.ts';

/** Turns tried for a ring of bars between one bar's place and the next. */
const TURNS = 60;

/** How many bars the edge of an island asks for, so that none of it runs farther than the rule without one. */
function barsForEdge(piece: Piece, longestSpanMm: number): number {
  return Math.max(2, Math.ceil(perimeterMm(piece.edge) / longestSpanMm));
}

/** True for an island that wants three bars or more: they are spread as a ring, not chosen one by one. */
export function isRound(piece: Piece, longestSpanMm: number): boolean {
  return !piece.small && barsForEdge(piece, longestSpanMm) > 2;
}

/**
 * Bars evenly spread along a long edge (a cut ring carries all that lies inside it).
 * Tries turning the whole ring of bars; each place takes the cheapest bar near it; the turn that costs least wins,
 * and of equal turns the one that is its own mirror image, first the one with a bar at the top.
 */
export function chooseRound(island: Piece, bars: readonly Bar[], rule: ChoiceRule): Bar[] {
  const around = perimeterMm(island.edge);
  const count = roundUpToEven(barsForEdge(island, rule.longestSpanMm));
  const pitch = around / count;
  const top = alongAt(island, { x: island.at.x, y: island.at.y + around });
  const byPlace = [...bars].sort((p, q) => p.alongMm - q.alongMm);
  let best: Bar[] = [];
  let least = Infinity;
  for (let turn = 0; turn < TURNS; turn++) {
    const chosen: Bar[] = [];
    let cost = 0;
    for (let i = 0; i < count; i++) {
      const place = (top + (i + turn / TURNS) * pitch) % around;
      const bar = cheapestNear(byPlace, place, around, pitch / 6, rule.widthMm);
      if (!bar) {
        cost = Infinity;
        break;
      }
      chosen.push(bar);
      cost += bar.cost;
    }
    // Only a clear gain is worth leaving the top for.
    if (cost < (best.length > 0 ? 0.95 : 1) * least) [best, least] = [chosen, cost];
  }
  return best;
}

/** Even numbers look at home on a round head. */
function roundUpToEven(n: number): number {
  return n + (n % 2);
}

function cheapestNear(
  bars: readonly Bar[],
  place: number,
  around: number,
  reach: number,
  widthMm: number,
): Bar | undefined {
  let best: Bar | undefined;
  let least = Infinity;
  for (const bar of bars) {
    const apart = Math.abs(bar.alongMm - place);
    const away = Math.min(apart, around - apart);
    if (away > reach) continue;
    const cost = bar.cost + 4 * widthMm * (away / reach);
    if (cost < least) [best, least] = [bar, cost];
  }
  return best;
}

/** More bars where an island's edge runs too far without one. */
export function fillLongSpans(pieces: Pieces, chosen: readonly Bar[], bars: readonly Bar[], rule: ChoiceRule): Bar[] {
  const set = [...chosen];
  for (const piece of pieces.pieces) {
    if (piece.id === 0 || piece.small || barsForEdge(piece, rule.longestSpanMm) <= 2) continue;
    const around = perimeterMm(piece.edge);
    const passed = new Set<number>();
    for (;;) {
      const feet = set
        .filter((b) => attachedTo(b, piece.id))
        .map((b) => alongAt(piece, footOn(b, piece.id)))
        .sort((p, q) => p - q);
      const gaps = feet
        .map((from, i) => ({ from, mm: ((feet[i + 1] ?? feet[0]! + around) - from + around) % around || around }))
        .filter((g) => g.mm > rule.longestSpanMm && !passed.has(g.from))
        .sort((p, q) => q.mm - p.mm);
      const gap = gaps[0];
      if (!gap) break;
      const middle = (gap.from + gap.mm / 2) % around;
      const near = (b: Bar) => {
        const apart = Math.abs(alongAt(piece, footOn(b, piece.id)) - middle);
        return Math.min(apart, around - apart);
      };
      const fitting = bars
        .filter((b) => attachedTo(b, piece.id) && near(b) < gap.mm / 3)
        .filter((b) => !set.some((s) => sideBySide(s, b, rule.widthMm + rule.leastOpeningMm)))
        .sort((p, q) => p.cost + near(p) * 0.1 - (q.cost + near(q) * 0.1));
      if (fitting[0]) set.push(fitting[0]);
      else passed.add(gap.from);
    }
  }
  return set;
}
