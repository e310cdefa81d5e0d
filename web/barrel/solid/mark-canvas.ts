import type { Surface } from '../../../geometry/barrel/surface.ts';
import type { Region } from '../../../geometry/shapes.ts';
import { paintMark } from '../painting/paint-mark.ts';
import { blankCanvas, context, type OakTexture } from '../painting/textures.ts';
import { traceRegions } from '../painting/trace.ts';
import { bleedBands, type BleedBand } from './bleed-bands.ts';

/** Wood around the plate that a soft edge may still reach. */
export const BESIDE_MM = 12;

export interface MarkWish {
  readonly kind: 'paint' | 'char';
  readonly paint: string;
  readonly openings: readonly Region[];
  readonly radiusMm: number;
  readonly surface: Surface;
  readonly oak: OakTexture;
  readonly woodHalfMm: number;
}

/**
 * Draws the openings of the cut file as paint or char on a square canvas, in the plate's frame (y up). Paint also
 * creeps beneath the plate where it stands off the wood.
 */
export function drawMark(canvas: HTMLCanvasElement, wish: MarkWish): void {
  const ctx = context(canvas);
  const scale = canvas.width / (2 * (wish.radiusMm + BESIDE_MM));
  const openings = new Path2D();
  traceRegions(openings, wish.openings);
  ctx.setTransform(1, 0, 0, 1, 0, 0);
  ctx.clearRect(0, 0, canvas.width, canvas.height);
  ctx.setTransform(scale, 0, 0, -scale, canvas.width / 2, canvas.height / 2);
  if (wish.kind === 'paint') {
    for (const band of bleedBands(wish.surface, wish.radiusMm)) drawBleed(ctx, wish, band, openings, scale);
  }
  paintMark(ctx, { ...wish, openings, scale });
}

/** Thin paint with a soft edge, as far beyond each opening as it creeps in that band. */
function drawBleed(
  ctx: CanvasRenderingContext2D,
  wish: MarkWish,
  band: BleedBand,
  openings: Path2D,
  scale: number,
): void {
  const sheet = blankCanvas(ctx.canvas.width, ctx.canvas.height);
  const soft = context(sheet);
  const away = sheet.width * 2;
  soft.shadowColor = wish.paint;
  soft.shadowBlur = band.bleedMm * 0.9 * scale;
  soft.shadowOffsetX = away;
  soft.setTransform(scale, 0, 0, -scale, sheet.width / 2 - away, sheet.height / 2);
  soft.fill(openings, 'evenodd');
  soft.lineWidth = 1.2 * band.bleedMm;
  soft.lineJoin = 'round';
  soft.stroke(openings);
  ctx.save();
  ctx.clip(bandPath(wish.surface, band, wish.radiusMm), 'evenodd');
  ctx.globalAlpha = 0.62;
  ctx.setTransform(1, 0, 0, 1, 0, 0);
  ctx.drawImage(sheet, 0, 0);
  ctx.restore();
}

function bandPath(surface: Surface, { fromMm, toMm }: BleedBand, radiusMm: number): Path2D {
  const path = new Path2D();
  if (surface.kind === 'head') {
    path.arc(0, 0, toMm, 0, 2 * Math.PI);
    path.closePath();
    path.moveTo(fromMm, 0);
    path.arc(0, 0, fromMm, 0, 2 * Math.PI);
    path.closePath();
    return path;
  }
  const far = radiusMm + BESIDE_MM;
  const deep = toMm - fromMm;
  for (const start of [fromMm, -toMm]) {
    if (surface.lines === 'along-hoops') path.rect(-far, start, 2 * far, deep);
    else path.rect(start, -far, deep, 2 * far);
  }
  return path;
}
