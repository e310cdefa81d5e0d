import type { Side } from '../design/schema.ts';
import { placePoint, turnPoint } from '../measure/clock.ts';
import { outlineBox } from '../measure/outline-box.ts';
import type { Point } from '../shapes.ts';
import type { Extent, Layout, PlacedShape } from './placed.ts';

/** A plate that is rolled: to which radius its middle fibre comes, mm, and which way its lines run. */
export interface Spread {
  readonly radiusMm: number;
  readonly lines: Side['lines'];
}

/**
 * Farther round nobody in front sees it, and the stretching would have no end: from there on it stays as it is here.
 * Common practice, no source.
 */
const FARTHEST_DEG = 70;

/**
 * How far round the barrel something has to lie, mm of arc, so that it is seen so far from the middle from straight in
 * front: R asin(x / R), the inverse of the projection R sin(arc / R).
 */
export function spreadMm(seenMm: number, radiusMm: number): number {
  const farthest = (FARTHEST_DEG * Math.PI) / 180;
  const most = radiusMm * Math.sin(farthest);
  const away = Math.abs(seenMm);
  if (away <= most) return radiusMm * Math.asin(seenMm / radiusMm);
  return Math.sign(seenMm) * (radiusMm * farthest + (away - most) / Math.cos(farthest));
}

/**
 * Shapes moved round the barrel so that their middles are seen evenly set from straight in front, as they were on the
 * flat. No shape is turned or changed, and none comes nearer to another round the barrel.
 * In: what was laid out, the roll; wholeWords for lettering whose letters join: a word moves as one.
 */
export function spreadLayout(laid: Layout, spread: Spread, wholeWords = false): Layout {
  const groups = new Map<number, PlacedShape[]>();
  laid.shapes.forEach((shape, i) => {
    const key = wholeWords ? shape.word : i;
    groups.set(key, [...(groups.get(key) ?? []), shape]);
  });
  const moves = new Map<PlacedShape, number>();
  for (const shapes of groups.values()) {
    const rounds = shapes.map((s) => roundOf(middleOf(s), spread));
    const middle = (Math.min(...rounds) + Math.max(...rounds)) / 2;
    for (const s of shapes) moves.set(s, spreadMm(middle, spread.radiusMm) - middle);
  }
  return {
    ...laid,
    shapes: laid.shapes.map((s) => ({
      ...s,
      placement: { ...s.placement, ...moved(s.placement, moves.get(s)!, spread) },
    })),
    extents: laid.extents.map((e) => spreadExtent(e, spread)),
  };
}

/** Middle of a shape's box, on the plate. */
export function middleOf({ outline, placement }: PlacedShape): Point {
  const box = outlineBox(outline);
  if (!box) return placement;
  return placePoint({ x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 }, placement);
}

function roundOf(p: Point, { lines }: Spread): number {
  return lines === 'along-hoops' ? p.x : p.y;
}

function moved(p: Point, by: number, { lines }: Spread): Point {
  return lines === 'along-hoops' ? { x: p.x + by, y: p.y } : { x: p.x, y: p.y + by };
}

/** The middle line of a box follows the roll. */
function spreadExtent(extent: Extent, spread: Spread): Extent {
  if (extent.kind === 'sector') return extent;
  const half = turnPoint({ x: extent.widthMm / 2, y: 0 }, extent.turnDeg);
  const end = (way: number): Point => {
    const p = { x: extent.x + way * half.x, y: extent.y + way * half.y };
    const round = roundOf(p, spread);
    return moved(p, spreadMm(round, spread.radiusMm) - round, spread);
  };
  const [a, b] = [end(-1), end(1)];
  return { ...extent, x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, widthMm: Math.hypot(b.x - a.x, b.y - a.y) };
}
