import type { Region, Ring } from '../../geometry/shapes.ts';
import { type Area, difference, intersection, partAreas, parts, polygon, shrink, unionOf } from './jts.ts';

/** Metal around openings, judged by JTS, which shares no code with the maker. */
export interface Metal {
  /** Connected pieces; specks under 0.0004 mm2, crumbs of the judge's own arithmetic, left out. */
  readonly pieces: number;
  /** The same after shrinking. */
  pieceCountShrunk(byMm: number): number;
  /** Separate openings in it, after growing each by so much: those that meet count as one. */
  openingCountGrown(byMm: number): number;
  /**
   * The same metal with the given bar gone: what it left standing of the openings drawn there is cut after all.
   * Tails of opening that stayed metal beside the bar go with it: they are no piece of the letter.
   */
  without(bar: Ring, drawn: readonly Region[]): Metal;
}

const SPECK_MM2 = 0.0004;
const ROUNDING_MM = 0.001;

/** A square of metal with so much room around the openings, less the openings. */
export function metalAround(openings: readonly Region[], roomMm: number): Metal {
  const points = openings.flatMap((o) => [...o.outer]);
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  const [x0, x1] = [Math.min(...xs) - roomMm, Math.max(...xs) + roomMm];
  const [y0, y1] = [Math.min(...ys) - roomMm, Math.max(...ys) + roomMm];
  const sheet = polygon([
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ]);
  return metalOf(difference(sheet, areaOf(openings)));
}

export function areaOf(openings: readonly Region[]): Area {
  return unionOf(openings.map((o) => polygon(o.outer, o.holes)));
}

function metalOf(metal: Area): Metal {
  return {
    pieces: count(metal),
    pieceCountShrunk: (byMm) => count(shrink(metal, byMm)),
    openingCountGrown: (byMm) => holes(byMm === 0 ? metal : shrink(metal, byMm)),
    without: (bar, drawn) => {
      const cut = areaOf(drawn);
      // Bar and drawing share long edges up to the grid's rounding: what is thinner than that is no metal.
      const left = shrink(difference(metal, intersection(polygon(bar), cut)), ROUNDING_MM);
      return metalOf(unionOf(parts(left).filter((part) => difference(part, cut).getArea() > SPECK_MM2)));
    },
  };
}

function count(area: Area): number {
  return partAreas(area).filter((mm2) => mm2 > SPECK_MM2).length;
}

function holes(area: Area): number {
  return parts(area).reduce((sum, part) => sum + part.getNumInteriorRing(), 0);
}
