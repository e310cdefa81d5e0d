import { castRay, type EdgeGrid } from '../measure/edge-grid.ts';
import type { Point } from '../shapes.ts';

/** How a bar of a given width would sit across the openings. */
export interface BarFit {
  /** Opening that the bar takes, as a length along it: its area over its width, mm. */
  readonly crossingMm: number;
  /** How far its ends are from square to the stroke: 0 square, 1 at 45 degrees, more on corners. */
  readonly skew: number;
  /** 0 to 1: part of the bar's width that finds no stroke to cross (it shaves a stroke's end). */
  readonly overhang: number;
  /** 0 to 2: sides on which an opening too narrow to cut would stay beside the bar. */
  readonly slivers: number;
  /** 0 to 2: sides on which a strip of stroke narrower than half the bar would stay: it runs along the stroke. */
  readonly strips: number;
  /** 0 in a clear stroke, up to 1.5 where the stroke is another one on one side than on the other: a join, an end. */
  readonly joint: number;
}

const LINES = [-0.999, -0.5, 0, 0.5, 0.999];
/** Where a sliver beside the bar is looked for, as a share of the least opening. */
const SLIVER_NEAR = 0.1;
/** How far beside the bar its stroke is looked at, in widths of the bar and of the stroke: the greater counts. */
const BESIDE = { bar: 0.6, stroke: 0.4 };

/**
 * Measures the bar from `from` to `to` by lines along it, at and beside its width.
 * In: grid of the openings' edges, ends in metal, width and the narrowest opening the process can cut, mm.
 */
export function measureBar(open: EdgeGrid, from: Point, to: Point, widthMm: number, leastOpeningMm: number): BarFit {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const dx = (to.x - from.x) / length;
  const dy = (to.y - from.y) / length;
  const line = (aside: number) => openAlong(open, { x: from.x - dy * aside, y: from.y + dx * aside }, dx, dy, length);
  const spans = LINES.map((share) => line((share * widthMm) / 2));
  const crossed = spans.filter((s) => s.mm > 0);
  const crossingMm = spans.reduce((sum, s) => sum + s.mm, 0) / spans.length;
  const spread = (values: number[]) => (values.length > 1 ? Math.max(...values) - Math.min(...values) : 0);
  const skew = (spread(crossed.map((s) => s.in)) + spread(crossed.map((s) => s.out))) / 2 / widthMm;
  let [slivers, strips] = [0, 0];
  for (const side of [-1, 1]) {
    const near = line(side * (widthMm / 2 + SLIVER_NEAR * leastOpeningMm)).mm;
    const far = line(side * (widthMm / 2 + leastOpeningMm)).mm;
    if (near > 0.2 * crossingMm && near > SLIVER_NEAR * leastOpeningMm && far < 0.3 * near) slivers++;
    if (near > 0.5 * crossingMm && line(side * widthMm).mm < 0.3 * near) strips++;
  }
  const beside = widthMm / 2 + Math.max(BESIDE.bar * widthMm, BESIDE.stroke * crossingMm);
  const uneven = Math.abs(line(beside).mm - line(-beside).mm) / Math.max(widthMm, crossingMm / 2);
  return {
    crossingMm,
    skew,
    overhang: 1 - crossed.length / spans.length,
    slivers,
    strips,
    joint: Math.min(1.5, uneven),
  };
}

/** Length of opening along a line of the given length, with where it first begins and last ends. */
function openAlong(open: EdgeGrid, from: Point, dx: number, dy: number, length: number) {
  const hits = castRay(open, from, dx, dy);
  let inside = hits.length % 2 === 1;
  let [mm, last, first, end] = [0, 0, -1, 0];
  for (const { at } of [...hits, { at: Infinity }]) {
    if (inside) {
      if (first < 0) first = last;
      end = Math.min(at, length);
      mm += end - last;
    }
    if (at >= length) break;
    last = at;
    inside = !inside;
  }
  return { mm, in: Math.max(first, 0), out: end };
}
