import type { Point } from '../../../../geometry/shapes.ts';
import type { SizePx } from '../../../ui/size.ts';

/**
 * From plate to screen and back. Pure.
 *
 * Plate points are millimetres, y up, origin at the plate's centre. Screen points are CSS pixels from the upper
 * left corner of the stage; their fields have other names so that one can't pass for the other.
 */
export interface ScreenPoint {
  readonly leftPx: number;
  readonly topPx: number;
}

/**
 * What the person looks at, free of sizes, so that it survives a resized window and a change of plate:
 * how many times larger than all of it, and which point of the plate is in the middle, as a share of the world's radius.
 */
export interface Look {
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

/** A look worked out for one stage. */
export interface View {
  /** CSS pixels to the millimetre. */
  readonly scale: number;
  /** Where the plate's centre is. */
  readonly leftPx: number;
  readonly topPx: number;
}

/** The stage as the mapping needs it: its size, the radius that must fit, and the pixels kept free around that. */
export interface Frame {
  readonly size: SizePx;
  readonly worldMm: number;
  readonly marginPx: number;
}

export const WHOLE: Look = { zoom: 1, x: 0, y: 0 };
export const GREATEST_ZOOM = 16;

export function viewOf(look: Look, frame: Frame): View {
  const scale = fitScale(frame) * look.zoom;
  return {
    scale,
    leftPx: frame.size.width / 2 - look.x * frame.worldMm * scale,
    topPx: frame.size.height / 2 + look.y * frame.worldMm * scale,
  };
}

export function toScreen(view: View, p: Point): ScreenPoint {
  return { leftPx: view.leftPx + p.x * view.scale, topPx: view.topPx - p.y * view.scale };
}

export function toPlate(view: View, s: ScreenPoint): Point {
  return { x: (s.leftPx - view.leftPx) / view.scale, y: (view.topPx - s.topPx) / view.scale };
}

/** The look after zooming by a factor so that what is under the point stays under it, as far as the limits allow. */
export function zoomAbout(look: Look, frame: Frame, at: ScreenPoint, factor: number): Look {
  const held = toPlate(viewOf(look, frame), at);
  const zoom = Math.max(1, Math.min(GREATEST_ZOOM, look.zoom * factor));
  const scale = fitScale(frame) * zoom;
  return keptInside({
    zoom,
    x: (held.x - (at.leftPx - frame.size.width / 2) / scale) / frame.worldMm,
    y: (held.y + (at.topPx - frame.size.height / 2) / scale) / frame.worldMm,
  });
}

/** The look after the picture has been dragged by so many pixels. */
export function panBy(look: Look, frame: Frame, rightPx: number, downPx: number): Look {
  const span = fitScale(frame) * look.zoom * frame.worldMm;
  return keptInside({ zoom: look.zoom, x: look.x - rightPx / span, y: look.y + downPx / span });
}

/** The look with a point of the plate in the middle, as far as the limits allow, and at least so large. */
export function lookAt(look: Look, frame: Frame, at: Point, leastZoom: number): Look {
  const zoom = Math.min(GREATEST_ZOOM, Math.max(look.zoom, leastZoom));
  return keptInside({ zoom, x: at.x / frame.worldMm, y: at.y / frame.worldMm });
}

/** The whole picture can't be moved; a zoomed one no farther than its edge. */
function keptInside(look: Look): Look {
  const most = 1 - 1 / look.zoom;
  const clamp = (v: number) => Math.max(-most, Math.min(most, v)) + 0;
  return { zoom: look.zoom, x: clamp(look.x), y: clamp(look.y) };
}

function fitScale(frame: Frame): number {
  const room = Math.min(frame.size.width, frame.size.height) / 2 - frame.marginPx;
  return Math.max(10, room) / frame.worldMm;
}
