import type { Opening } from '../../../../geometry/bridges/types.ts';
import { isBand } from '../../../../geometry/design/kinds.ts';
import type { Border, DesignElement, RingText } from '../../../../geometry/design/schema.ts';
import type { Extent } from '../../../../geometry/layout/placed.ts';
import { clockAngleDeg, clockPoint, turnPoint } from '../../../../geometry/measure/clock.ts';
import { centroid } from '../../../../geometry/measure/ring.ts';
import type { Point, Region } from '../../../../geometry/shapes.ts';
import { isFree, plainDeg } from '../../../state/actions/elements/move-element.ts';
import { LEAST_DIVISOR } from '../../../../geometry/units.ts';

/**
 * What a dragged element looks like until the true plate is there: its own openings, moved. For the screen only:
 * nothing that is cut depends on it. Pure; millimetres in the plate's frame.
 */
export interface GhostPart {
  readonly elementId: string;
  readonly region: Region;
  readonly middle: Point;
  /** Which drawing of one that goes round, from 0. */
  readonly copy: number;
}

/** A similarity: turned clockwise and made larger about the origin, then moved. */
export interface Move {
  readonly x: number;
  readonly y: number;
  readonly turnDeg: number;
  readonly scale: number;
}

/** The openings of the elements that move. */
export function ghostParts(openings: readonly Opening[], ids: ReadonlySet<string>): GhostPart[] {
  return openings.flatMap(({ elementIds, region, word }) => {
    const elementId = elementIds.find((id) => ids.has(id));
    if (elementId === undefined) return [];
    const copy = Number(word.slice(word.lastIndexOf('/') + 1));
    return [{ elementId, region, middle: centroid(region.outer), copy: Number.isFinite(copy) ? copy : 0 }];
  });
}

/** How one opening moves as its element goes from one record to another. */
export function moveOf(part: GhostPart, before: DesignElement, after: DesignElement, radiusMm: number): Move {
  if (before.kind === 'ringText' && after.kind === 'ringText') return letterMove(part.middle, before, after, radiusMm);
  if (!isFree(before) || !isFree(after)) return STILL;
  const heights = [before, after].map((e) => (e.kind === 'lineText' ? e.capHeight : e.size));
  const scale = (heights[1] ?? 1) / (heights[0] ?? 1);
  const turnDeg = after.turnDeg - before.turnDeg;
  const from = turnPoint({ x: before.x * radiusMm * scale, y: before.y * radiusMm * scale }, turnDeg);
  const first = { x: after.x * radiusMm - from.x, y: after.y * radiusMm - from.y, turnDeg, scale };
  const count = before.kind === 'lineText' || before.around === 'once' ? 1 : before.around.count;
  if (count === 1) return first;
  // The others follow the first one about the plate's centre.
  return { ...first, ...turnPoint(first, (part.copy * 360) / count) };
}

/** A border's ring carried to another band, point by point. */
export function borderMap(before: Border, after: Border, radiusMm: number): (p: Point) => Point {
  const [from, to] = [middleOf(before) * radiusMm, middleOf(after) * radiusMm];
  const scale = Math.abs(after.outer - after.inner) / Math.max(LEAST_DIVISOR, Math.abs(before.outer - before.inner));
  return (p) => {
    const away = Math.hypot(p.x, p.y);
    const share = away === 0 ? 0 : (to + (away - from) * scale) / away;
    return { x: p.x * share, y: p.y * share };
  };
}

export function movePoint(p: Point, by: Move): Point {
  const t = turnPoint({ x: p.x * by.scale, y: p.y * by.scale }, by.turnDeg);
  return { x: t.x + by.x, y: t.y + by.y };
}

/** Where an element's extent lies after it moved. */
export function movedExtent(extent: Extent, before: DesignElement, after: DesignElement, radiusMm: number): Extent {
  if (extent.kind === 'box') {
    const part = { elementId: extent.elementId, region: NO_REGION, middle: extent, copy: copyOf(extent, before) };
    const move = moveOf(part, before, after, radiusMm);
    return {
      ...extent,
      ...movePoint(extent, move),
      widthMm: extent.widthMm * move.scale,
      heightMm: extent.heightMm * move.scale,
      turnDeg: extent.turnDeg + move.turnDeg,
    };
  }
  if (!isBand(before) || !isBand(after)) return extent;
  const grow = Math.abs(after.outer - after.inner) / Math.max(LEAST_DIVISOR, Math.abs(before.outer - before.inner));
  const halfMm = ((extent.outerMm - extent.innerMm) / 2) * grow;
  const at = middleOf(after) * radiusMm;
  const span = extent.endDeg - extent.startDeg;
  if (before.kind !== 'ringText' || after.kind !== 'ringText') {
    return { ...extent, innerMm: at - halfMm, outerMm: at + halfMm };
  }
  const half = Math.min(180, (span / 2) * stretchOf(before, after));
  const middle = (extent.startDeg + extent.endDeg) / 2 + after.middleDeg - before.middleDeg;
  return { ...extent, innerMm: at - halfMm, outerMm: at + halfMm, startDeg: middle - half, endDeg: middle + half };
}

const STILL: Move = { x: 0, y: 0, turnDeg: 0, scale: 1 };
const NO_REGION: Region = { outer: [], holes: [] };

/** A letter stays rigid, keeps its distance along the ring from the text's middle, and grows about its own. */
function letterMove(middle: Point, before: RingText, after: RingText, radiusMm: number): Move {
  const scale = (after.outer - after.inner) / Math.max(LEAST_DIVISOR, before.outer - before.inner);
  const deg = clockAngleDeg(middle);
  const along = plainDeg(deg - before.middleDeg) * stretchOf(before, after);
  const to = after.middleDeg + along;
  const awayMm = middleOf(after) * radiusMm + (Math.hypot(middle.x, middle.y) - middleOf(before) * radiusMm) * scale;
  const turnDeg = to - deg;
  const from = turnPoint({ x: middle.x * scale, y: middle.y * scale }, turnDeg);
  const place = clockPoint(awayMm, to);
  return { x: place.x - from.x, y: place.y - from.y, turnDeg, scale };
}

/** How many times as many degrees a ring text takes; one that fills a span keeps its degrees. */
function stretchOf(before: RingText, after: RingText): number {
  if (before.fit !== 'natural') return 1;
  const scale = (after.outer - after.inner) / Math.max(LEAST_DIVISOR, before.outer - before.inner);
  return (scale * middleOf(before)) / Math.max(LEAST_DIVISOR, middleOf(after));
}

function copyOf(extent: Extent & { kind: 'box' }, element: DesignElement): number {
  if (!isFree(element) || element.kind === 'lineText' || element.around === 'once') return 0;
  const { count } = element.around;
  const past = (((extent.turnDeg - element.turnDeg) % 360) + 360) % 360;
  return Math.round((past * count) / 360) % count;
}

function middleOf(e: RingText | Border): number {
  return (e.inner + e.outer) / 2;
}
