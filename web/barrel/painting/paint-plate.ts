import { steelTexture } from './textures.ts';
import type { Theme } from './oak.ts';

/**
 * A cut steel plate that lies on wood already painted. The light comes from the upper left.
 * The context must map plate millimetres (y up) to pixels by one even scale: shadows are given in pixels.
 */
interface PlateLook {
  /** All openings in one path, filled even-odd. */
  readonly openings: Path2D;
  readonly radiusMm: number;
  readonly thicknessMm: number;
  /** Device pixels to the millimetre. */
  readonly scale: number;
  readonly theme: Theme;
  /** The uncut metal as paintMetal gives it on a sheet of the same size and view; painted on the spot when absent. */
  readonly metal?: HTMLCanvasElement;
}

/**
 * Shadow on the wood around the rim and inside the openings, then the metal, then its lit and shaded arrises:
 * in steps, for a painter that must not keep the page waiting for all of them at once.
 */
export function plateSteps(ctx: CanvasRenderingContext2D, look: PlateLook): readonly (() => void)[] {
  const disc = discPath(look.radiusMm);
  const metal = new Path2D(disc);
  metal.addPath(look.openings);
  const onMetal = (draw: () => void) => {
    ctx.save();
    ctx.clip(disc);
    ctx.clip(metal, 'evenodd');
    draw();
    ctx.restore();
  };
  return [
    () => shadeAroundRim(ctx, look, disc),
    () => shadeOpenings(ctx, look),
    () =>
      onMetal(() => {
        if (!look.metal) return paintMetal(ctx, look);
        ctx.setTransform(1, 0, 0, 1, 0, 0);
        ctx.drawImage(look.metal, 0, 0);
      }),
    () => onMetal(() => litArrises(ctx, look)),
    () => rimEdge(ctx, look, disc),
  ];
}

function discPath(radius: number): Path2D {
  const path = new Path2D();
  path.arc(0, 0, radius, 0, Math.PI * 2);
  path.closePath();
  return path;
}

/** How far the plate's top stands above the wood, as pixels of shadow: true to thickness, but never unseen. */
function dropPx(look: PlateLook): number {
  return Math.max(1.6, Math.min(26, (look.thicknessMm * 0.95 + look.radiusMm * 0.0032) * look.scale));
}

function shadeAroundRim(ctx: CanvasRenderingContext2D, look: PlateLook, disc: Path2D): void {
  const r = look.radiusMm;
  const outside = new Path2D();
  outside.rect(-2 * r, -2 * r, 4 * r, 4 * r);
  outside.addPath(disc);
  const drop = dropPx(look);
  ctx.save();
  ctx.clip(outside, 'evenodd');
  ctx.fillStyle = '#000';
  for (const [share, blur, alpha] of [
    [0.7, 1.2, 0.6],
    [2.4, 6, 0.45],
  ] as const) {
    ctx.shadowColor = `rgba(24, 12, 4, ${alpha})`;
    ctx.shadowBlur = drop * blur;
    ctx.shadowOffsetX = drop * share;
    ctx.shadowOffsetY = drop * share;
    ctx.fill(disc);
  }
  ctx.restore();
}

function shadeOpenings(ctx: CanvasRenderingContext2D, look: PlateLook): void {
  const r = look.radiusMm;
  const inverse = new Path2D();
  inverse.rect(-1.2 * r, -1.2 * r, 2.4 * r, 2.4 * r);
  inverse.addPath(look.openings);
  const drop = dropPx(look);
  ctx.save();
  ctx.clip(look.openings, 'evenodd');
  ctx.fillStyle = look.theme === 'light' ? 'rgba(52, 26, 8, 0.06)' : 'rgba(14, 6, 0, 0.12)';
  ctx.fillRect(-r, -r, 2 * r, 2 * r);
  // Deep under the edge first, hard; then the soft fringe that a lamp of some size gives.
  ctx.save();
  ctx.translate((drop * 0.5) / look.scale, (-drop * 0.5) / look.scale);
  ctx.fillStyle = 'rgba(22, 10, 3, 0.45)';
  ctx.fill(inverse, 'evenodd');
  ctx.restore();
  ctx.fillStyle = '#000';
  ctx.shadowColor = 'rgba(22, 10, 3, 0.72)';
  ctx.shadowBlur = drop * 1.7;
  ctx.shadowOffsetX = drop;
  ctx.shadowOffsetY = drop;
  ctx.fill(inverse, 'evenodd');
  ctx.restore();
}

/** Brushed sheet without openings, a square that the disc is cut from: the same for every text, so worth keeping. */
export function paintMetal(ctx: CanvasRenderingContext2D, look: Pick<PlateLook, 'radiusMm' | 'theme'>): void {
  const r = look.radiusMm;
  const light = look.theme === 'light';
  const sheen = ctx.createLinearGradient(-r * 0.95, r * 0.75, r * 0.95, -r * 0.75);
  const stops: readonly (readonly [number, string])[] = light
    ? [
        [0, '#dcdcd8'],
        [0.2, '#f3f2ee'],
        [0.36, '#e3e3df'],
        [0.56, '#c3c5c4'],
        [0.72, '#b2b5b5'],
        [0.86, '#c6c8c7'],
        [1, '#a6a9aa'],
      ]
    : [
        [0, '#b9b4ab'],
        [0.2, '#d3cdc2'],
        [0.36, '#b6b2aa'],
        [0.56, '#8f8e8a'],
        [0.72, '#7a7a78'],
        [0.86, '#8b8a87'],
        [1, '#6b6b6a'],
      ];
  for (const [at, colour] of stops) sheen.addColorStop(at, colour);
  ctx.fillStyle = sheen;
  ctx.fillRect(-r, -r, 2 * r, 2 * r);

  // Brushed sheet throws the lamp back as a broad band across its streaks.
  ctx.save();
  ctx.globalCompositeOperation = 'soft-light';
  ctx.globalAlpha = light ? 0.5 : 0.6;
  ctx.imageSmoothingEnabled = true;
  ctx.drawImage(steelTexture(), -r, -r, 2 * r, 2 * r);
  ctx.restore();

  const lamp = ctx.createRadialGradient(-r * 0.42, r * 0.5, 0, -r * 0.42, r * 0.5, r * 1.25);
  lamp.addColorStop(0, light ? 'rgba(255, 252, 244, 0.55)' : 'rgba(255, 226, 178, 0.34)');
  lamp.addColorStop(0.45, 'rgba(255, 244, 224, 0.1)');
  lamp.addColorStop(1, light ? 'rgba(40, 40, 48, 0.13)' : 'rgba(8, 6, 8, 0.34)');
  ctx.fillStyle = lamp;
  ctx.fillRect(-r, -r, 2 * r, 2 * r);
}

/**
 * Edges that face the lamp catch it; those turned away go dark. On the metal only: the openings moved a little to
 * either side leave a crescent along just those edges. Filling is many times quicker than stroking.
 */
function litArrises(ctx: CanvasRenderingContext2D, look: PlateLook): void {
  const wide = Math.max(0.9, Math.min(2.4, look.thicknessMm * look.scale * 0.42)) / look.scale;
  for (const [shift, colour] of [
    [-0.85, 'rgba(30, 26, 24, 0.42)'],
    [1, 'rgba(255, 255, 252, 0.95)'],
  ] as const) {
    ctx.save();
    ctx.translate(shift * wide * 0.8, -shift * wide * 0.8);
    ctx.fillStyle = colour;
    ctx.fill(look.openings, 'evenodd');
    ctx.restore();
  }
}

function rimEdge(ctx: CanvasRenderingContext2D, look: PlateLook, disc: Path2D): void {
  const r = look.radiusMm;
  const edge = ctx.createLinearGradient(-r * 0.7, r * 0.7, r * 0.7, -r * 0.7);
  edge.addColorStop(0, 'rgba(255, 255, 253, 0.95)');
  edge.addColorStop(0.5, 'rgba(200, 200, 198, 0.5)');
  edge.addColorStop(1, 'rgba(58, 54, 52, 0.75)');
  ctx.save();
  ctx.clip(disc);
  ctx.strokeStyle = edge;
  ctx.lineWidth = Math.max(2.4, look.thicknessMm * look.scale) / look.scale;
  ctx.stroke(disc);
  ctx.restore();
}
