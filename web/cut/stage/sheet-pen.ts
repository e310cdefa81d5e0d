import type { Point } from '../../../geometry/shapes.ts';
import type { SizePx } from '../../ui/size.ts';
import { type Inks, readInks } from './sheet-inks.ts';
import type { SheetView } from './sheet-view.ts';

/** All that drawing on the sheet needs: the canvas, how the sheet is seen, and the colours of the page. */
export interface SheetPen {
  readonly ctx: CanvasRenderingContext2D;
  readonly view: SheetView;
  readonly inks: Inks;
  /** Device pixels to a CSS pixel. */
  readonly dpr: number;
  /** A CSS pixel, mm. */
  readonly px: number;
}

/** A pen for a canvas made as large as its frame, and emptied; undefined before the page is laid out. */
export function takePen(
  canvas: HTMLCanvasElement | null,
  frame: HTMLElement | null,
  { width, height }: SizePx,
  view: SheetView,
  dpr: number,
): SheetPen | undefined {
  const ctx = canvas?.getContext('2d');
  if (!canvas || !ctx || !frame || width === 0 || height === 0) return undefined;
  const [w, h] = [Math.round(width * dpr), Math.round(height * dpr)];
  if (canvas.width !== w || canvas.height !== h) {
    canvas.width = w;
    canvas.height = h;
  }
  const pen = { ctx, view, inks: readInks(frame), dpr, px: 1 / view.scale };
  wipe(pen);
  return pen;
}

/** Empties the canvas. What is drawn next is in millimetres, y down from the sheet's lower edge. */
export function wipe({ ctx, view, dpr }: SheetPen): void {
  ctx.setTransform(1, 0, 0, 1, 0, 0);
  ctx.clearRect(0, 0, ctx.canvas.width, ctx.canvas.height);
  ctx.setTransform(view.scale * dpr, 0, 0, view.scale * dpr, view.x * dpr, view.y * dpr);
}

/** A circle as the path to fill or stroke, about a point of the sheet. */
export function circle({ ctx }: Pick<SheetPen, 'ctx'>, { x, y }: Point, radiusMm: number): void {
  ctx.beginPath();
  ctx.arc(x, -y, radiusMm, 0, 2 * Math.PI);
}

export function strokeLine({ ctx }: SheetPen, points: readonly Point[]): void {
  ctx.beginPath();
  points.forEach((p, i) => (i === 0 ? ctx.moveTo(p.x, -p.y) : ctx.lineTo(p.x, -p.y)));
  ctx.stroke();
}
