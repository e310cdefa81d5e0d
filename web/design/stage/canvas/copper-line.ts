import type { StagePalette } from './palette.ts';
import type { ScreenPoint } from './view.ts';

/** Strokes the path in copper over a pale halo, so that it stands out on steel and oak; widths in the path's unit. */
export function strokeCopper(ctx: CanvasRenderingContext2D, palette: StagePalette, width: number, halo: number): void {
  ctx.strokeStyle = palette.copperHalo;
  ctx.lineWidth = halo;
  ctx.stroke();
  ctx.strokeStyle = palette.copper;
  ctx.lineWidth = width;
  ctx.stroke();
}

/** Begins a path of one line. */
export function traceLine(ctx: CanvasRenderingContext2D, from: ScreenPoint, to: ScreenPoint): void {
  ctx.beginPath();
  ctx.moveTo(from.leftPx, from.topPx);
  ctx.lineTo(to.leftPx, to.topPx);
}

/** Fills a round handle and begins the path of its edge. */
export function fillKnob(
  ctx: CanvasRenderingContext2D,
  at: ScreenPoint,
  radiusPx: number,
  palette: StagePalette,
): void {
  ctx.beginPath();
  ctx.arc(at.leftPx, at.topPx, radiusPx, 0, Math.PI * 2);
  ctx.fillStyle = palette.glow;
  ctx.fill();
}
