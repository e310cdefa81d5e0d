import { paintBodyShadow, paintChimeShadow, paintHead, paintHoop, paintStaveEnds } from '../barrel-view/paint-cask.ts';
import { paintMetal, paintPlate } from '../barrel-view/paint-plate.ts';
import { blankCanvas, context, oakTexture } from '../barrel-view/textures.ts';
import type { Theme } from '../barrel-view/oak.ts';
import type { SizePx } from '../barrel-view/size.ts';
import type { StagePalette } from './palette.ts';
import type { View } from './view.ts';

/**
 * The picture under everything on the stage: ground, barrel end, plate. Painted to a bitmap for one view; while the
 * view moves the stage shows that bitmap moved and stretched, and paints anew once it rests.
 */
export interface Painted {
  readonly bitmap: HTMLCanvasElement;
  readonly view: View;
}

export interface ScenePlate {
  readonly openings: Path2D;
  readonly radiusMm: number;
  readonly thicknessMm: number;
}

export interface SceneWish {
  readonly size: SizePx;
  /** Device pixels to a CSS pixel. */
  readonly ratio: number;
  readonly view: View;
  readonly plateMm: number;
  readonly theme: Theme;
  readonly palette: StagePalette;
}

/** Visible head around a plate of that radius, and the barrel's outer edge, millimetres. */
export function headRadiusMm(plateMm: number): number {
  return plateMm * 1.045;
}

export function worldRadiusMm(plateMm: number): number {
  return plateMm * 1.045 * 1.115;
}

/** What does not change with the text: ground and barrel end, and the uncut sheet that the plate is made of. */
export interface Ground extends Painted {
  readonly metal: HTMLCanvasElement;
}

/** Paints both for one view. */
export function paintGround(wish: SceneWish): Ground {
  const { ctx, bitmap } = sheet(wish);
  const { palette, plateMm, theme } = wish;
  const scale = wish.view.scale * wish.ratio;
  const head = oval(headRadiusMm(plateMm));
  const hoop = oval(worldRadiusMm(plateMm));
  const chime = oval(head.rx + (hoop.rx - head.rx) * 0.76);
  const paint = { theme, scale };

  ctx.fillStyle = palette.ground;
  ctx.fillRect(0, 0, bitmap.width, bitmap.height);
  place(ctx, wish, 1);
  const glow = ctx.createRadialGradient(-hoop.rx * 0.4, -hoop.rx * 0.4, hoop.rx * 0.4, 0, 0, hoop.rx * 1.9);
  glow.addColorStop(0, palette.glow);
  glow.addColorStop(1, palette.ground);
  ctx.fillStyle = glow;
  ctx.fillRect(-2 * hoop.rx, -2 * hoop.rx, 4 * hoop.rx, 4 * hoop.rx);
  paintBodyShadow(ctx, oval(hoop.rx - 1), paint, plateMm * 0.05);
  paintHoop(ctx, oval(chime.rx - 0.5), hoop, paint, -62);
  paintHead(
    ctx,
    head,
    oakTexture(head.rx * 2, theme, Math.min(wish.size.width, wish.size.height) * wish.ratio < 900),
    paint,
  );
  paintChimeShadow(ctx, head, paint, plateMm * 0.05);
  paintStaveEnds(ctx, head, chime, paint);
  const metal = sheet(wish);
  place(metal.ctx, wish, -1);
  paintMetal(metal.ctx, { radiusMm: plateMm, theme });
  return { bitmap, view: wish.view, metal: metal.bitmap };
}

/** The same with the plate laid in. */
export function paintScene(wish: SceneWish, ground: Ground, plate: ScenePlate): Painted {
  const { ctx, bitmap } = sheet(wish);
  ctx.drawImage(ground.bitmap, 0, 0);
  place(ctx, wish, -1);
  paintPlate(ctx, { ...plate, scale: wish.view.scale * wish.ratio, theme: wish.theme, metal: ground.metal });
  return { bitmap, view: wish.view };
}

/** Shows a painted bitmap as the view of now asks, in CSS pixels. */
export function showPainted(ctx: CanvasRenderingContext2D, painted: Painted, size: SizePx, now: View): void {
  const stretch = now.scale / painted.view.scale;
  ctx.imageSmoothingQuality = 'high';
  ctx.drawImage(
    painted.bitmap,
    now.leftPx - painted.view.leftPx * stretch,
    now.topPx - painted.view.topPx * stretch,
    size.width * stretch,
    size.height * stretch,
  );
}

function sheet(wish: SceneWish) {
  const bitmap = blankCanvas(wish.size.width * wish.ratio, wish.size.height * wish.ratio);
  return { bitmap, ctx: context(bitmap) };
}

function place(ctx: CanvasRenderingContext2D, wish: SceneWish, up: 1 | -1): void {
  const s = wish.view.scale * wish.ratio;
  ctx.setTransform(s, 0, 0, s * up, wish.view.leftPx * wish.ratio, wish.view.topPx * wish.ratio);
}

function oval(r: number) {
  return { rx: r, ry: r };
}
