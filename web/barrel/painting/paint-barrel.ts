import { seededRandom } from './seeded.ts';
import type { OakTexture } from './textures.ts';
import type { Theme } from './oak.ts';

/**
 * Parts of a barrel end seen straight on, light from the upper left. The context maps millimetres, origin at the
 * head's centre, y DOWN, to pixels by one even scale. Every round is given by its radius, mm.
 */
interface BarrelPaint {
  readonly theme: Theme;
  /** Device pixels to the millimetre. */
  readonly scale: number;
}

/** Recessed boards: wood, the chime's soft shadow on it, the dark of the croze all round. */
export function paintHead(ctx: CanvasRenderingContext2D, r: number, oak: OakTexture, paint: BarrelPaint): void {
  const path = disc(r);
  ctx.save();
  ctx.clip(path);
  ctx.imageSmoothingQuality = 'high';
  ctx.drawImage(oak.wood, -r, -r, 2 * r, 2 * r);
  const lamp = ctx.createRadialGradient(-r * 0.4, -r * 0.5, r * 0.1, -r * 0.3, -r * 0.35, r * 1.6);
  lamp.addColorStop(0, paint.theme === 'light' ? 'rgba(255, 236, 196, 0.26)' : 'rgba(255, 190, 110, 0.22)');
  lamp.addColorStop(0.5, 'rgba(120, 70, 30, 0)');
  lamp.addColorStop(1, paint.theme === 'light' ? 'rgba(60, 28, 8, 0.4)' : 'rgba(8, 3, 0, 0.66)');
  ctx.fillStyle = lamp;
  ctx.fillRect(-r, -r, 2 * r, 2 * r);
  ctx.restore();
}

/** The chime's shadow on whatever lies in the head. Painted apart, so that a plate in the head gets it too. */
export function paintChimeShadow(ctx: CanvasRenderingContext2D, r: number, paint: BarrelPaint, depthMm: number): void {
  const inverse = new Path2D();
  inverse.rect(-2 * r, -2 * r, 4 * r, 4 * r);
  inverse.addPath(disc(r));
  const px = depthMm * paint.scale;
  ctx.save();
  ctx.clip(disc(r));
  ctx.fillStyle = '#000';
  for (const [share, blur, alpha] of [
    [0, 0.5, 0.85],
    [0.45, 1, 0.6],
    [0.7, 2.2, 0.35],
  ] as const) {
    ctx.shadowColor = `rgba(20, 9, 2, ${alpha})`;
    ctx.shadowBlur = px * blur;
    ctx.shadowOffsetX = px * share;
    ctx.shadowOffsetY = px * share;
    ctx.fill(inverse, 'evenodd');
  }
  ctx.restore();
}

/** Ends of the staves: end grain, joints, flat top, the bevel that leads down to the head. */
export function paintStaveEnds(ctx: CanvasRenderingContext2D, inner: number, outer: number, paint: BarrelPaint): void {
  const light = paint.theme === 'light';
  const thick = outer - inner;
  const random = seededRandom(1207);
  ctx.save();
  ctx.clip(ringPath(inner, outer), 'evenodd');
  for (const [from, to] of staveAngles()) {
    const tone = light ? 100 + random() * 34 : 50 + random() * 20;
    ctx.fillStyle = `rgb(${tone * 1.3}, ${tone * 0.93}, ${tone * 0.58})`;
    ctx.fill(ringSlice(inner, outer, from, to + 0.002));
    const lines = Math.max(3, Math.round(((to - from) * inner) / 5));
    for (let n = 1; n < lines; n++) {
      const a = from + ((to - from) * (n + (random() - 0.5) * 0.7)) / lines;
      strokeSpoke(
        ctx,
        inner,
        outer,
        a,
        `rgba(40, 20, 6, ${0.1 + random() * 0.16})`,
        0.5 + random() * 0.9,
        random() * 0.02,
      );
    }
  }
  // Bevel: the inner part slopes towards the head, so it is lit where the flat top is not.
  const bevel = inner + thick * 0.42;
  shadeRing(ctx, inner, bevel, light ? 0.55 : 0.62, 'down');
  shadeRing(ctx, bevel, outer, light ? 0.16 : 0.3, 'flat');
  shadeRing(ctx, outer - thick * 0.12, outer, 0.5, 'up');
  ctx.lineWidth = Math.max(0.5, 0.8 / paint.scale);
  ctx.strokeStyle = 'rgba(255, 232, 190, 0.35)';
  ctx.stroke(disc(bevel));
  for (const [from] of staveAngles()) strokeSpoke(ctx, inner, outer, from, 'rgba(22, 10, 2, 0.8)', 0.9, 0);
  ctx.strokeStyle = 'rgba(18, 8, 2, 0.85)';
  ctx.lineWidth = Math.max(1.2, 1.2 / paint.scale);
  ctx.stroke(disc(inner));
  ctx.restore();
}

/** An iron hoop, its face leaning outwards to the viewer, with lapped ends and two rivets. */
export function paintHoop(
  ctx: CanvasRenderingContext2D,
  inner: number,
  outer: number,
  paint: BarrelPaint,
  rivetDeg: number | undefined,
): void {
  const light = paint.theme === 'light';
  const width = outer - inner;
  ctx.save();
  ctx.clip(ringPath(inner, outer), 'evenodd');
  ctx.fillStyle = light ? '#57534e' : '#2f2b28';
  ctx.fillRect(-outer, -outer, 2 * outer, 2 * outer);
  const random = seededRandom(73);
  for (let n = 0; n < 90; n++) {
    const a = random() * Math.PI * 2;
    const span = 0.01 + random() * 0.09;
    const warm = random() < 0.4;
    ctx.fillStyle = warm ? `rgba(120, 66, 30, ${random() * 0.22})` : `rgba(20, 20, 22, ${random() * 0.25})`;
    ctx.fill(ringSlice(inner + width * random() * 0.8, outer, a, a + span));
  }
  shadeRing(ctx, inner, outer, 0.85, 'up');
  ctx.lineWidth = Math.max(0.6, 1 / paint.scale);
  ctx.strokeStyle = edgeLight(ctx, outer, 'rgba(255, 246, 230, 0.75)', 'rgba(255, 246, 230, 0.05)');
  ctx.stroke(disc(inner + width * 0.06));
  ctx.restore();
  if (rivetDeg === undefined) return;
  const middle = inner + width / 2;
  ctx.save();
  ctx.clip(ringPath(inner, outer), 'evenodd');
  strokeSpoke(ctx, inner, outer, rad(rivetDeg - 5), 'rgba(8, 5, 3, 0.8)', 1, 0.01);
  strokeSpoke(ctx, inner, outer, rad(rivetDeg - 5.35), 'rgba(255, 240, 220, 0.28)', 0.8, 0.01);
  ctx.restore();
  for (const deg of [rivetDeg - 1.9, rivetDeg + 1.9]) {
    rivet(ctx, middle * Math.cos(rad(deg)), middle * Math.sin(rad(deg)), width * 0.26, paint);
  }
}

/** Soft shadow of a round body on what lies behind it. */
export function paintBodyShadow(
  ctx: CanvasRenderingContext2D,
  body: number,
  paint: BarrelPaint,
  reachMm: number,
): void {
  ctx.save();
  ctx.fillStyle = '#000';
  const px = reachMm * paint.scale;
  for (const [share, blur, alpha] of [
    [0.3, 0.5, paint.theme === 'light' ? 0.42 : 0.7],
    [1, 2.4, paint.theme === 'light' ? 0.34 : 0.6],
  ] as const) {
    ctx.shadowColor = `rgba(28, 16, 6, ${alpha})`;
    ctx.shadowBlur = px * blur;
    ctx.shadowOffsetX = px * share;
    ctx.shadowOffsetY = px * share;
    ctx.fill(disc(body));
  }
  ctx.restore();
}

function disc(r: number): Path2D {
  const path = new Path2D();
  path.arc(0, 0, r, 0, Math.PI * 2);
  path.closePath();
  return path;
}

function ringPath(inner: number, outer: number): Path2D {
  const path = disc(outer);
  path.addPath(disc(inner));
  return path;
}

function ringSlice(inner: number, outer: number, from: number, to: number): Path2D {
  const path = new Path2D();
  path.arc(0, 0, outer * 1.01, from, to);
  path.arc(0, 0, inner * 0.99, to, from, true);
  path.closePath();
  return path;
}

/** Staves of differing width that close the circle; a usual barrel has about thirty (common practice, no source). */
function staveAngles(): [number, number][] {
  const random = seededRandom(11);
  const count = 29;
  const widths = Array.from({ length: count }, () => 0.65 + random() * 0.7);
  const total = widths.reduce((a, b) => a + b, 0);
  let at = random();
  return widths.map((w) => {
    const from = at;
    at += (w / total) * Math.PI * 2;
    return [from, at];
  });
}

/** up: the ring's face leans outwards; down: it slopes in to the head; flat: it only loses light with distance. */
function shadeRing(
  ctx: CanvasRenderingContext2D,
  inner: number,
  outer: number,
  strength: number,
  lean: 'up' | 'down' | 'flat',
): void {
  const r = outer * 0.72;
  const shade = ctx.createLinearGradient(-r, -r, r, r);
  const lit = `rgba(255, 238, 205, ${strength * 0.5})`;
  const dark = `rgba(16, 7, 1, ${strength})`;
  shade.addColorStop(0, lean === 'down' ? dark : lit);
  shade.addColorStop(lean === 'down' ? 0.6 : 0.4, 'rgba(60, 35, 15, 0.08)');
  shade.addColorStop(1, lean === 'down' ? lit : dark);
  ctx.fillStyle = shade;
  ctx.fill(ringPath(inner, outer), 'evenodd');
}

function edgeLight(ctx: CanvasRenderingContext2D, r: number, lit: string, dark: string): CanvasGradient {
  const edge = ctx.createLinearGradient(-r * 0.7, -r * 0.7, r * 0.7, r * 0.7);
  edge.addColorStop(0, lit);
  edge.addColorStop(0.6, dark);
  edge.addColorStop(1, dark);
  return edge;
}

function strokeSpoke(
  ctx: CanvasRenderingContext2D,
  inner: number,
  outer: number,
  angle: number,
  colour: string,
  widthMm: number,
  twist: number,
): void {
  ctx.strokeStyle = colour;
  ctx.lineWidth = widthMm;
  ctx.beginPath();
  ctx.moveTo(inner * 0.99 * Math.cos(angle), inner * 0.99 * Math.sin(angle));
  ctx.lineTo(outer * 1.01 * Math.cos(angle + twist), outer * 1.01 * Math.sin(angle + twist));
  ctx.stroke();
}

function rivet(ctx: CanvasRenderingContext2D, x: number, y: number, r: number, paint: BarrelPaint): void {
  ctx.save();
  ctx.shadowColor = 'rgba(0, 0, 0, 0.7)';
  ctx.shadowBlur = r * 0.8 * paint.scale;
  ctx.shadowOffsetX = r * 0.35 * paint.scale;
  ctx.shadowOffsetY = r * 0.35 * paint.scale;
  const dome = ctx.createRadialGradient(x - r * 0.4, y - r * 0.4, r * 0.05, x, y, r);
  dome.addColorStop(0, paint.theme === 'light' ? '#cfc8bd' : '#9b9186');
  dome.addColorStop(0.5, paint.theme === 'light' ? '#6d6760' : '#433d38');
  dome.addColorStop(1, '#1d1a18');
  ctx.fillStyle = dome;
  ctx.beginPath();
  ctx.arc(x, y, r, 0, Math.PI * 2);
  ctx.fill();
  ctx.restore();
}

function rad(deg: number): number {
  return (deg * Math.PI) / 180;
}
