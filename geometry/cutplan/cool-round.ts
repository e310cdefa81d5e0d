/**
 * The order of a plate's openings as a round trip that may be begun between any two words: first the shortest, then,
 * for a little more way, one that comes back to hot metal later.
 *
 * 1. The shortest round trip, words kept together (tour.ts).
 * 2. While the way is no more than EXTRA_SHARE longer: openings within a word change places, words change places or are
 *    run backwards, whenever the sum of what is too hot falls.
 * 3. The best points to pierce for that order.
 */
import { seeded } from '../sheet/seeded.ts';
import type { Point } from '../shapes.ts';
import { contourToRing } from '../measure/arc.ts';
import { HOT, heatBetween } from './heat-measure.ts';
import type { CutSettings } from './sheet-plan.ts';
import { bestPoints, shortTour, type TourGroup } from './tour.ts';
import type { WorkOpening } from './work-opening.ts';

export interface Round {
  /** Numbers of openings. */
  readonly order: readonly number[];
  /** For each opening (by its number) the lead of its outer pass. */
  readonly taken: readonly number[];
}

/** How much longer the ways between the openings of a plate may become for the sake of heat. */
const EXTRA_SHARE = 0.06;
/** Tries for each opening; more find little. */
const TRIES_PER_OPENING = 60;
const OUTLINE_MM = 0.1;

export function coolRound(openings: readonly WorkOpening[], settings: CutSettings): Round {
  const groups = openings.map((o): TourGroup => ({ points: o.outer.leads.map((l) => l.start.at), club: o.word }));
  const short = shortTour(groups);
  if (openings.length < 4) return short;
  const tally = new Tally(openings, groups, short.taken, settings);
  const order = cooler([...short.order], tally, openings, short.lengthMm * (1 + EXTRA_SHARE));
  return { order, taken: bestPoints(groups, order) };
}

function cooler(start: number[], tally: Tally, openings: readonly WorkOpening[], mostMm: number): number[] {
  const random = seeded(2);
  let words = wordsOf(start, openings);
  let order = start;
  let heat = tally.excess(order);
  for (let i = 0; i < openings.length * TRIES_PER_OPENING && heat > 0; i++) {
    const tried = changed(words, random);
    const next = tried.flat();
    if (tally.lengthMm(next) > mostMm) continue;
    const warm = tally.excess(next);
    if (warm > heat || (warm === heat && tally.lengthMm(next) >= tally.lengthMm(order))) continue;
    [words, order, heat] = [tried, next, warm];
  }
  return order;
}

/** The order as runs of one word; the round begins where a word does. */
function wordsOf(order: readonly number[], openings: readonly WorkOpening[]): number[][] {
  const word = (i: number) => openings[order[(i + order.length) % order.length]!]!.word;
  const first = Math.max(
    0,
    order.findIndex((_, i) => word(i) !== word(i - 1)),
  );
  const words: number[][] = [];
  [...order.slice(first), ...order.slice(0, first)].forEach((o, i) => {
    if (i === 0 || word(first + i) !== word(first + i - 1)) words.push([o]);
    else words.at(-1)!.push(o);
  });
  return words;
}

/** One change: two openings of a word change places, one moves within it, a word turns round, two words change places. */
function changed(words: readonly number[][], random: () => number): number[][] {
  const out = words.map((w) => [...w]);
  const pick = (count: number) => Math.floor(random() * count);
  const kind = random();
  const w = pick(out.length);
  const word = out[w]!;
  if (kind < 0.35 && word.length > 1) {
    const [i, j] = [pick(word.length), pick(word.length)];
    [word[i], word[j]] = [word[j]!, word[i]!];
  } else if (kind < 0.7 && word.length > 1) {
    const [moved] = word.splice(pick(word.length), 1);
    word.splice(pick(word.length + 1), 0, moved!);
  } else if (kind < 0.85) word.reverse();
  else {
    const other = pick(out.length);
    [out[w], out[other]] = [out[other]!, word];
  }
  return out;
}

/** What one opening warms of another does not change with the order: worked out once for each two that are near. */
class Tally {
  private readonly points: readonly Point[];
  private readonly seconds: readonly number[];
  private readonly warmedBy: readonly { readonly other: number; readonly share: number }[][];

  constructor(
    openings: readonly WorkOpening[],
    groups: readonly TourGroup[],
    taken: readonly number[],
    private readonly settings: CutSettings,
  ) {
    this.points = groups.map((g, i) => g.points[taken[i]!]!);
    const { feedMmMin, pierceS } = settings;
    this.seconds = openings.map((o) =>
      [...o.inner, o.outer].reduce((s, p) => s + pierceS + (p.lengthMm / feedMmMin) * 60, 0),
    );
    const rings = openings.map((o) => contourToRing(o.outer.path, OUTLINE_MM));
    this.warmedBy = rings.map((ring, i) =>
      rings.flatMap((from, other) => {
        const share = other === i ? 0 : heatBetween(from, ring);
        return share > 0 ? [{ other, share }] : [];
      }),
    );
  }

  lengthMm(order: readonly number[]): number {
    let sum = 0;
    order.forEach((o, i) => {
      const [a, b] = [this.points[o]!, this.points[order[(i + 1) % order.length]!]!];
      sum += Math.hypot(a.x - b.x, a.y - b.y);
    });
    return sum;
  }

  /** Sum over openings of how far the hottest spot of their edge is above HOT when they are cut. */
  excess(order: readonly number[]): number {
    const done = new Float64Array(order.length).fill(-1);
    let [now, sum] = [0, 0];
    let at: Point | undefined;
    for (const o of order) {
      const p = this.points[o]!;
      if (at) now += (Math.hypot(p.x - at.x, p.y - at.y) / this.settings.rapidMmMin) * 60;
      let heat = 0;
      for (const { other, share } of this.warmedBy[o]!) {
        if (done[other]! >= 0) heat += share * Math.exp(-(now - done[other]!) / this.settings.coolS);
      }
      sum += Math.max(0, heat - HOT);
      now += this.seconds[o]!;
      done[o] = now;
      at = p;
    }
    return sum;
  }
}
