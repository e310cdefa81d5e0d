import type { Beam } from '../measure/grillage.ts';
import type { StockRules } from '../stock/rules.ts';
import type { Bar } from './bar.ts';
import type { Pieces } from './find-pieces.ts';
import { measureBar } from './measure-bar.ts';
import { mirroredBar } from './mirror.ts';
import { attachedTo, middlesApart, sideBySide } from './neighbours.ts';
import { planksOf } from './planks.ts';
import { beamsOf, hangOf, type Metal, softness } from './stiffness.ts';

/** Bars are made so many times the rule's width, in turn: it costs a letter less than one more bar across a stroke. */
const WIDER = [1.5, 2];
/** Islands share bars: what mends one may mend or need another. */
const ROUNDS = 2;
/** Places tried for one more bar, cheapest first. */
const MOST_TRIED = 60;
/** A change that leaves the island too soft must bring it to this share of what it was, to be worth its looks. */
const LEAST_GAIN = 0.8;

/**
 * Bars for islands that would give too much when touched, or sag.
 *
 * In: the metal of the unbridged openings, their pieces, bars chosen, all possible bars (cheapest first), rules, and
 * the axis of a letter that is its own mirror image. Out: the same bars, some with others added or made wider; islands
 * that stay too soft are told by hangOf afterwards. Stock of unknown stiffness leaves the bars as they are.
 *
 * For each island that is too soft, the softest first, the first of these that suffices, else what helps most:
 * 1. its bars wider, where their place allows it;
 * 2. one more bar (with its mirror image): the cheapest of those that suffice, else the one that helps most;
 * 3. both.
 */
export function stiffen(
  metal: Metal,
  pieces: Pieces,
  chosen: readonly Bar[],
  possible: readonly Bar[],
  rules: StockRules,
  axis: number | undefined,
): Bar[] {
  let set = [...chosen];
  if (!rules.stiffness || metal.bodies.length === 0) return set;
  const known = new Map<Bar, Beam[]>();
  const beams = (bars: readonly Bar[]) =>
    bars.flatMap((bar) => {
      const mine = known.get(bar) ?? planksOf(bar).flatMap((plank) => beamsOf(metal, plank));
      known.set(bar, mine);
      return mine;
    });
  const softnessOf = (bars: readonly Bar[], body: number) => {
    const hang = hangOf(metal, beams(bars), rules, body)[body];
    return hang ? softness(hang, rules) : Infinity;
  };
  for (let round = 0; round < ROUNDS; round++) {
    const tooSoft = hangOf(metal, beams(set), rules)
      .flatMap((hang, body) => (hang && softness(hang, rules) > 1 ? [{ body, by: softness(hang, rules) }] : []))
      .sort((p, q) => q.by - p.by);
    for (const { body } of tooSoft) {
      const holds = (bar: Bar) => pieces.pieces.some((p) => p.metal === body + 1 && attachedTo(bar, p.id));
      const soft = (bars: readonly Bar[]) => softnessOf(bars, body);
      const wider = (bars: readonly Bar[], share: number) =>
        bars.map((bar) => (holds(bar) ? widen(bar, share, bars, pieces, rules) : bar));
      const more = () => {
        const candidates = possible.filter((bar) => !bar.widens && holds(bar));
        return oneMore(set, withImages(candidates, pieces, rules, axis), rules, soft);
      };
      set = mend(set, soft, wider, more);
    }
  }
  return set;
}

/** The first change that suffices, else the one that helps most if it helps enough, else the bars as they are. */
function mend(
  set: Bar[],
  soft: (bars: readonly Bar[]) => number,
  wider: (bars: readonly Bar[], share: number) => Bar[],
  more: () => Bar[] | undefined,
): Bar[] {
  const now = soft(set);
  if (now <= 1) return set;
  let best = { bars: set, by: LEAST_GAIN * now };
  const suffices = (bars: Bar[]) => {
    const by = soft(bars);
    if (by < best.by) best = { bars, by };
    return by <= 1;
  };
  for (const share of WIDER) {
    const bars = wider(set, share);
    if (suffices(bars)) return bars;
  }
  const withOne = more();
  if (!withOne || suffices(withOne)) return withOne ?? best.bars;
  for (const share of WIDER) {
    const bars = wider(withOne, share);
    if (suffices(bars)) return bars;
  }
  return best.bars;
}

/** The set with the option added that costs least of those that suffice, else with the one that helps most. */
function oneMore(
  set: readonly Bar[],
  options: readonly (readonly Bar[])[],
  rules: StockRules,
  softnessWith: (bars: readonly Bar[]) => number,
): Bar[] | undefined {
  const apart = rules.leastBridgeMm + rules.leastOpeningMm;
  let best: { bars: Bar[]; by: number } | undefined;
  let tried = 0;
  for (const option of options) {
    if (option.some((bar) => set.some((s) => sideBySide(s, bar, apart)))) continue;
    const bars = [...set, ...option];
    const by = softnessWith(bars);
    if (by <= 1) return bars;
    if (!best || by < best.by) best = { bars, by };
    if (++tried >= MOST_TRIED) break;
  }
  return best?.bars;
}

/** Options of one bar, or of a bar and its image, that stand clearly apart from one another; cheapest first. */
function withImages(
  bars: readonly Bar[],
  pieces: Pieces,
  rules: StockRules,
  axis: number | undefined,
): (readonly Bar[])[] {
  const width = rules.leastBridgeMm;
  const options: (readonly Bar[])[] = [];
  const seen: Bar[] = [];
  for (const bar of bars) {
    if (options.length >= 2 * MOST_TRIED) break;
    if (seen.some((s) => middlesApart(s, bar) < width)) continue;
    seen.push(bar);
    const image = axis === undefined ? bar : mirroredBar(bar, axis, pieces, width);
    if (!image) continue;
    if (image === bar) options.push([bar]);
    else if (!sideBySide(bar, image, width + rules.leastOpeningMm)) {
      options.push([bar, image]);
      seen.push(image);
    }
  }
  return options;
}

/** The bar made wider, where that shaves no stroke's end, leaves no sliver and keeps clear of the other bars. */
function widen(bar: Bar, share: number, set: readonly Bar[], pieces: Pieces, rules: StockRules): Bar {
  const widthMm = share * rules.leastBridgeMm;
  if (bar.widens || bar.carries || bar.widthMm >= widthMm) return bar;
  const apart = widthMm + rules.leastOpeningMm;
  if (set.some((other) => other !== bar && sideBySide(bar, other, apart))) return bar;
  const measure = (width: number) => measureBar(pieces.open, bar.from, bar.to, width, rules.leastOpeningMm);
  const [before, after] = [measure(bar.widthMm), measure(widthMm)];
  return after.overhang > before.overhang || after.slivers > before.slivers ? bar : { ...bar, widthMm };
}
