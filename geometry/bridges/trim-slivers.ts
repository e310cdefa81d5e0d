import { offset, ringsOf, subtract } from '../adapters/clipper.ts';
import { boxesWithin, joinBoxes, regionAreaMm2, ringBox } from '../measure/ring.ts';
import type { Point, Region, Ring } from '../shapes.ts';
import { PINCH_MM } from '../units.ts';

/** A corner that the cut rounds off is no sliver: a square one loses 0.2 r2, one of 30 degrees 2.4 r2 (r half the kerf). */
const CORNER = 1.6;

/**
 * Tails of opening left beside bars that are narrower than the cut can't be made: they stay metal.
 * In: openings, the bars just laid across them, kerf (mm). Out: the same openings, less such tails. Metal is only
 * added, so what held still holds. The drawing's own fine strokes, away from bars, are left for the checks to tell.
 */
export function trimSlivers(openings: readonly Region[], bars: readonly Ring[], kerfMm: number): Region[] {
  const r = kerfMm / 2;
  const near = joinBoxes(bars.map(ringBox));
  const touched = openings.filter((o) => boxesWithin(ringBox(o.outer), near, PINCH_MM));
  const untouched = openings.filter((o) => !touched.includes(o));
  const wide = offset(offset(touched, -r), r + 3 * PINCH_MM);
  const tails = subtract(touched, ringsOf(wide)).filter(
    (tail) => regionAreaMm2(tail) > CORNER * r * r && tail.outer.some((p) => bars.some((bar) => beside(bar, p, r))),
  );
  // Grown by a hair, or rounding would leave cracks along the cut between tail and opening.
  return tails.length === 0 ? [...openings] : [...untouched, ...subtract(touched, ringsOf(offset(tails, PINCH_MM)))];
}

/** Inside the bar (a rectangle) or nearer to it than the distance. */
function beside(bar: Ring, p: Point, distance: number): boolean {
  return bar.every((a, i) => {
    const b = bar[(i + 1) % bar.length]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    return ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / length > -distance;
  });
}
