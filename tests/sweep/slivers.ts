import type { Ring } from '../../geometry/shapes.ts';
import { type Area, difference, intersection, parts, polygon, shrink } from '../judge/jts.ts';

/** Just under half the kerf: what is narrower than the cut itself. */
const SHARE = 0.98;
/** Specks of the judge's own arithmetic. */
const SPECK_MM2 = 0.0004;
/**
 * A corner that the cut rounds off is no sliver: a square one loses (1 - pi/4) r2 = 0.2 r2, one of 30 degrees 2.4 r2
 * (r half the kerf). What loses more is a tail that is not there when cut.
 */
const CORNER = 2.5;
/** Beside a bar: nearer than this. */
const BESIDE_MM = 0.02;

/**
 * Tails of opening beside a bar that are narrower than the cut, by JTS: the opening less its own shrunk-and-grown
 * form, as far as the drawing was wider there. In: drawing, openings, bars, kerf, mm. Out: area of each, mm2.
 */
export function sliversBeside(drawn: Area, openings: Area, bars: readonly Ring[], kerfMm: number): number[] {
  if (bars.length === 0) return [];
  const r = (SHARE * kerfMm) / 2;
  const least = Math.max(SPECK_MM2, CORNER * r * r);
  const tails = thinParts(openings, r).filter((part) => part.getArea() > least);
  if (tails.length === 0) return [];
  const near = bars.map((bar) => shrink(polygon(bar), -BESIDE_MM));
  const wide = wideParts(drawn, r);
  return tails
    .filter((tail) => near.some((bar) => intersection(tail, bar).getArea() > 0))
    .map((tail) => intersection(tail, wide).getArea())
    .filter((area) => area > least);
}

function thinParts(area: Area, r: number): Area[] {
  return parts(difference(area, wideParts(area, r)));
}

/** All that a disc of radius r can reach without leaving the area, and a hair more. */
function wideParts(area: Area, r: number): Area {
  return shrink(shrink(area, r), -(r + 0.005));
}
