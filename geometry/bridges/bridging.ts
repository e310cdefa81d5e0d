import { subtract } from '../adapters/clipper.ts';
import type { Manner } from '../design/schema.ts';
import type { Point, Region } from '../shapes.ts';
import type { StockRules } from '../stock/rules.ts';
import { NEXT_PASS_MM, SHRINK_SHARE } from '../units.ts';
import type { Bar, ChoiceRule } from './bar.ts';
import { findBars } from './find-bars.ts';
import { buildBar } from './build-bar.ts';
import { chooseByHand } from './choose-by-hand.ts';
import { chooseBars } from './choose.ts';
import { cutSpecks } from './cut-specks.ts';
import { findPieces, type Pieces } from './find-pieces.ts';
import type { HandEdits } from './hand-edits.ts';
import { mirrorAxis } from './mirror.ts';
import { planksOf } from './planks.ts';
import type { BuiltBar, SolvedIsland } from './solved-unit.ts';
import { stiffen } from './stiffen.ts';
import { bodyAt, type Metal } from './stiffness.ts';
import { trimSlivers } from './trim-slivers.ts';

/** What comes of bridging a drawing; openings as they are left, all else as it was found or built on the way. */
export interface Bridging {
  openings: readonly Region[];
  readonly bars: BuiltBar[];
  readonly islands: SolvedIsland[];
  /** Island of the drawing (Metal.bodies) that each of `islands` is or is part of. */
  readonly bodies: number[];
  readonly specks: Point[];
  readonly lost: string[];
  readonly refused: string[];
  /** Metal that hangs by less than a bridge in the end. */
  loose: readonly Point[];
}

/** What stays the same in all passes. */
interface Task {
  readonly metal: Metal;
  readonly rules: StockRules;
  readonly rule: ChoiceRule;
  readonly edits: HandEdits;
}

/**
 * Bridges a drawing in passes. In: openings without pinches, the metal of the drawing, stock rules, manner, edits.
 *
 * 1. The first pass bridges the drawing: bars as the rule and stiffness ask for, and a person's own.
 * 2. Further passes shrink the metal by other amounts and bridge what comes to light, since bars can close a mouth.
 *    They end when all amounts in turn bring out nothing new.
 */
export function bridgeDrawing(
  drawn: readonly Region[],
  metal: Metal,
  rules: StockRules,
  manner: Manner,
  edits: HandEdits,
): Bridging {
  const { leastBridgeMm: widthMm, leastOpeningMm, longestSpanMm } = rules;
  const task: Task = { metal, rules, edits, rule: { widthMm, leastOpeningMm, longestSpanMm, manner } };
  const bridging: Bridging = {
    openings: drawn,
    bars: [],
    islands: [],
    bodies: [],
    specks: [],
    lost: [],
    refused: [],
    loose: [],
  };
  const axis = bridgePieces(bridging, task);
  bridgeWhatShows(bridging, task, axis);
  return bridging;
}

/** The first pass. Out: the axis of a drawing that is its own mirror image and was bridged so. */
function bridgePieces(bridging: Bridging, task: Task): number | undefined {
  const { rule, rules, metal, edits } = task;
  const pieces = findAndCut(bridging, FIRST_SHARE * rule.widthMm);
  const possible = findBars(pieces, rule);
  if (pieces.pieces.length === 1 && possible.length === 0 && edits.keeps.length === 0) return undefined;
  const axis = pieces.pieces.length > 1 ? mirrorAxis(bridging.openings) : undefined;
  const simple = chooseBars(pieces, possible, rule, axis);
  const own = stiffen(metal, pieces, simple, possible, rules, axis);
  const chosen = chooseWithEdits(bridging, task, pieces, possible, own, edits);
  const built = build(bridging, chosen, rules.kerfMm);
  noteIslands(bridging, metal, pieces, chosen, built);
  return axis;
}

/** The further passes; bars that a person put stand by then, places barred by hand stay barred. */
function bridgeWhatShows(bridging: Bridging, task: Task, axis: number | undefined): void {
  const { rule, rules, metal, edits } = task;
  const shrinks = shrinksInTurn(rule.widthMm);
  /** Passes since one found anything to bridge, and since one changed anything. */
  let [clean, unchanged] = [0, 0];
  for (let pass = 0; pass < MOST_PASSES && unchanged < shrinks.length; pass++) {
    const specksBefore = bridging.specks.length;
    const pieces = findAndCut(bridging, shrinks[pass % shrinks.length]!);
    const possible = findBars(pieces, rule);
    if (pieces.pieces.length === 1 && possible.length === 0) {
      clean++;
      unchanged++;
      continue;
    }
    clean = 0;
    const own = chooseBars(pieces, possible, rule, axis);
    const chosen = chooseWithEdits(bridging, task, pieces, possible, own, { keeps: [], drops: edits.drops });
    const built = build(bridging, chosen, rules.kerfMm);
    if (built.length > 0) noteIslands(bridging, metal, pieces, chosen, built);
    unchanged = built.length === 0 && bridging.specks.length === specksBefore ? unchanged + 1 : 0;
  }
  // A piece may show at one of the close amounts only: whichever brings one out tells.
  if (clean < shrinks.length) {
    const found = shrinks.slice(1).map((shrinkMm) => looseAt(bridging.openings, shrinkMm));
    bridging.loose = found.find((at) => at.length > 0) ?? [];
  }
}

/** Shrinking of the first pass, in bridge widths: it finds the pieces that the letter is bridged by. */
const FIRST_SHARE = SHRINK_SHARE / 2;

/** After so many further passes what still comes to light is told as loose. */
const MOST_PASSES = 12;

/**
 * Amounts by which the metal is shrunk in turn: clearly less than at first, which brings out pieces just wider than a
 * bridge that hang by a neck just narrower; the same again; and a little less and more, since rounding decides a close
 * thing either way. More shrinking can bring out fewer pieces too: a bulge on a tail is one only within some range.
 */
function shrinksInTurn(widthMm: number): readonly number[] {
  const first = FIRST_SHARE * widthMm;
  return [0.95 * first, first, first - NEXT_PASS_MM, first + NEXT_PASS_MM];
}

/** The pieces at a shrinking; specks among them are cut away at once. */
function findAndCut(bridging: Bridging, shrinkMm: number): Pieces {
  const pieces = findPieces(bridging.openings, shrinkMm);
  bridging.openings = cutSpecks(bridging.openings, pieces.specks);
  bridging.specks.push(...pieces.specks.map((s) => s[0]!));
  return pieces;
}

function chooseWithEdits(
  { lost, refused }: Bridging,
  { rule }: Task,
  pieces: Pieces,
  possible: readonly Bar[],
  own: readonly Bar[],
  edits: HandEdits,
): readonly Bar[] {
  const choice = chooseByHand(pieces, possible, rule, own, edits);
  lost.push(...choice.lost);
  refused.push(...choice.refused.filter((id) => !refused.includes(id)));
  return choice.bars;
}

/** Lays bars across the openings. Out: them as built. */
function build(bridging: Bridging, chosen: readonly Bar[], kerfMm: number): BuiltBar[] {
  const built = chosen.flatMap(buildBar);
  bridging.bars.push(...built);
  const outlines = built.map((b) => b.outline);
  bridging.openings = trimSlivers(subtract(bridging.openings, outlines), outlines, kerfMm);
  return built;
}

/** Only what is an island in the drawing counts as one; a widened neck held something before. */
function noteIslands(
  { bars, islands, bodies }: Bridging,
  metal: Metal,
  { pieces }: Pieces,
  chosen: readonly Bar[],
  built: readonly BuiltBar[],
): void {
  const first = bars.length - built.length;
  const planks = chosen.flatMap(planksOf);
  for (const piece of pieces) {
    if (piece.metal === 0) continue;
    const holding = planks.flatMap(({ a, b }, i) => (a === piece.id || b === piece.id ? [first + i] : []));
    islands.push({ at: piece.at, areaMm2: piece.areaMm2, small: piece.small, bars: holding });
    bodies.push(bodyAt(metal, piece.edge[0] ?? piece.at));
  }
}

function looseAt(openings: readonly Region[], shrinkMm: number): Point[] {
  const { pieces, specks } = findPieces(openings, shrinkMm);
  return [...pieces.slice(1).map((p) => p.at), ...specks.map((s) => s[0]!)];
}
