import type { Point } from '../../shapes.ts';
import type { OpeningContour } from '../cut-plan.ts';

/** The contours of one opening, inner ones first: they stay together and in this order. */
export type OpeningContours = readonly OpeningContour[];

/**
 * The order of cutting: a word is finished before the next is begun, so that a sheet that shifts does so between words;
 * words and the openings within a word go to the nearest next, from a fixed start. Ties fall to the given order.
 * Not promised: the shortest way.
 */
export function sequenceOpenings(openings: readonly OpeningContours[], start: Point): OpeningContour[] {
  const words = new Map<string, OpeningContours[]>();
  for (const opening of openings) {
    const name = opening[0]?.word ?? '';
    const word = words.get(name);
    if (word) word.push(opening);
    else words.set(name, [opening]);
  }
  const left = [...words.values()];
  const order: OpeningContour[] = [];
  let at = start;
  for (let word = takeNearest(left, (w) => wordGapMm(at, w)); word; word = takeNearest(left, (w) => wordGapMm(at, w))) {
    for (let next = takeNearest(word, (o) => gapMm(at, o)); next; next = takeNearest(word, (o) => gapMm(at, o))) {
      order.push(...next);
      at = next[next.length - 1]?.contour[0] ?? at;
    }
  }
  return order;
}

function takeNearest<T>(from: T[], gap: (item: T) => number): T | undefined {
  let best = 0;
  let bestMm = Infinity;
  from.forEach((item, i) => {
    const mm = gap(item);
    if (mm < bestMm) [best, bestMm] = [i, mm];
  });
  return from.splice(best, 1)[0];
}

function wordGapMm(at: Point, word: readonly OpeningContours[]): number {
  return word.reduce((least, opening) => Math.min(least, gapMm(at, opening)), Infinity);
}

/** From the head's place to where the opening is first pierced: the first vertex of its first contour. */
function gapMm(at: Point, opening: OpeningContours): number {
  const pierce = opening[0]?.contour[0];
  return pierce ? Math.hypot(pierce.x - at.x, pierce.y - at.y) : Infinity;
}
