import { nearestOnSegment } from '../measure/distance.ts';
import type { Point, Region } from '../shapes.ts';
import { bleedMm } from './bleed.ts';
import { gapMm, type Surface } from './surface.ts';

/** How far one opening's edge stands off the wood. */
export interface OpeningGap {
  /** Place of the opening in the list, from 0. */
  readonly opening: number;
  readonly gapMm: number;
  /** Where on its edge that is. */
  readonly at: Point;
  /** How far paint gets under the edge there: a rule of thumb (bleed.ts). */
  readonly bleedMm: number;
}

/**
 * Greatest gap between plate and wood at the edge of each opening, where paint gets under.
 * In: openings and the surface they lie on, mm. The gap only grows with the distance from where the plate touches, so
 * it is greatest at a corner of the edge; under a hollow head it grows towards the middle, and sides are looked at too.
 */
export function gapAtOpenings(
  openings: readonly { readonly region: Region }[],
  surface: Surface,
): readonly OpeningGap[] {
  const inwards = surface.kind === 'head' && surface.crownMm < 0;
  return openings.map(({ region }, opening) => {
    let [most, at]: [number, Point] = [0, region.outer[0] ?? { x: 0, y: 0 }];
    const look = (p: Point): void => {
      const gap = gapMm(surface, p);
      if (gap > most) [most, at] = [gap, p];
    };
    for (const ring of [region.outer, ...region.holes]) {
      ring.forEach((p, i) => look(inwards ? nearestOnSegment({ x: 0, y: 0 }, ring.at(i - 1)!, p) : p));
    }
    return { opening, gapMm: most, at, bleedMm: bleedMm(most) };
  });
}

/** The greatest of them; undefined when nothing is cut. */
export function greatestGap(gaps: readonly OpeningGap[]): OpeningGap | undefined {
  return gaps.reduce<OpeningGap | undefined>((best, g) => (!best || g.gapMm > best.gapMm ? g : best), undefined);
}
