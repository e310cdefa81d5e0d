import { nearestOnSegment } from '../measure/distance.ts';
import { castRay } from '../measure/edge-grid.ts';
import type { Point } from '../shapes.ts';
import type { Bar, ChoiceRule } from './bar.ts';
import { alongAt } from './edge-places.ts';
import { completeBars, deficitOf } from './choose.ts';
import type { Pieces } from './find-pieces.ts';
import type { HandDrop, HandEdits, HandKeep } from './hand-edits.ts';
import { measureBar } from './measure-bar.ts';
import { withAllItCarries } from './planks.ts';
import { sideBySide } from './neighbours.ts';
import { PINCH_MM } from '../units.ts';

export interface ChoiceByHand {
  readonly bars: readonly Bar[];
  /** Edits whose bridge finds no opening to cross. */
  readonly lost: readonly string[];
  /** Edits that bar a place the plate cannot do without. */
  readonly refused: readonly string[];
}

/**
 * How near the middle line of the tool's own bar may come to a barred place, in bridge widths. A little over one, so
 * that a bridge which has to go elsewhere does not just step aside by half of itself.
 */
const DROP_REACH = 1.1;
/** A bridge by hand crosses at least so much of an opening, in bridge widths: less is no bridge. */
const LEAST_CROSSING = 0.05;
/** How far off the line's middle its opening may have gone (another face, another size), in lengths of the line. */
const FARTHEST = 0.75;

/**
 * Bars with a person's edits.
 *
 * In: what the tool would choose by itself (own) and all bars it could choose from.
 * Bridges by hand stand; of the tool's own choice all stay that are neither barred nor in their way; what then still
 * lacks is completed among the places not barred, and where that does not suffice, with the tool's own again: a plate
 * never holds by less than the rule because of an edit.
 */
export function chooseByHand(
  pieces: Pieces,
  bars: readonly Bar[],
  rule: ChoiceRule,
  own: readonly Bar[],
  edits: HandEdits,
): ChoiceByHand {
  const lost: string[] = [];
  const keeps: Bar[] = [];
  for (const keep of edits.keeps) {
    const bar = barByHand(keep, pieces, rule);
    if (bar) keeps.push(bar);
    else lost.push(keep.editId);
  }
  const apart = rule.widthMm + rule.leastOpeningMm;
  if (keeps.length === 0 && edits.drops.length === 0) return { bars: own, lost, refused: [] };
  const barred = (bar: Bar) => !bar.widens && edits.drops.some((d) => near(d, bar, rule.widthMm));
  const inTheWay = (bar: Bar) => !bar.widens && keeps.some((k) => sideBySide(k, bar, apart));
  const stay = own.filter((bar) => !barred(bar) && !inTheWay(bar));
  const free = bars.filter((bar) => !barred(bar));
  let chosen = completeBars(pieces, [...keeps, ...stay], free, rule);
  const wanted = deficitOf(pieces, own, rule);
  if (deficitOf(pieces, chosen, rule) > wanted) chosen = completeBars(pieces, chosen, bars, rule);
  // Places crowded by hand leave no room for bars that stand apart: then they stand beside each other.
  if (deficitOf(pieces, chosen, rule) > wanted) chosen = [...chosen, ...own.filter((bar) => !chosen.includes(bar))];
  const refused = edits.drops
    .filter((d) => chosen.some((bar) => !keeps.includes(bar) && near(d, bar, rule.widthMm)))
    .map((d) => d.editId);
  return { bars: chosen, lost, refused };
}

function near(drop: HandDrop, bar: Bar, widthMm: number): boolean {
  const p = nearestOnSegment(drop.at, bar.from, bar.to);
  return Math.hypot(p.x - drop.at.x, p.y - drop.at.y) < DROP_REACH * widthMm;
}

/**
 * The bar along a person's line: where the line runs between shrunk metal nearest to its middle, so that both ends
 * lie in metal that stands. Undefined when it crosses no opening near there.
 */
function barByHand(keep: HandKeep, pieces: Pieces, rule: ChoiceRule): Bar | undefined {
  const length = Math.hypot(keep.to.x - keep.from.x, keep.to.y - keep.from.y);
  if (!(length > 0)) return undefined;
  const [dx, dy] = [(keep.to.x - keep.from.x) / length, (keep.to.y - keep.from.y) / length];
  const middle = { x: (keep.from.x + keep.to.x) / 2, y: (keep.from.y + keep.to.y) / 2 };
  const widthMm = keep.widthShare * rule.widthMm;
  // From far outside, so that crossings come in pairs: out of the metal, into the metal.
  const { minX, minY, cell, columns, rows } = pieces.shrunk;
  const back = Math.hypot(middle.x - minX, middle.y - minY) + cell * (columns + rows);
  const start = { x: middle.x - dx * back, y: middle.y - dy * back };
  const hits = castRay(pieces.shrunk, start, dx, dy);
  let best: Bar | undefined;
  let least = Math.max(FARTHEST * length, 2 * rule.widthMm);
  for (let i = 0; i + 1 < hits.length; i += 2) {
    const [p, q] = [hits[i]!, hits[i + 1]!];
    const away = Math.max(0, p.at - back, back - q.at);
    if (away >= least || q.at - p.at < PINCH_MM) continue;
    const from = { x: start.x + dx * p.at, y: start.y + dy * p.at };
    const to = { x: start.x + dx * q.at, y: start.y + dy * q.at };
    const fit = measureBar(pieces.open, from, to, widthMm, rule.leastOpeningMm);
    if (fit.crossingMm < LEAST_CROSSING * rule.widthMm) continue;
    const a = pieces.pieces[p.owner]!;
    const alongMm = a.edge.length > 0 ? alongAt(a, from) : 0;
    const bar = { from, to, a: p.owner, b: q.owner, cost: 0, widthMm, widens: false, alongMm, editId: keep.editId };
    const carried = carriedBy(from, to, pieces, widthMm);
    best = withAllItCarries(carried ? { ...bar, carries: carried } : bar, pieces);
    least = away;
  }
  return best;
}

/** The small island the bar passes over, if there is one. */
function carriedBy(from: Point, to: Point, pieces: Pieces, widthMm: number) {
  for (const piece of pieces.pieces) {
    if (!piece.small) continue;
    const p = nearestOnSegment(piece.at, from, to);
    if (Math.hypot(p.x - piece.at.x, p.y - piece.at.y) < 0.25 * widthMm) return { piece: piece.id, at: piece.at };
  }
  return undefined;
}
