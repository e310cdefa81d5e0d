import { mmAt, type TimedRun } from '../../../geometry/cutplan/cost/feed.ts';
import { timePlan } from '../../../geometry/cutplan/cost/time-plan.ts';
import type { CutPass, CutSettings, SheetPlan } from '../../../geometry/cutplan/sheet-plan.ts';
import type { Point } from '../../../geometry/shapes.ts';

/** When what happens to one contour, s since the first movement. */
export interface Beat {
  readonly pass: CutPass;
  readonly way: readonly Point[];
  readonly raised: boolean;
  /** The head sets out for it. */
  readonly fromS: number;
  /** The head is above the place where it pierces. */
  readonly pierceS: number;
  readonly cutS: number;
  readonly endS: number;
  readonly cut: TimedRun;
}

/** Pass by pass, by the same times as the price. */
export function timelineOf(plan: SheetPlan, settings: CutSettings): readonly Beat[] {
  return timePlan(plan, settings).passes.map(({ fromS, rapidS, raiseS, pierceS, cut }, i) => {
    const pass = plan.passes[i]!;
    const rapid = plan.rapids[i];
    const [overS, beginS] = [fromS + rapidS + raiseS, fromS + rapidS + raiseS + pierceS];
    return {
      pass,
      way: rapid?.way ?? [pass.pierce],
      raised: rapid?.raised ?? false,
      fromS,
      pierceS: overS,
      cutS: beginS,
      endS: beginS + cut.seconds,
      cut,
    };
  });
}

export function lengthOf(beats: readonly Beat[]): number {
  return beats.at(-1)?.endS ?? 0;
}

/** The beat that is on at this time; the last one at the end. */
export function beatAt(beats: readonly Beat[], atS: number): number {
  let [low, high] = [0, beats.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (beats[middle]!.endS > atS) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** How many contours are done at this time. */
export function doneAt(beats: readonly Beat[], atS: number): number {
  const at = beatAt(beats, atS);
  return at + (atS >= (beats[at]?.endS ?? Infinity) ? 1 : 0);
}

/** How far the cut of a beat has come, mm. */
export function cutMm({ cut, cutS }: Beat, atS: number): number {
  return mmAt(cut, Math.max(0, atS - cutS));
}

export function wayMm(way: readonly Point[]): number {
  return way.reduce((sum, p, i) => (i === 0 ? 0 : sum + Math.hypot(p.x - way[i - 1]!.x, p.y - way[i - 1]!.y)), 0);
}

/** The points of a line up to so far along it; the last is where that is. */
export function alongWay(way: readonly Point[], mm: number): readonly Point[] {
  const out: Point[] = way[0] ? [way[0]] : [];
  let left = mm;
  for (let i = 1; i < way.length; i++) {
    const [a, b] = [way[i - 1]!, way[i]!];
    const side = Math.hypot(b.x - a.x, b.y - a.y);
    if (side > left) {
      const share = side > 0 ? left / side : 0;
      out.push({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
      return out;
    }
    left -= side;
    out.push(b);
  }
  return out;
}
