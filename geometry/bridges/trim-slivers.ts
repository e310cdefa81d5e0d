import { offset, ringsOf, subtract } from '../adapters/clipper.ts';
import { boxesWithin, joinBoxes, regionAreaMm2, ringBox } from '../measure/ring.ts';
import type { Point, Region, Ring } from '../shapes.ts';
import { PINCH_MM } from '../units.ts';

/** A corner that the cut rounds off is no sliver: a square one loses 0.2 r2, one of 30 degrees 2.4 r2 (r half the kerf). */
const CORNER = 1.6;

/**
 * Slivers beside bars stay metal: tails of an opening, and whole openings, that are narrower than the cut.
 * In: openings, the bars just laid across them, kerf (mm). Out: the same openings, less such slivers. Metal is only
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
  const trimmed =
    tails.length === 0 ? openings : [...untouched, ...subtract(touched, ringsOf(offset(tails, PINCH_MM)))];
  return trimmed.filter((opening) => canBeCut(opening, r));
}

/** An opening of some size is wide enough somewhere; only of small ones it is worth an offset to know. */
function canBeCut(opening: Region, halfKerfMm: number): boolean {
  return regionAreaMm2(opening) > LARGE * halfKerfMm * halfKerfMm || offset([opening], -halfKerfMm).length > 0;
}

/** In squares of half the kerf. */
const LARGE = 160;

/** Inside the bar (a rectangle) or nearer to it than the distance. */
function beside(bar: Ring, p: Point, distance: number): boolean {
  return bar.every((a, i) => {
    const b = bar[(i + 1) % bar.length]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    return ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / length > -distance;
  });
}
