import type { Opening } from '../../../geometry/bridges/types.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import { clockPoint, placePoint, turnPoint } from '../../../geometry/measure/clock.ts';
import type { SizePx } from '../../ui/size.ts';
import type { Hold } from './carry/carry.ts';
import { elementAt, extentHolds, sectorSpanDeg } from './carry/hit.ts';
import { toPlate, toScreen, type ScreenPoint, type View } from './canvas/view.ts';

/** Knobs of the one chosen element, and what of it is under a pointer. Pure; CSS pixels. */
export interface Knobs {
  readonly size: ScreenPoint;
  /** Bands are turned by moving them. */
  readonly turn: ScreenPoint | undefined;
  /** Where the thread to the turning knob begins. */
  readonly stem: ScreenPoint | undefined;
}

export const KNOB_PX = 7;
const PAD_PX = 5;
const STEM_PX = 26;
/** Where a band that goes all round has its knob, clear of the figures of both rulers. */
const BORDER_DEG = 45;

export function knobsOf(extent: Extent, view: View, stage: SizePx): Knobs {
  const px = 1 / view.scale;
  if (extent.kind === 'sector') {
    const round = sectorSpanDeg(extent) >= 360;
    const outer = extent.outerMm + PAD_PX * px;
    const padDeg = (PAD_PX * px * 180) / Math.PI / Math.max(px, outer);
    const at = clockPoint(outer, round ? BORDER_DEG : extent.endDeg + padDeg);
    return { size: toScreen(view, at), turn: undefined, stem: undefined };
  }
  const w = extent.widthMm / 2 + PAD_PX * px;
  const h = extent.heightMm / 2 + PAD_PX * px;
  const on = (x: number, y: number) => toScreen(view, placePoint({ x, y }, extent));
  const top = on(0, h + STEM_PX * px);
  const inside = (p: ScreenPoint) =>
    p.leftPx > 12 && p.topPx > 12 && p.leftPx < stage.width - 12 && p.topPx < stage.height - 12;
  // Out of sight above, it hangs below.
  return inside(top)
    ? { size: on(w, -h), turn: top, stem: on(0, h) }
    : { size: on(w, h), turn: on(0, -h - STEM_PX * px), stem: on(0, -h) };
}

/** What is under a pointer of the chosen: a knob within reach, else their bodies. */
export function holdAt(
  extents: readonly Extent[],
  openings: readonly Opening[],
  chosen: readonly string[],
  view: View,
  stage: SizePx,
  at: ScreenPoint,
  finger: boolean,
): { readonly hold: Hold; readonly id: string } | undefined {
  const mine = extents.filter((e) => chosen.includes(e.elementId));
  const [only] = mine;
  if (chosen.length === 1 && only) {
    const knobs = knobsOf(only, view, stage);
    const reach = finger ? 24 : 11;
    const far = (p: ScreenPoint | undefined) =>
      p === undefined ? Infinity : Math.hypot(p.leftPx - at.leftPx, p.topPx - at.topPx);
    const [size, turn] = [far(knobs.size), far(knobs.turn)];
    if (Math.min(size, turn) <= reach) return { hold: turn < size ? 'turn' : 'size', id: only.elementId };
  }
  const p = toPlate(view, at);
  const slackMm = (finger ? 12 : 6) / view.scale;
  const held = elementAt(
    mine,
    openings.filter((o) => o.elementIds.some((id) => chosen.includes(id))),
    p,
    slackMm,
  );
  const id =
    held !== undefined && chosen.includes(held) ? held : mine.find((e) => extentHolds(e, p, slackMm))?.elementId;
  return id === undefined ? undefined : { hold: 'body', id };
}

/** Middle of an element as it is seen, mm: of a ring text, of its letters. */
export function seenMiddle(extent: Extent): { x: number; y: number } {
  if (extent.kind === 'box') return { x: extent.x, y: extent.y };
  const middle = extent.startDeg + sectorSpanDeg(extent) / 2;
  return turnPoint({ x: 0, y: (extent.innerMm + extent.outerMm) / 2 }, middle);
}
