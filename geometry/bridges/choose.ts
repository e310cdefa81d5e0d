import { ROUNDING } from '../units.ts';
import type { Bar, ChoiceRule } from './bar.ts';
import {
  barsOf,
  clash,
  keepBestOfNecks,
  keepDistinct,
  listOptions,
  type Option,
  sharePiece,
  single,
} from './bar-options.ts';
import { costOfSet } from './cost-of-set.ts';
import type { Pieces } from './find-pieces.ts';
import { groupJoined, HoldingGraph } from './holding-graph.ts';
import { attachedTo, sideBySide } from './neighbours.ts';
import { chooseRound, fillLongSpans, isRound } from './spans.ts';

/**
 * The bars to build.
 *
 * In: pieces, possible bars (cheapest first), rule, and the axis when the letter is its own mirror image.
 * Out: bars such that every piece hangs on the rim, true islands by two bars at least that fail independently
 * (no single bar's loss parts anything), at no more than longestSpanMm of edge between two; among such sets one of
 * least cost. Not promised: the least possible for more than one island (a local search is used). Where the bars given
 * do not suffice, the set comes back as good as it gets; the proof afterwards tells.
 *
 * 1. Necks thinner than a bridge are widened, each where it costs least; that joins near islands.
 * 2. What is left is a graph: metal as nodes, bars as links. To start sets bars are added until no link is weak.
 * 3. Bars are taken out, then swapped, while that costs the letter less.
 * 4. Long edges get more bars, evenly spread.
 */
export function chooseBars(pieces: Pieces, bars: readonly Bar[], rule: ChoiceRule, axis: number | undefined): Bar[] {
  const widened = keepBestOfNecks(bars, rule);
  const group = groupJoined(pieces, widened);
  const open = keepJoining(bars, group, pieces, rule);
  const graph = new HoldingGraph(pieces, group);
  if (graph.nodes === 1) return widened;
  const only = pieces.pieces.filter((p) => p.id > 0 && group[p.id] !== group[0]);
  const island = only[0];
  if (only.length === 1 && island && isRound(island, rule.longestSpanMm)) {
    const all = bars.filter((b) => !b.widens && b.a === island.id);
    return [...widened, ...chooseRound(island, all, rule)];
  }
  let chosen = search(graph, listOptions(open, pieces, rule, axis), pieces, rule);
  // A letter whose mirrored places do not suffice is bridged without the mirror.
  if (axis !== undefined && graph.deficit(chosen) > 0) {
    chosen = search(graph, listOptions(open, pieces, rule, undefined), pieces, rule);
  }
  return [...widened, ...fillLongSpans(pieces, chosen, open, rule)];
}

/**
 * Bars that complete a set which has to stand as it is (a person's bridges and what stays beside them).
 * In: pieces, the bars that stand, the bars that may be added, rule. Out: the standing bars first, then what was
 * added: as few as hold every piece twice, or as well as the bars given can, and more where an edge runs too far.
 */
export function completeBars(pieces: Pieces, standing: readonly Bar[], bars: readonly Bar[], rule: ChoiceRule): Bar[] {
  const group = groupJoined(pieces, standing);
  const open = keepJoining(bars, group, pieces, rule);
  const graph = new HoldingGraph(pieces, group);
  const options = open.map(single);
  const all = standing.map(single);
  const fixed = keepIndependent(standing, rule).map(single);
  const fits = (set: readonly Option[], more: Option) => ![...all, ...set].some((o) => clash(o, more, rule));
  const added = addUntilHeld(graph, fixed, options, fits).slice(fixed.length);
  swap(graph, added, options, (set) => costOfSet(set, pieces, rule), fits, fixed);
  return fillLongSpans(pieces, [...standing, ...barsOf(added)], open, rule);
}

/** How far bars are from holding every piece twice; 0 when they do. Bars that can't fail alone count once. */
export function deficitOf(pieces: Pieces, bars: readonly Bar[], rule: ChoiceRule): number {
  return new HoldingGraph(pieces, groupJoined(pieces, bars)).deficit(keepIndependent(bars, rule));
}

/** Distinct bars that join what necks leave apart, or carry a small island. */
function keepJoining(bars: readonly Bar[], group: readonly number[], pieces: Pieces, rule: ChoiceRule): Bar[] {
  const joining = bars.filter((b) => !b.widens && (b.carries !== undefined || group[b.a] !== group[b.b]));
  return keepDistinct(joining, pieces, rule);
}

/** Of bars that cross or run into each other only the first, since one break takes them all. */
function keepIndependent(bars: readonly Bar[], rule: ChoiceRule): Bar[] {
  const kept: Bar[] = [];
  for (const bar of bars) {
    if (!bar.widens && !kept.some((k) => sideBySide(k, bar, rule.widthMm))) kept.push(bar);
  }
  return kept;
}

function search(graph: HoldingGraph, options: readonly Option[], pieces: Pieces, rule: ChoiceRule): Bar[] {
  const costOf = (set: readonly Option[]) => costOfSet(set, pieces, rule);
  const fits = (set: readonly Option[], more: Option) => !set.some((o) => clash(o, more, rule));
  let best: Option[] = [];
  let leastDeficit = Infinity;
  let leastCost = Infinity;
  for (const start of [startFromPairs(options, pieces, rule), []]) {
    const set = addUntilHeld(graph, start, options, fits);
    thinOut(graph, set, costOf);
    swap(graph, set, options, costOf, fits);
    const deficit = graph.deficit(barsOf(set));
    const cost = costOf(set);
    if (deficit < leastDeficit || (deficit === leastDeficit && cost < leastCost))
      [best, leastDeficit, leastCost] = [set, deficit, cost];
  }
  return barsOf(best);
}

/** For every island the pair (or single option) that would hold it best if it stood alone. */
function startFromPairs(options: readonly Option[], pieces: Pieces, rule: ChoiceRule): Option[] {
  const set: Option[] = [];
  for (const piece of pieces.pieces) {
    if (piece.id === 0) continue;
    const mine = options.filter((o) => o.bars.some((b) => attachedTo(b, piece.id))).slice(0, 60);
    const needs = piece.small ? 1 : 2;
    let best: Option[] = [];
    let least = Infinity;
    mine.forEach((first, i) => {
      const ways = first.bars.filter((b) => attachedTo(b, piece.id)).length;
      const pairs = ways >= needs ? [[first]] : mine.slice(i + 1).map((second) => [first, second]);
      for (const pair of pairs) {
        if (pair.length === 2 && clash(pair[0]!, pair[1]!, rule)) continue;
        const cost = costOfSet(pair, pieces, rule, piece.id);
        if (cost < least) [best, least] = [pair, cost];
      }
    });
    for (const option of best) if (!set.includes(option) && !set.some((o) => clash(o, option, rule))) set.push(option);
  }
  return set;
}

/** Added to every cost in mm, so that a bar that costs nothing still has a finite worth. */
const LEAST_COST = 0.01;

/** Adds options until nothing is weak, each time the cheapest that helps most. */
function addUntilHeld(
  graph: HoldingGraph,
  start: readonly Option[],
  options: readonly Option[],
  fits: (set: readonly Option[], more: Option) => boolean,
): Option[] {
  const set = [...start];
  let deficit = graph.deficit(barsOf(set));
  while (deficit > 0) {
    let best: Option | undefined;
    let gain = 0;
    for (const option of options) {
      if (set.includes(option) || !fits(set, option)) continue;
      const now = graph.deficit([...barsOf(set), ...option.bars]);
      // A second bar to an island first looks like no gain: it hangs on, but by one way only.
      const worth = (deficit - now) / (option.cost + LEAST_COST);
      if (worth > gain) [best, gain] = [option, worth];
    }
    if (!best) break;
    set.push(best);
    deficit = graph.deficit(barsOf(set));
  }
  return set;
}

/** Takes out options, dearest first, that the set holds as well without. */
function thinOut(graph: HoldingGraph, set: Option[], costOf: (set: readonly Option[]) => number): void {
  const deficit = graph.deficit(barsOf(set));
  for (const option of [...set].sort((p, q) => q.cost - p.cost)) {
    const without = set.filter((o) => o !== option);
    if (graph.deficit(barsOf(without)) <= deficit && costOf(without) <= costOf(set)) set.splice(set.indexOf(option), 1);
  }
}

/** Puts another option in an option's place while that costs less and holds as well; what is fixed stays. */
function swap(
  graph: HoldingGraph,
  set: Option[],
  options: readonly Option[],
  costOf: (set: readonly Option[]) => number,
  fits: (set: readonly Option[], more: Option) => boolean,
  fixed: readonly Option[] = [],
): void {
  const deficit = graph.deficit(barsOf([...fixed, ...set]));
  for (let round = 0, better = true; better && round < 8; round++) {
    better = false;
    for (let i = 0; i < set.length; i++) {
      const out = set[i]!;
      const rest = [...fixed, ...set.filter((o) => o !== out)];
      let now = costOf([...fixed, ...set]);
      for (const option of options) {
        if (option === out || set.includes(option) || !sharePiece(option, out)) continue;
        if (!fits(rest, option)) continue;
        const next = [...rest, option];
        const cost = costOf(next);
        if (cost < now - ROUNDING && graph.deficit(barsOf(next)) <= deficit) {
          set[i] = option;
          now = cost;
          better = true;
        }
      }
    }
  }
}
