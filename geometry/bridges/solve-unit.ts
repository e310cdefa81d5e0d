import { intersect, offset, ringsOf, subtract } from '../adapters/clipper.ts';
import type { Manner } from '../design/schema.ts';
import { regionAreaMm2, ringHolds, signedAreaMm2 } from '../measure/ring.ts';
import type { Point, Region, Ring } from '../shapes.ts';
import type { StockRules } from '../stock/rules.ts';
import { NEXT_LOOK_MM, SHRINK_SHARE } from '../units.ts';
import type { Bar } from './bar.ts';
import { findBars } from './bars.ts';
import { canonicalUnit } from './canonical-unit.ts';
import { closePinches } from './close-pinches.ts';
import { chooseByHand } from './choose-by-hand.ts';
import { chooseBars } from './choose.ts';
import { findPieces } from './find-pieces.ts';
import { heldOnce } from './held-once.ts';
import { type HandEdits, NO_EDITS } from './hand-edits.ts';
import { mirrorAxis } from './mirror.ts';
import { planksOf } from './planks.ts';
import { stiffen } from './stiffen.ts';
import { bodyAt, hangsOfBars, metalOf } from './stiffness.ts';
import { trimSlivers } from './trim-slivers.ts';
import type { Hang } from './types.ts';

/** One bar as built, in the unit's frame. */
export interface BuiltBar {
  readonly from: Point;
  readonly to: Point;
  readonly outline: Ring;
  readonly widthMm: number;
  /** It only widens a neck that the drawing has there. */
  readonly widens: boolean;
  /** Edit that put it there, when a person did. */
  readonly editId?: string;
  /** Which of the unit's shapes it stands on; absent where it can only be the first. */
  readonly shape?: number;
}

export interface SolvedIsland {
  readonly at: Point;
  readonly areaMm2: number;
  readonly small: boolean;
  /** Indices of the bars that hold it. */
  readonly bars: readonly number[];
  /** How it hangs on them; absent where the stock's stiffness is not known. */
  readonly hang?: Hang;
}

/** A unit's openings with bridges left across them, in the unit's frame, mm. */
export interface SolvedUnit {
  readonly openings: readonly Region[];
  readonly bars: readonly BuiltBar[];
  readonly islands: readonly SolvedIsland[];
  /** Specks of metal too small to hold: they are cut away with the slug. */
  readonly specks: readonly Point[];
  /** Metal that no bar could be found for: the plate can't be cut. */
  readonly loose: readonly Point[];
  /** Metal that hangs on one bar alone. */
  readonly once: readonly Point[];
  /** Share of the drawn openings that bars cover, 0 to 1. */
  readonly covered: number;
  /** Separate parts of the drawing (a dot, an accent) that bars cover wholly; a point in each. */
  readonly lostParts: readonly Point[];
  /** Edits whose bridge finds no opening to cross, and edits that bar a place the plate cannot do without. */
  readonly lost: readonly string[];
  readonly refused: readonly string[];
}

/**
 * How far the metal is shrunk at each look. The first finds the pieces that the letter is bridged by. Then come four
 * by turns: clearly less, which brings out pieces just wider than a bridge that hang by a neck just narrower; the same
 * again; and as much less and more as the round corners of an offset may lack, since rounding decides a close thing
 * either way. How many pieces there are can fall as well as rise with the shrinking: a bulge on a tail is a piece only
 * within some range. All are looked at again after bars were built, since a bar can close a mouth.
 */
function shrinkOf(look: number, widthMm: number): number {
  const first = (SHRINK_SHARE * widthMm) / 2;
  if (look === 0) return first;
  return [0.95 * first, first, first - NEXT_LOOK_MM, first + NEXT_LOOK_MM][(look - 1) % TURNS]!;
}

/** How many looks come by turns. */
const TURNS = 4;

/** After so many looks what still comes to light is told as loose. */
const MOST_LOOKS = 13;

/**
 * Bridges one unit.
 *
 * In: united openings in the unit's frame (y up is upright for the letter), stock rules, manner, a person's edits.
 * Out: openings without islands, whose surrounding metal is still one piece when shrunk by just under half the least
 * bridge; islands and bars for the record. What could not be achieved is listed in `loose`, never passed over.
 */
export function solveUnit(
  regions: readonly Region[],
  rules: StockRules,
  manner: Manner,
  edits: HandEdits = NO_EDITS,
): SolvedUnit {
  const unit = canonicalUnit(regions, edits);
  const solved = solveCanonical(unit.regions, rules, manner, unit.edits);
  const { point, ring } = unit.home;
  const region = ({ outer, holes }: Region) => ({ outer: ring(outer), holes: holes.map(ring) });
  return {
    ...solved,
    openings: solved.openings === unit.regions ? regions : solved.openings.map(region),
    bars: solved.bars.map((b) => ({ ...b, from: point(b.from), to: point(b.to), outline: ring(b.outline) })),
    islands: solved.islands.map(({ at, hang, ...island }) => ({
      ...island,
      at: point(at),
      ...(hang && { hang: { ...hang, softAt: point(hang.softAt) } }),
    })),
    specks: solved.specks.map(point),
    loose: solved.loose.map(point),
    once: solved.once.map(point),
    lostParts: solved.lostParts.map(point),
  };
}

function solveCanonical(regions: readonly Region[], rules: StockRules, manner: Manner, edits: HandEdits): SolvedUnit {
  const widthMm = rules.leastBridgeMm;
  const rule = { widthMm, leastOpeningMm: rules.leastOpeningMm, longestSpanMm: rules.longestSpanMm, manner };
  let openings = closePinches(regions);
  const bars: BuiltBar[] = [];
  const islands: SolvedIsland[] = [];
  const specks: Point[] = [];
  const lost: string[] = [];
  const refused: string[] = [];
  const metal = metalOf(regions);
  /** Island of the drawing that each of `islands` is or is part of. */
  const bodies: number[] = [];
  let axis: number | undefined;
  let [clean, same] = [0, 0];
  for (let pass = 0; pass < MOST_LOOKS && same < TURNS; pass++) {
    const found = findPieces(openings, shrinkOf(pass, widthMm));
    if (found.specks.length > 0) {
      openings = withoutHoles(openings, found.specks);
      specks.push(...found.specks.map((s) => s[0]!));
    }
    const possible = findBars(found, rule);
    const keeps = pass === 0 ? edits.keeps : [];
    if (found.pieces.length === 1 && possible.length === 0 && keeps.length === 0) {
      clean++;
      if (pass > 0) same++;
      continue;
    }
    clean = 0;
    if (pass === 0 && found.pieces.length > 1) axis = mirrorAxis(openings);
    const simple = chooseBars(found, possible, rule, axis);
    const own = pass === 0 ? stiffen(metal, found, simple, possible, rules, axis) : simple;
    const byHand = chooseByHand(found, possible, rule, own, { keeps, drops: edits.drops });
    const chosen = byHand.bars;
    lost.push(...byHand.lost);
    for (const id of byHand.refused) if (!refused.includes(id)) refused.push(id);
    const first = bars.length;
    for (const bar of chosen) bars.push(...built(bar));
    const fresh = bars.slice(first);
    same = pass > 0 && fresh.length === 0 && found.specks.length === 0 ? same + 1 : 0;
    // Only what is an island in the drawing counts as one; a widened neck held something before.
    for (const piece of found.pieces) {
      if (piece.metal === 0 || (pass > 0 && fresh.length === 0)) continue;
      const holds = chosen.flatMap((bar) => touching(bar, piece.id));
      const mine = fresh.flatMap((b, i) => (holds.some((h) => sameBuilt(h, b)) ? [first + i] : []));
      islands.push({ at: piece.at, areaMm2: piece.areaMm2, small: piece.small, bars: mine });
      bodies.push(bodyAt(metal, piece.edge[0] ?? piece.at));
    }
    const outlines = fresh.map((b) => b.outline);
    openings = withoutCrumbs(trimSlivers(subtract(openings, outlines), outlines, rules.kerfMm), rules.kerfMm);
  }
  // A piece may show at one of the close looks only: whichever sees one tells.
  const loose =
    clean >= TURNS ? [] : ([2, 3, 4].map((look) => looseAt(openings, look, widthMm)).find((at) => at.length > 0) ?? []);
  const hangs = hangsOfBars(metal, bars, rules);
  const hung = islands.map((island, i): SolvedIsland => {
    const hang = hangs[bodies[i]!];
    return hang ? { ...island, hang } : island;
  });
  const cover = coverOf(regions, openings, bars.length);
  const outlines = bars.map((b) => b.outline);
  const crowded = cover.covered > CROWDED || islands.some((island) => island.small);
  const once = crowded ? heldOnce(regions, openings, outlines) : [];
  return { openings, bars, islands: hung, specks, loose, once, lost, refused, ...cover };
}

function looseAt(openings: readonly Region[], look: number, widthMm: number): Point[] {
  const { pieces, specks } = findPieces(openings, shrinkOf(look, widthMm));
  return [...pieces.slice(1).map((p) => p.at), ...specks.map((s) => s[0]!)];
}

/** Above this share covered, bars run into each other and into islands: what each holds alone is looked at. */
const CROWDED = 0.05;

function coverOf(drawn: readonly Region[], openings: readonly Region[], bars: number) {
  if (bars === 0) return { covered: 0, lostParts: [] };
  const area = (regions: readonly Region[]) => regions.reduce((sum, r) => sum + regionAreaMm2(r), 0);
  const left = ringsOf(openings);
  return {
    covered: 1 - area(openings) / area(drawn),
    lostParts: drawn.filter((part) => intersect([part], left).length === 0).map((part) => part.outer[0]!),
  };
}

/** Bars run on into the metal by this share of their width, so that rounding leaves no hair between. */
const ROOT = 0.012;

/** The bar as metal, plank by plank. */
function built(bar: Bar): BuiltBar[] {
  const planks = planksOf(bar).map(({ from, to }) => plank(from, to, bar.widthMm, bar.widens));
  const { editId } = bar;
  return editId === undefined ? planks : planks.map((p) => ({ ...p, editId }));
}

function touching(bar: Bar, piece: number): { from: Point; to: Point }[] {
  return planksOf(bar).filter(({ a, b }) => a === piece || b === piece);
}

function sameBuilt(p: { from: Point; to: Point }, q: BuiltBar): boolean {
  return p.from === q.from && p.to === q.to;
}

function plank(from: Point, to: Point, widthMm: number, widens: boolean): BuiltBar {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const [x, y] = [(-dy * widthMm) / 2, (dx * widthMm) / 2];
  const [ex, ey] = [dx * ROOT * widthMm, dy * ROOT * widthMm];
  return {
    from,
    to,
    widthMm,
    widens,
    outline: [
      { x: from.x - ex - x, y: from.y - ey - y },
      { x: to.x + ex - x, y: to.y + ey - y },
      { x: to.x + ex + x, y: to.y + ey + y },
      { x: from.x - ex + x, y: from.y - ey + y },
    ],
  };
}

function withoutHoles(regions: readonly Region[], holes: readonly Ring[]): Region[] {
  const gone = new Set(holes);
  return regions
    .filter((r) => !holes.some((h) => insideHole(r, h)))
    .map((r) => ({ outer: r.outer, holes: r.holes.filter((h) => !gone.has(h)) }));
}

/** An opening within a speck goes with it. */
function insideHole(region: Region, hole: Ring): boolean {
  return (
    Math.abs(signedAreaMm2(region.outer)) < Math.abs(signedAreaMm2(hole)) &&
    ringHolds(hole, region.outer[0]!) &&
    ringHolds(hole, region.outer[Math.floor(region.outer.length / 2)]!)
  );
}

/** Crumbs of opening narrower than the cut itself can't be made: they stay metal. */
function withoutCrumbs(regions: readonly Region[], kerfMm: number): Region[] {
  return regions.filter((r) => {
    if (regionAreaMm2(r) > 40 * kerfMm * kerfMm) return true;
    return offset([r], -kerfMm / 2).length > 0;
  });
}
