/**
 * The sequence of a plate's openings as a round trip that may be begun between any two words: first the shortest, then,
 * for a little more way, one that comes back to hot metal later.
 *
 * 1. The shortest round trip, words kept together (find-tour.ts).
 * 2. While the way is no more than the extra share longer and words stay whole: openings change places, move, or a stretch
 *    is run backwards, whenever the sum of what is too hot falls.
 * 3. The best points to pierce for that sequence.
 */
import { seeded } from '../../sheet/seeded.ts';
import type { Point } from '../../shapes.ts';
import { contourToRing } from '../../measure/arc.ts';
import { chooseBestPoints } from '../tour/best-points.ts';
import { keepsClusters } from '../tour/clusters.ts';
import { createGapMeasure } from './opening-gap.ts';
import { HOT, measureHeatBetween } from './heat-measure.ts';
import type { CutSettings } from '../sheet-plan.ts';
import { findTour } from '../tour/find-tour.ts';
import type { TourGroup } from '../tour/tour-group.ts';
import type { PreparedOpening } from './prepared-opening.ts';
import { COARSE_ERROR_MM } from '../../units.ts';

/** One way round: the sequence runs so, and the leads suit it. */
export interface Round {
  /** Numbers of openings. */
  readonly sequence: readonly number[];
  /** For each opening (by its number) the lead of its outer pass. */
  readonly taken: readonly number[];
}

/** How much longer the ways between the openings of a plate may become for the sake of heat, unless it is said. */
export const EXTRA_SHARE = 0.04;
/** Words that must stay whole make more kicks useless than a plain tour does. */
const KICKS_PER_OPENING = 200;
/** Tries for each opening; more find little. */
const TRIES_PER_OPENING = 100;

/** The same round trip, forwards and backwards. */
export function findCoolRound(
  openings: readonly PreparedOpening[],
  settings: CutSettings,
  extraShare: number,
): readonly [Round, Round] {
  const groups = openings.map((o): TourGroup => ({
    points: o.outer.leads.map((l) => l.start.at),
    ...(!o.isLoose && { cluster: o.word }),
  }));
  const short = findTour(groups, { kicksPerGroup: KICKS_PER_OPENING });
  const tally = new Tally(openings, groups, short.taken, settings);
  const sequence = coolDown([...short.sequence], groups, tally, short.lengthMm * (1 + extraShare));
  const gap = createGapMeasure(openings);
  const sizes = groups.map((g) => g.points.length);
  const back = [...sequence].reverse();
  return [
    { sequence, taken: chooseBestPoints(sizes, sequence, gap) },
    { sequence: back, taken: chooseBestPoints(sizes, back, gap) },
  ];
}

function coolDown(start: number[], groups: readonly TourGroup[], tally: Tally, mostMm: number): number[] {
  if (start.length < 4) return start;
  const random = seeded(2);
  const clusters = groups.map((g) => g.cluster);
  let sequence = start;
  let heat = tally.excess(sequence);
  for (let i = 0; i < start.length * TRIES_PER_OPENING && heat > 0; i++) {
    const tried = changeSequence(sequence, random);
    if (tally.lengthMm(tried) > mostMm || !keepsClusters(clusters, tried)) continue;
    const warm = tally.excess(tried);
    if (warm < heat) [sequence, heat] = [tried, warm];
  }
  return sequence;
}

/** A change reaches no farther than this: letters of a word, words of a line. */
const CHANGE_REACH = 24;

/** One change: two change places, one moves, or a stretch turns round. */
function changeSequence(sequence: readonly number[], random: () => number): number[] {
  const n = sequence.length;
  const from = Math.floor(random() * n);
  const size = 2 + Math.floor(random() * Math.min(CHANGE_REACH, n - 1));
  const turned = [...sequence.slice(from), ...sequence.slice(0, from)];
  const stretch = turned.slice(0, size);
  const kind = random();
  if (kind < 1 / 3) [stretch[0], stretch[stretch.length - 1]] = [stretch.at(-1)!, stretch[0]!];
  else if (kind < 2 / 3) stretch.push(stretch.shift()!);
  else stretch.reverse();
  return [...stretch, ...turned.slice(size)];
}

/** What one opening warms of another does not change with the sequence: worked out once for each two that are near. */
class Tally {
  private readonly points: readonly Point[];
  private readonly seconds: readonly number[];
  private readonly warmedBy: readonly { readonly other: number; readonly share: number }[][];

  constructor(
    openings: readonly PreparedOpening[],
    groups: readonly TourGroup[],
    taken: readonly number[],
    private readonly settings: CutSettings,
  ) {
    this.points = groups.map((g, i) => g.points[taken[i]!]!);
    const { feedMmMin, pierceS } = settings;
    this.seconds = openings.map((o) =>
      [...o.inner, o.outer].reduce((s, p) => s + pierceS + (p.lengthMm / feedMmMin) * 60, 0),
    );
    const rings = openings.map((o) => contourToRing(o.outer.path, COARSE_ERROR_MM));
    this.warmedBy = rings.map((ring, i) =>
      rings.flatMap((from, other) => {
        const share = other === i ? 0 : measureHeatBetween(from, ring);
        return share > 0 ? [{ other, share }] : [];
      }),
    );
  }

  lengthMm(sequence: readonly number[]): number {
    let sum = 0;
    sequence.forEach((o, i) => {
      const [a, b] = [this.points[o]!, this.points[sequence[(i + 1) % sequence.length]!]!];
      sum += Math.hypot(a.x - b.x, a.y - b.y);
    });
    return sum;
  }

  /** Sum over openings of how far the hottest spot of their edge is above HOT when they are cut. */
  excess(sequence: readonly number[]): number {
    const done = new Float64Array(sequence.length).fill(-1);
    let [now, sum] = [0, 0];
    let at: Point | undefined;
    for (const o of sequence) {
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
