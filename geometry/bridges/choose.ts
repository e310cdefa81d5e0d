import type { Manner } from '../design/schema.ts';
import type { Bar } from './bar.ts';
import type { Pieces } from './find-pieces.ts';
import { mirroredBar, ontoAxis } from './mirror.ts';
import { anglesApart, attachedTo, outOfLine, sideBySide, twins } from './neighbours.ts';
import { planksOf } from './planks.ts';
import { chooseRound, fillLongSpans, isRound } from './spans.ts';
import { type Link, reached, weakLinks } from './two-ways.ts';
import { ROUNDING } from '../units.ts';

/** What a choice must keep; mm. */
export interface ChoiceRule {
  readonly widthMm: number;
  readonly leastOpeningMm: number;
  readonly longestSpanMm: number;
  readonly manner: Manner;
}

/** Bars chosen together: one, or a bar and its mirror image. */
interface Option {
  readonly bars: readonly Bar[];
  readonly cost: number;
}

/**
 * The bars to build.
 *
 * In: pieces, possible bars (cheapest first), rule, and the axis when the letter is its own mirror image.
 * Out: bars such that every piece hangs on the rim, true islands by two bars at least that fail independently
 * (no single bar's loss parts anything), at no more than longestSpanMm of edge between two; among such sets one of
 * least hurt. Not promised: the least possible for more than one island (a local search is used). Where the bars given
 * do not suffice, the set comes back as good as it gets; the proof afterwards tells.
 *
 * 1. Necks thinner than a bridge are widened, each where it costs least; that joins near islands.
 * 2. What is left is a graph: metal as nodes, bars as links. Start sets are mended until no link is weak.
 * 3. Bars are taken out, then swapped, while that hurts the letter less.
 * 4. Long edges get more bars, evenly spread.
 */
export function chooseBars(pieces: Pieces, bars: readonly Bar[], rule: ChoiceRule, axis: number | undefined): Bar[] {
  const widened = bestOfEachNeck(
    bars.filter((b) => b.widens),
    rule,
  );
  const group = joinedBy(pieces, widened);
  const open = distinctBars(
    bars.filter((b) => !b.widens && (b.carries !== undefined || group[b.a] !== group[b.b])),
    pieces,
    rule,
  );
  const graph = new Graph(pieces, group);
  if (graph.nodes === 1) return widened;
  const only = pieces.pieces.filter((p) => p.id > 0 && group[p.id] !== group[0]);
  const island = only[0];
  if (only.length === 1 && island && isRound(island, rule.longestSpanMm)) {
    const all = bars.filter((b) => !b.widens && b.a === island.id);
    return [...widened, ...chooseRound(island, all, rule)];
  }
  let chosen = search(graph, optionsOf(open, pieces, rule, axis), pieces, rule);
  // A letter whose mirrored places do not suffice is bridged without the mirror.
  if (axis !== undefined && graph.lacks(chosen) > 0) {
    chosen = search(graph, optionsOf(open, pieces, rule, undefined), pieces, rule);
  }
  return [...widened, ...fillLongSpans(pieces, chosen, open, rule)];
}

/**
 * Bars that complete a set which has to stand as it is (a person's bridges and what stays beside them).
 * In: pieces, the bars that stand, the bars that may be added, rule. Out: the standing bars first, then what was
 * added: as few as hold every piece twice, or as well as the bars given can, and more where an edge runs too far.
 */
export function completeBars(pieces: Pieces, standing: readonly Bar[], bars: readonly Bar[], rule: ChoiceRule): Bar[] {
  const group = joinedBy(
    pieces,
    standing.filter((b) => b.widens),
  );
  const open = distinctBars(
    bars.filter((b) => !b.widens && (b.carries !== undefined || group[b.a] !== group[b.b])),
    pieces,
    rule,
  );
  const graph = new Graph(pieces, group);
  const options = open.map((bar) => ({ bars: [bar], cost: bar.cost }));
  const all = standing.map((bar) => ({ bars: [bar], cost: bar.cost }));
  const fixed = failingAlone(standing, rule).map((bar) => ({ bars: [bar], cost: bar.cost }));
  const fits = (set: readonly Option[], more: Option) => ![...all, ...set].some((o) => clash(o, more, rule));
  const added = mend(graph, fixed, options, fits).slice(fixed.length);
  swap(graph, added, options, (set) => totalHurt(set, pieces, rule), fits, fixed);
  return fillLongSpans(pieces, [...standing, ...barsOf(added)], open, rule);
}

/** How far bars are from holding every piece twice; 0 when they do. Bars that can't fail alone count once. */
export function lacksOf(pieces: Pieces, bars: readonly Bar[], rule: ChoiceRule): number {
  const group = joinedBy(
    pieces,
    bars.filter((b) => b.widens),
  );
  return new Graph(pieces, group).lacks(failingAlone(bars, rule));
}

/** Of bars that cross or run into each other only the first, since one break takes them all. */
function failingAlone(bars: readonly Bar[], rule: ChoiceRule): Bar[] {
  const kept: Bar[] = [];
  for (const bar of bars) {
    if (!bar.widens && !kept.some((k) => sideBySide(k, bar, rule.widthMm))) kept.push(bar);
  }
  return kept;
}

/** Nodes are groups of pieces already joined; node 0 holds the rim. */
class Graph {
  readonly nodes: number;
  private readonly node: readonly number[];

  constructor(pieces: Pieces, group: readonly number[]) {
    const names = [...new Set(group)];
    this.nodes = names.length;
    this.node = pieces.pieces.map((p) => names.indexOf(group[p.id]!));
  }

  links(bars: readonly Bar[]): Link[] {
    return bars.flatMap((bar) => planksOf(bar).map(({ a, b }) => ({ a: this.node[a]!, b: this.node[b]! })));
  }

  /** How far a set is from holding twice over: pieces out of reach count more than weak links. */
  lacks(bars: readonly Bar[]): number {
    const links = this.links(bars);
    const { whole, weak } = weakLinks(this.nodes, links);
    if (whole) return weak.length;
    const met = reached(this.nodes, links).filter(Boolean).length;
    return (this.nodes - met) * 1000 + weak.length;
  }
}

function search(graph: Graph, options: readonly Option[], pieces: Pieces, rule: ChoiceRule): Bar[] {
  const hurt = (set: readonly Option[]) => totalHurt(set, pieces, rule);
  const fits = (set: readonly Option[], more: Option) => !set.some((o) => clash(o, more, rule));
  let best: Option[] = [];
  let bestLacks = Infinity;
  let bestHurt = Infinity;
  for (const start of [startFromPairs(options, pieces, rule), []]) {
    const set = mend(graph, start, options, fits);
    thinOut(graph, set, hurt);
    swap(graph, set, options, hurt, fits);
    const lacks = graph.lacks(barsOf(set));
    const cost = hurt(set);
    if (lacks < bestLacks || (lacks === bestLacks && cost < bestHurt)) [best, bestLacks, bestHurt] = [set, lacks, cost];
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
        const cost = totalHurt(pair, pieces, rule, piece.id);
        if (cost < least) [best, least] = [pair, cost];
      }
    });
    for (const option of best) if (!set.includes(option) && !set.some((o) => clash(o, option, rule))) set.push(option);
  }
  return set;
}

/** Adds options until nothing is weak, each time the cheapest that helps most. */
function mend(
  graph: Graph,
  start: readonly Option[],
  options: readonly Option[],
  fits: (set: readonly Option[], more: Option) => boolean,
): Option[] {
  const set = [...start];
  let lacks = graph.lacks(barsOf(set));
  while (lacks > 0) {
    let best: Option | undefined;
    let gain = 0;
    for (const option of options) {
      if (set.includes(option) || !fits(set, option)) continue;
      const now = graph.lacks([...barsOf(set), ...option.bars]);
      // A second bar to an island first looks like no gain: it hangs on, but by one way only.
      const worth = (lacks - now) / (option.cost + LEAST_COST);
      if (worth > gain) [best, gain] = [option, worth];
    }
    if (!best) break;
    set.push(best);
    lacks = graph.lacks(barsOf(set));
  }
  return set;
}

/** Takes out options, dearest first, that the set holds as well without. */
function thinOut(graph: Graph, set: Option[], hurt: (set: readonly Option[]) => number): void {
  const lacks = graph.lacks(barsOf(set));
  for (const option of [...set].sort((p, q) => q.cost - p.cost)) {
    const without = set.filter((o) => o !== option);
    if (graph.lacks(barsOf(without)) <= lacks && hurt(without) <= hurt(set)) set.splice(set.indexOf(option), 1);
  }
}

/** Puts another option in an option's place while that hurts less and holds as well; what is fixed stays. */
function swap(
  graph: Graph,
  set: Option[],
  options: readonly Option[],
  hurt: (set: readonly Option[]) => number,
  fits: (set: readonly Option[], more: Option) => boolean,
  fixed: readonly Option[] = [],
): void {
  const lacks = graph.lacks(barsOf([...fixed, ...set]));
  for (let round = 0, better = true; better && round < 8; round++) {
    better = false;
    for (let i = 0; i < set.length; i++) {
      const out = set[i]!;
      const rest = [...fixed, ...set.filter((o) => o !== out)];
      let now = hurt([...fixed, ...set]);
      for (const option of options) {
        if (option === out || set.includes(option) || !sharePiece(option, out)) continue;
        if (!fits(rest, option)) continue;
        const next = [...rest, option];
        const cost = hurt(next);
        if (cost < now - ROUNDING && graph.lacks(barsOf(next)) <= lacks) {
          set[i] = option;
          now = cost;
          better = true;
        }
      }
    }
  }
}

function sharePiece(p: Option, q: Option): boolean {
  return p.bars.some((b) =>
    [b.a, b.b, b.carries?.piece].some((id) => id !== undefined && id > 0 && q.bars.some((c) => attachedTo(c, id))),
  );
}

/**
 * How much it hurts that bars hold an island from one side only, in bars (the one that hurts least) and in widths;
 * bars that go through the letter stand on two sides.
 */
const GATHERED = {
  hidden: { bars: 2, widths: 0.8 },
  upright: { bars: 2.5, widths: 1 },
  band: { bars: 2.5, widths: 1 },
} as const;
/** Added to every cost in mm, so that a bar that costs nothing still has a finite worth. */
const LEAST_COST = 0.01;
/** How much two bars side by side hurt. */
const TWINS = { bars: 2, widths: 14 };
/** How much it hurts that an island's two bars do not lie in one line, in bars. */
const OUT_OF_LINE = 0.6;

/** Sum of the bars' hurt, and of leaving islands held on one side only. */
function totalHurt(set: readonly Option[], pieces: Pieces, rule: ChoiceRule, onlyPiece?: number): number {
  const bars = barsOf(set);
  let sum = set.reduce((total, o) => total + o.cost, 0);
  for (const piece of pieces.pieces) {
    if (piece.id === 0 || piece.small || (onlyPiece !== undefined && piece.id !== onlyPiece)) continue;
    const mine = bars.filter((b) => attachedTo(b, piece.id));
    if (mine.length < 2) continue;
    const least = Math.min(...mine.map((b) => b.cost));
    const one = GATHERED[rule.manner];
    sum += anglesApart(piece, mine) * (one.bars * least + one.widths * rule.widthMm);
    sum += twins(piece, mine) * (TWINS.bars * least + TWINS.widths * rule.widthMm);
    if (mine.length === 2) sum += outOfLine(mine[0]!, mine[1]!) * OUT_OF_LINE * least;
  }
  return sum;
}

function barsOf(set: readonly Option[]): Bar[] {
  return set.flatMap((o) => o.bars);
}

function clash(p: Option, q: Option, rule: ChoiceRule): boolean {
  return p.bars.some((a) => q.bars.some((b) => sideBySide(a, b, rule.widthMm + rule.leastOpeningMm)));
}

/** Single bars, or bars with their mirror images where the letter is its own. */
function optionsOf(bars: readonly Bar[], pieces: Pieces, rule: ChoiceRule, axis: number | undefined): Option[] {
  if (axis === undefined) return bars.map((bar) => ({ bars: [bar], cost: bar.cost }));
  const options: Option[] = [];
  const used: Bar[] = [];
  for (const one of bars) {
    if (used.some((u) => sameBar(u, one, 0.5 * rule.widthMm))) continue;
    const bar = ontoAxis(one, axis, pieces, rule.widthMm) ?? one;
    const image = mirroredBar(bar, axis, pieces, rule.widthMm);
    if (!image) continue;
    if (image === bar) {
      options.push({ bars: [bar], cost: bar.cost });
      used.push(bar);
    } else if (!sideBySide(bar, image, rule.widthMm + rule.leastOpeningMm)) {
      options.push({ bars: [bar, image], cost: 2 * bar.cost });
      used.push(image);
    }
  }
  return options;
}

/**
 * Cheapest of bars that stand at nearly the same place; of those between the same two pieces at most so many on each
 * side of the island, or a long thin stroke would leave no place elsewhere to choose from.
 */
function distinctBars(bars: readonly Bar[], pieces: Pieces, rule: ChoiceRule): Bar[] {
  const kept: Bar[] = [];
  const count = new Map<string, number>();
  for (const bar of bars) {
    const pair = bar.carries ? `over ${bar.carries.piece}` : [bar.a, bar.b].sort((p, q) => p - q).join('-');
    const group = bar.carries ? pair : `${pair} ${sideOf(bar, pieces)}`;
    const n = count.get(group) ?? 0;
    if (n >= (bar.carries ? 4 : 1) * MOST_OF_A_SIDE) continue;
    if (kept.some((k) => k.carries?.piece === bar.carries?.piece && sameBar(k, bar, 0.4 * rule.widthMm))) continue;
    kept.push(bar);
    count.set(group, n + 1);
  }
  return kept;
}

const MOST_OF_A_SIDE = 10;

/** Above, below, left or right of the middle of the island it starts from (of two, the one named first). */
function sideOf(bar: Bar, pieces: Pieces): string {
  const [id, foot] = bar.a > 0 ? [bar.a, bar.from] : [bar.b, bar.to];
  const { at } = pieces.pieces[id]!;
  const [x, y] = [foot.x - at.x, foot.y - at.y];
  if (Math.abs(x) > Math.abs(y)) return x > 0 ? 'right' : 'left';
  return y > 0 ? 'above' : 'below';
}

function sameBar(p: Bar, q: Bar, mm: number): boolean {
  const d = (ax: number, ay: number, bx: number, by: number) => Math.hypot(ax - bx, ay - by) < mm;
  return (
    (d(p.from.x, p.from.y, q.from.x, q.from.y) && d(p.to.x, p.to.y, q.to.x, q.to.y)) ||
    (d(p.from.x, p.from.y, q.to.x, q.to.y) && d(p.to.x, p.to.y, q.from.x, q.from.y))
  );
}

/** Of the bars that widen the same neck, the cheapest. */
function bestOfEachNeck(bars: readonly Bar[], rule: ChoiceRule): Bar[] {
  const kept: Bar[] = [];
  const middle = (b: Bar) => ({ x: (b.from.x + b.to.x) / 2, y: (b.from.y + b.to.y) / 2 });
  for (const bar of bars) {
    const at = middle(bar);
    const known = kept.some((k) => {
      const other = middle(k);
      const pair = (k.a === bar.a && k.b === bar.b) || (k.a === bar.b && k.b === bar.a);
      return pair && Math.hypot(other.x - at.x, other.y - at.y) < 1.5 * rule.widthMm;
    });
    if (!known) kept.push(bar);
  }
  return kept;
}

/** For every piece the number of the group that widened necks join it to. */
function joinedBy(pieces: Pieces, bars: readonly Bar[]): number[] {
  const group = pieces.pieces.map((p) => p.id);
  for (const bar of bars) {
    const [low, high] = [Math.min(group[bar.a]!, group[bar.b]!), Math.max(group[bar.a]!, group[bar.b]!)];
    group.forEach((g, i) => {
      if (g === high) group[i] = low;
    });
  }
  return group;
}
