import {
  grown,
  ovalPath,
  paintBodyShadow,
  paintChimeShadow,
  paintHead,
  paintHoop,
  paintStaveEnds,
  paintStaveSides,
  type BarrelPaint,
  type Oval,
} from '../painting/paint-barrel.ts';
import { paintMark } from '../painting/paint-mark.ts';
import { paintPlate } from '../painting/paint-plate.ts';
import { oakTexture, wallTexture } from '../painting/textures.ts';
import type { Theme } from '../painting/oak.ts';

export interface BarrelEndWish {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Device pixels to a CSS pixel. */
  readonly ratio: number;
  /** Visible head, along the grain (upright here) and across it. */
  readonly head: { readonly alongMm: number; readonly acrossMm: number };
  readonly plate: PlateOnHead | undefined;
  readonly state: 'plate' | 'paint' | 'char';
  readonly paint: string;
  readonly theme: Theme;
}

export interface PlateOnHead {
  readonly openings: Path2D;
  readonly diameterMm: number;
  readonly thicknessMm: number;
}

/**
 * The whole picture, to true scale: wall, swelling body with hoops, stave ends, head, and on it plate or mark.
 * Stave and hoop sizes are those of a usual wine barrel, drawn in proportion to the head (by eye, no source).
 */
export function paintBarrelEnd(ctx: CanvasRenderingContext2D, wish: BarrelEndWish): void {
  const { theme } = wish;
  const width = wish.widthPx * wish.ratio;
  const height = wish.heightPx * wish.ratio;
  const head = headOval(wish.head);
  const mean = (head.rx + head.ry) / 2;
  const chime = grown(head, mean * 0.085);
  const chimeHoop = grown(chime, mean * 0.045);
  const firstWood = grown(chimeHoop, mean * 0.04);
  const nextHoop = grown(firstWood, mean * 0.036);
  const body = grown(nextHoop, mean * 0.05);
  const scale = Math.min(width / body.rx, height / body.ry) * 0.47;
  const paint: BarrelPaint = { theme, scale };

  ctx.setTransform(1, 0, 0, 1, 0, 0);
  ctx.clearRect(0, 0, width, height);
  paintWall(ctx, width, height, body.rx * scale, theme);
  ctx.setTransform(scale, 0, 0, scale, width / 2, height / 2);
  paintBodyShadow(ctx, body, paint, mean * 0.09);
  paintStaveSides(ctx, grown(nextHoop, -1), body, paint);
  paintHoop(ctx, firstWood, nextHoop, paint, undefined);
  paintStaveSides(ctx, grown(chimeHoop, -1), firstWood, paint);
  paintHoop(ctx, chime, chimeHoop, paint, -62);
  const oak = oakTexture(Math.max(head.rx, head.ry) * 2, theme);
  paintHead(ctx, head, oak, paint);
  if (wish.plate) paintOnHead(ctx, wish, wish.plate, head, oak, scale);
  ctx.setTransform(scale, 0, 0, scale, width / 2, height / 2);
  paintChimeShadow(ctx, head, paint, mean * 0.06);
  paintStaveEnds(ctx, head, chime, paint);
  vignette(ctx, wish, width, height);
}

function paintOnHead(
  ctx: CanvasRenderingContext2D,
  wish: BarrelEndWish,
  plate: PlateOnHead,
  head: Oval,
  oak: ReturnType<typeof oakTexture>,
  scale: number,
): void {
  const radiusMm = plate.diameterMm / 2;
  ctx.save();
  ctx.clip(ovalPath(head));
  ctx.scale(1, -1);
  const { openings } = plate;
  if (wish.state === 'plate') {
    paintPlate(ctx, { openings, radiusMm, thicknessMm: plate.thicknessMm, scale, theme: wish.theme });
  } else {
    const woodHalfMm = Math.max(head.rx, head.ry);
    paintMark(ctx, { kind: wish.state, paint: wish.paint, openings, radiusMm, woodHalfMm, oak, scale });
  }
  ctx.restore();
}

/** A head of no sensible size is drawn as a round one, so that the page never shows an empty frame. */
function headOval(head: BarrelEndWish['head']): Oval {
  const sensible = (mm: number) => (Number.isFinite(mm) && mm > 20 ? Math.min(mm, 3000) : 540) / 2;
  return { rx: sensible(head.acrossMm), ry: sensible(head.alongMm) };
}

/** Stones keep their size beside the barrel, unless the frame is so long that the wall has to be stretched. */
function paintWall(ctx: CanvasRenderingContext2D, width: number, height: number, bodyPx: number, theme: Theme): void {
  const side = Math.max(width, height, bodyPx * 3.9);
  ctx.imageSmoothingQuality = 'high';
  ctx.drawImage(wallTexture(theme), (width - side) / 2, (height - side) / 2, side, side);
}

/** One lamp at the upper left, the far corner in the dark. */
function vignette(ctx: CanvasRenderingContext2D, wish: BarrelEndWish, width: number, height: number): void {
  ctx.setTransform(1, 0, 0, 1, 0, 0);
  const r = Math.hypot(width, height);
  const lamp = ctx.createRadialGradient(width * 0.3, height * 0.22, r * 0.08, width * 0.42, height * 0.4, r * 0.72);
  const light = wish.theme === 'light';
  lamp.addColorStop(0, light ? 'rgba(255, 240, 208, 0.1)' : 'rgba(255, 180, 96, 0.12)');
  lamp.addColorStop(0.4, 'rgba(60, 34, 12, 0)');
  lamp.addColorStop(1, light ? 'rgba(48, 28, 10, 0.4)' : 'rgba(4, 2, 0, 0.8)');
  ctx.fillStyle = lamp;
  ctx.fillRect(0, 0, width, height);
}
