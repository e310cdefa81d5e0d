import { blankCanvas, context, type OakTexture } from './textures.ts';
import { seededRandom } from './seeded.ts';

/** What a plate leaves on the wood when it is lifted off: paint, or wood burned with a torch. */
export interface MarkWish {
  readonly kind: 'paint' | 'char';
  /** CSS colour of the paint. */
  readonly paint: string;
  readonly openings: Path2D;
  readonly radiusMm: number;
  /** Half the side of the wood's picture, so that the mark follows the very grain beneath it. */
  readonly woodHalfMm: number;
  readonly oak: OakTexture;
  /** Device pixels to the millimetre. */
  readonly scale: number;
}

/** Paints the mark. The context maps plate millimetres (y up) to pixels, the plate's centre being its origin. */
export function paintMark(ctx: CanvasRenderingContext2D, wish: MarkWish): void {
  if (wish.kind === 'paint') {
    const halo = paintStencil(wish, wish.paint, 0, 3.2, 0.3);
    const body = paintStencil(wish, wish.paint, 0, 0.55, 0.86);
    lay(ctx, wish, halo, 0.2);
    lay(ctx, wish, body, 0.96);
    return;
  }
  lay(ctx, wish, paintStencil(wish, '#8f5218', 7, 12, 0.5), 0.5);
  lay(ctx, wish, paintStencil(wish, '#4a2108', 0.7, 3.2, 0.62), 0.82);
  lay(ctx, wish, paintStencil(wish, '#150a05', 0, 0.9, 0.9), 0.97);
  lay(ctx, wish, charCore(wish), 0.95);
}

/** The openings in one colour on a canvas of their own: grown and softened by so many mm, thinned by the grain. */
function paintStencil(wish: MarkWish, colour: string, growMm: number, softMm: number, cover: number) {
  const sheet = sheetFor(wish);
  const ctx = context(sheet);
  // A shape drawn off the sheet whose shadow falls on it: soft edges in browsers without canvas filters.
  const away = sheet.width * 2;
  ctx.shadowColor = colour;
  ctx.shadowBlur = softMm * wish.scale;
  ctx.shadowOffsetX = away;
  ctx.translate(sheet.width / 2 - away, sheet.height / 2);
  ctx.scale(wish.scale, -wish.scale);
  ctx.fillStyle = '#000';
  ctx.fill(wish.openings, 'evenodd');
  if (growMm > 0) {
    ctx.lineWidth = 2 * growMm;
    ctx.lineJoin = 'round';
    ctx.stroke(wish.openings);
  }
  thinByGrain(ctx, wish, cover);
  return sheet;
}

function charCore(wish: MarkWish): HTMLCanvasElement {
  const sheet = paintStencil(wish, '#060303', 0, 4, 0.55);
  const ctx = context(sheet);
  ctx.setTransform(1, 0, 0, 1, 0, 0);
  ctx.shadowColor = 'transparent';
  ctx.globalCompositeOperation = 'destination-in';
  ctx.translate(sheet.width / 2, sheet.height / 2);
  ctx.scale(wish.scale, -wish.scale);
  ctx.fill(wish.openings, 'evenodd');
  // The torch does not burn evenly: cloudy patches that never reached the deepest black.
  ctx.globalCompositeOperation = 'destination-out';
  const random = seededRandom(331);
  for (let n = 0; n < 70; n++) {
    const x = (random() * 2 - 1) * wish.radiusMm;
    const y = (random() * 2 - 1) * wish.radiusMm;
    const r = wish.radiusMm * (0.03 + random() * 0.09);
    const patch = ctx.createRadialGradient(x, y, 0, x, y, r);
    patch.addColorStop(0, `rgba(0, 0, 0, ${0.3 + random() * 0.5})`);
    patch.addColorStop(1, 'rgba(0, 0, 0, 0)');
    ctx.fillStyle = patch;
    ctx.fillRect(x - r, y - r, 2 * r, 2 * r);
  }
  return sheet;
}

/** cover 1: even; less: pale wood and pores keep more of their own. */
function thinByGrain(ctx: CanvasRenderingContext2D, wish: MarkWish, cover: number): void {
  const half = wish.woodHalfMm;
  ctx.shadowColor = 'transparent';
  ctx.setTransform(wish.scale, 0, 0, wish.scale, ctx.canvas.width / 2, ctx.canvas.height / 2);
  ctx.globalCompositeOperation = 'destination-out';
  ctx.globalAlpha = 1 - cover;
  ctx.drawImage(wish.oak.grain, -half, -half, 2 * half, 2 * half);
  ctx.globalAlpha = 1;
}

function lay(ctx: CanvasRenderingContext2D, wish: MarkWish, sheet: HTMLCanvasElement, alpha: number): void {
  const half = sheet.width / 2 / wish.scale;
  ctx.save();
  ctx.scale(1, -1);
  ctx.globalAlpha = alpha;
  ctx.drawImage(sheet, -half, -half, 2 * half, 2 * half);
  ctx.restore();
}

function sheetFor(wish: MarkWish): HTMLCanvasElement {
  const side = Math.ceil((wish.radiusMm * 2 + 24) * wish.scale);
  return blankCanvas(side, side);
}
