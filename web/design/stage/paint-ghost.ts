import type { Border, DesignElement } from '../../../geometry/design/schema.ts';
import { traceRegions } from '../../barrel/painting/trace.ts';
import { borderMap, moveOf, type GhostPart, type Move } from './carry/ghost.ts';
import type { Painted } from './scene.ts';

/** The openings of what is dragged, each as a path that is made once and then only moved. */
export interface GhostPath extends GhostPart {
  readonly path: Path2D;
}

export function ghostPaths(parts: readonly GhostPart[]): GhostPath[] {
  return parts.map((part) => {
    const path = new Path2D();
    traceRegions(path, [part.region]);
    return { ...part, path };
  });
}

/** All of them where the hand has brought them, in one path; mm, y up. */
export function movedPath(
  paths: readonly GhostPath[],
  before: readonly DesignElement[],
  after: readonly DesignElement[],
  radiusMm: number,
): Path2D {
  const all = new Path2D();
  before.forEach((from, i) => {
    const to = after[i];
    if (!to) return;
    const mine = paths.filter((p) => p.elementId === from.id);
    if (from.kind === 'border' && to.kind === 'border') traceBorder(all, mine, from, to, radiusMm);
    else for (const part of mine) all.addPath(part.path, matrixOf(moveOf(part, from, to, radiusMm)));
  });
  return all;
}

/**
 * The wood seen through openings, with the shade of the plate's edge: what the true plate's picture comes to, at a
 * small part of its cost. The context maps plate millimetres, y up.
 */
export function paintGhost(ctx: CanvasRenderingContext2D, path: Path2D, ground: Painted | undefined, px: number): void {
  for (const [shift, colour] of [
    [-0.9, 'rgba(30, 26, 24, 0.42)'],
    [1, 'rgba(255, 255, 252, 0.85)'],
  ] as const) {
    ctx.save();
    ctx.translate(shift * px, -shift * px);
    ctx.fillStyle = colour;
    ctx.fill(path, 'evenodd');
    ctx.restore();
  }
  ctx.fillStyle = (ground && woodOf(ctx, ground)) ?? '#a8794a';
  ctx.fill(path, 'evenodd');
  ctx.fillStyle = 'rgba(22, 10, 3, 0.4)';
  ctx.fill(path, 'evenodd');
}

function woodOf(ctx: CanvasRenderingContext2D, { bitmap, view, size }: Painted): CanvasPattern | undefined {
  const pattern = ctx.createPattern(bitmap, 'no-repeat');
  const k = size.width / bitmap.width / view.scale;
  pattern?.setTransform(new DOMMatrix([k, 0, 0, -k, -view.leftPx / view.scale, view.topPx / view.scale]));
  return pattern ?? undefined;
}

function traceBorder(all: Path2D, parts: readonly GhostPath[], from: Border, to: Border, radiusMm: number): void {
  const carry = borderMap(from, to, radiusMm);
  traceRegions(
    all,
    parts.map(({ region }) => ({ outer: region.outer.map(carry), holes: region.holes.map((h) => h.map(carry)) })),
  );
}

function matrixOf(move: Move): DOMMatrix {
  const rad = (move.turnDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(rad) * move.scale, Math.sin(rad) * move.scale];
  // Clockwise with y up.
  return new DOMMatrix([c, -s, s, c, move.x, move.y]);
}
