import type { Region, Ring } from '../../geometry/shapes.ts';
import { type Area, difference, intersection, partAreas, parts, polygon, shrink, unionOf, within } from './jts.ts';

/** Metal around openings, judged by JTS, which shares no code with the maker. */
export interface Metal {
  /** Connected pieces; specks under 0.0004 mm2, crumbs of the judge's own arithmetic, left out. */
  readonly pieces: number;
  /** Separate openings in it. */
  readonly openings: number;
  /** Both after shrinking: openings that meet when they grow count as one. */
  shrunk(byMm: number): Pick<Metal, 'pieces' | 'openings'>;
  /**
   * The same metal with the given bar gone: what it left standing of the openings drawn there is cut after all.
   * Tails of opening that stayed metal beside the bar go with it: they are no piece of the letter.
   */
  without(bar: Ring, drawn: readonly Region[]): Metal;
  /** First of the bars without which the metal is not one piece any more; undefined where any one may be lost. */
  partedWithout(bars: readonly Ring[], drawn: readonly Region[]): number | undefined;
}

const SPECK_MM2 = 0.0004;
/** Edges that two areas share meet up to the grid's rounding: what is thinner than this is no metal. */
const ROUNDING_MM = 0.001;
/** Across so much a bar meets the metal it was cut out of; and a contact narrower than ROUNDING_MM is none. */
const CONTACT_MM = 3 * ROUNDING_MM;
const CONTACT_MM2 = CONTACT_MM * ROUNDING_MM;

/** A square of metal with so much room around the drawing, of which some may have stayed metal, less the openings. */
export function metalAround(openings: readonly Region[], roomMm: number, drawn = openings): Metal {
  const cut = areaOf(openings);
  const box = areaOf(drawn).getEnvelopeInternal();
  const [x0, x1] = [box.getMinX() - roomMm, box.getMaxX() + roomMm];
  const [y0, y1] = [box.getMinY() - roomMm, box.getMaxY() + roomMm];
  const sheet = polygon([
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ]);
  return metalOf(difference(sheet, cut));
}

/** Openings as one area of JTS; remembered, since several judges ask about the same. */
export function areaOf(openings: readonly Region[]): Area {
  const area = known.get(openings) ?? unionOf(openings.map((o) => polygon(o.outer, o.holes)));
  known.set(openings, area);
  return area;
}

const known = new WeakMap<readonly Region[], Area>();

function metalOf(metal: Area): Metal {
  const without = (bar: Ring, drawn: readonly Region[]) => {
    const area = areaOf(drawn);
    const left = shrink(difference(metal, intersection(polygon(bar), area)), ROUNDING_MM);
    return metalOf(unionOf(parts(left).filter((part) => isOfLetter(part, area))));
  };
  return {
    pieces: count(metal),
    openings: holes(metal),
    shrunk: (byMm) => {
      const left = shrink(metal, byMm);
      return { pieces: count(left), openings: holes(left) };
    },
    without,
    partedWithout: (bars, drawn) => {
      if (bars.length === 0) return undefined;
      const outlines = bars.map((bar) => polygon(bar));
      // Bars that meet: one's loss takes some of the other.
      const mixed = outlines.map((p, i) => outlines.some((q, j) => j !== i && within(p, q, 4 * CONTACT_MM)));
      const holdWithout = mixed.includes(false) ? linksOf(metal, outlines, areaOf(drawn)) : undefined;
      const first = bars.findIndex((bar, i) => (mixed[i] ? without(bar, drawn).pieces !== 1 : !holdWithout?.(i)));
      return first < 0 ? undefined : first;
    },
  };
}

/** Not merely a leftover of a bar or of a tail beside it. */
function isOfLetter(part: Area, drawn: Area): boolean {
  return difference(part, drawn).getArea() > SPECK_MM2;
}

/**
 * Bars and the metal between them as a graph, so that the plate is taken apart once and not once a bar: all bars out
 * of the metal, and which of the parts each bar touches. Gives whether the rest hangs together without one bar, which
 * must not meet any other.
 */
function linksOf(metal: Area, outlines: readonly Area[], drawn: Area): (bar: number) => boolean {
  const all = intersection(unionOf(outlines), drawn);
  const bites = parts(all).map((area) => ({ area, bar: outlines.findIndex((o) => within(o, area, 0)) }));
  const rest = parts(shrink(difference(metal, all), ROUNDING_MM));
  const contacts = parts(intersection(shrink(all, -CONTACT_MM), unionOf(rest))).filter(
    (c) => c.getArea() > CONTACT_MM2,
  );
  const links = contacts.flatMap((contact) =>
    rest.flatMap((part, i) =>
      within(contact, part, 0)
        ? bites.flatMap((bite, j) => (within(contact, bite.area, 2 * CONTACT_MM) ? [{ part: i, bite: j }] : []))
        : [],
    ),
  );
  const needed = rest.flatMap((part, i) => (isOfLetter(part, drawn) ? [i] : []));
  return (bar) => {
    const reached = new Set(needed.slice(0, 1));
    for (let before = -1; before < reached.size;) {
      before = reached.size;
      for (const { part, bite } of links) {
        if (bites[bite]!.bar === bar) continue;
        const other = rest.length + bite;
        if (reached.has(part)) reached.add(other);
        else if (reached.has(other)) reached.add(part);
      }
    }
    return needed.every((part) => reached.has(part));
  };
}

function count(area: Area): number {
  return partAreas(area).filter((mm2) => mm2 > SPECK_MM2).length;
}

function holes(area: Area): number {
  return parts(area).reduce((sum, part) => sum + part.getNumInteriorRing(), 0);
}
