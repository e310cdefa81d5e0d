import {
  paintBodyShadow,
  paintChimeShadow,
  paintHead,
  paintHoop,
  paintStaveEnds,
} from '../../barrel/painting/paint-barrel.ts';
import { paintMetal, plateSteps } from '../../barrel/painting/paint-plate.ts';
import { blankCanvas, context, oakTexture } from '../../barrel/painting/textures.ts';
import type { Theme } from '../../barrel/painting/oak.ts';
import type { SizePx } from '../../ui/size.ts';
import type { StagePalette } from './canvas/palette.ts';
import type { View } from './canvas/view.ts';

/**
 * The picture under everything on the stage: ground, barrel end, plate. Painted to a bitmap for one view; while the
 * view moves the stage shows that bitmap moved and stretched, and paints anew once it rests.
 */
export interface Painted {
  readonly bitmap: HTMLCanvasElement;
  readonly view: View;
  /** Of the stage it was painted for, CSS pixels. */
  readonly size: SizePx;
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

/** A picture that comes in steps, between which the page can do other work: whole when all of them are done. */
export interface InSteps<What> {
  readonly painted: What;
  readonly steps: readonly (() => void)[];
}

/** Paints both for one view. */
export function paintGround(wish: SceneWish): InSteps<Ground> {
  const { ctx, bitmap } = sheet(wish);
  const metal = sheet(wish);
  const { palette, plateMm, theme } = wish;
  const scale = wish.view.scale * wish.ratio;
  const head = headRadiusMm(plateMm);
  const hoop = worldRadiusMm(plateMm);
  const chime = head + (hoop - head) * 0.76;
  const paint = { theme, scale };
  const steps = [
    () => {
      ctx.fillStyle = palette.ground;
      ctx.fillRect(0, 0, bitmap.width, bitmap.height);
      place(ctx, wish, 1);
      const glow = ctx.createRadialGradient(-hoop * 0.4, -hoop * 0.4, hoop * 0.4, 0, 0, hoop * 1.9);
      glow.addColorStop(0, palette.glow);
      glow.addColorStop(1, palette.ground);
      ctx.fillStyle = glow;
      ctx.fillRect(-2 * hoop, -2 * hoop, 4 * hoop, 4 * hoop);
    },
    () => paintBodyShadow(ctx, hoop - 1, paint, plateMm * 0.05),
    () => paintHoop(ctx, chime - 0.5, hoop, paint, -62),
    () => paintHead(ctx, head, oakTexture(head * 2, theme), paint),
    () => paintChimeShadow(ctx, head, paint, plateMm * 0.05),
    () => paintStaveEnds(ctx, head, chime, paint),
    () => {
      place(metal.ctx, wish, -1);
      paintMetal(metal.ctx, { radiusMm: plateMm, theme });
    },
  ];
  return {
    painted: { bitmap, view: wish.view, size: wish.size, metal: metal.bitmap },
    steps: steps.map((step) => () => {
      step();
      settle(bitmap);
      settle(metal.bitmap);
    }),
  };
}

/** The same with the plate laid in, step by step: what is given back is whole when all steps are done. */
export function paintScene(wish: SceneWish, ground: Ground, plate: ScenePlate): InSteps<Painted> {
  const { ctx, bitmap } = sheet(wish);
  const scale = wish.view.scale * wish.ratio;
  const begin = () => {
    ctx.drawImage(ground.bitmap, 0, 0);
    place(ctx, wish, -1);
  };
  const steps = [begin, ...plateSteps(ctx, { ...plate, scale, theme: wish.theme, metal: ground.metal })];
  return {
    painted: { bitmap, view: wish.view, size: wish.size },
    steps: steps.map((step) => () => {
      step();
      settle(bitmap);
    }),
  };
}

/** The picture with some openings filled up with metal again: what is left when they are lifted out to be dragged. */
export function healScene(painted: Painted, ground: Ground, lifted: Path2D): Painted {
  const { bitmap, view, size } = painted;
  const healed = blankCanvas(bitmap.width, bitmap.height);
  const ctx = context(healed);
  ctx.drawImage(bitmap, 0, 0);
  const metal = ctx.createPattern(ground.metal, 'no-repeat');
  if (!metal) return painted;
  const ratio = bitmap.width / size.width;
  const s = view.scale * ratio;
  const at = new DOMMatrix([s, 0, 0, -s, view.leftPx * ratio, view.topPx * ratio]);
  ctx.fillStyle = metal;
  // Moved a little to all sides, so that the lit and shaded arrises go with the openings.
  for (const [right, down] of HEAL_PX) {
    const path = new Path2D();
    path.addPath(lifted, new DOMMatrix([1, 0, 0, 1, right * ratio, down * ratio]).multiply(at));
    ctx.fill(path, 'evenodd');
  }
  return { ...painted, bitmap: healed };
}

const HEAL_PX = [
  [0, 0],
  [2, 2],
  [-2, -2],
  [2, -2],
  [-2, 2],
] as const;

let probe: CanvasRenderingContext2D | undefined;

/** What was drawn is only noted until somebody looks: looking makes it be done now, and not all in the next frame. */
function settle(bitmap: HTMLCanvasElement): void {
  probe ??= context(blankCanvas(1, 1));
  probe.drawImage(bitmap, 0, 0, 1, 1, 0, 0, 1, 1);
}

/** Shows a painted bitmap as the view of now asks, in CSS pixels. */
export function showPainted(ctx: CanvasRenderingContext2D, painted: Painted, now: View): void {
  const stretch = now.scale / painted.view.scale;
  ctx.imageSmoothingQuality = 'high';
  ctx.drawImage(
    painted.bitmap,
    now.leftPx - painted.view.leftPx * stretch,
    now.topPx - painted.view.topPx * stretch,
    painted.size.width * stretch,
    painted.size.height * stretch,
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
