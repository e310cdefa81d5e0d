import type { Point } from '../../../geometry/shapes.ts';
import type { SizePx } from '../../ui/size.ts';

/** How the sheet is seen: screen pixels a millimetre, and where its lower left corner is on the screen. */
export interface SheetView {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

const MARGIN_PX = 20;
const CLOSEST = 12;

/** The whole sheet in the middle of the screen. */
export function fitView(sheet: { readonly widthMm: number; readonly heightMm: number }, screen: SizePx): SheetView {
  const scale = Math.max(
    0.01,
    Math.min((screen.width - 2 * MARGIN_PX) / sheet.widthMm, (screen.height - 2 * MARGIN_PX) / sheet.heightMm),
  );
  return {
    scale,
    x: (screen.width - sheet.widthMm * scale) / 2,
    y: (screen.height + sheet.heightMm * scale) / 2,
  };
}

export function toSheet(view: SheetView, x: number, y: number): Point {
  return { x: (x - view.x) / view.scale, y: (view.y - y) / view.scale };
}

/** Nearer or farther by a factor, what is under the point staying there; never farther than the fitted view. */
export function zoomAt(view: SheetView, factor: number, x: number, y: number, least: number): SheetView {
  const scale = Math.min(CLOSEST, Math.max(least, view.scale * factor));
  const by = scale / view.scale;
  return { scale, x: x - (x - view.x) * by, y: y - (y - view.y) * by };
}

/** Moved, the sheet never wholly out of sight. */
export function panBy(
  view: SheetView,
  dx: number,
  dy: number,
  sheet: { readonly widthMm: number; readonly heightMm: number },
  screen: SizePx,
): SheetView {
  const [w, h] = [sheet.widthMm * view.scale, sheet.heightMm * view.scale];
  const keep = 60;
  return {
    ...view,
    x: Math.min(screen.width - keep, Math.max(keep - w, view.x + dx)),
    y: Math.min(screen.height + h - keep, Math.max(keep, view.y + dy)),
  };
}
