import type { Extent } from '../../../geometry/layout/placed.ts';
import { fillKnob, strokeCopper, traceLine } from './canvas/copper-line.ts';
import { KNOB_PX, knobsOf } from './element-hold.ts';
import type { StagePalette } from './canvas/palette.ts';
import { ScreenShape } from './canvas/ScreenShape.tsx';
import { toScreen, type ScreenPoint } from './canvas/view.ts';

interface ElementHandlesProps {
  readonly extent: Extent;
  readonly locked: boolean;
}

/** Knobs of the one chosen element: a round one that turns it, and a round one with a bar that makes it larger. */
export function ElementHandles({ extent, locked }: ElementHandlesProps) {
  return (
    <ScreenShape
      paint={(ctx, { view, size, palette }) => {
        const knobs = knobsOf(extent, view, size);
        if (locked) {
          paintLock(ctx, knobs.size, palette);
          return;
        }
        if (knobs.turn && knobs.stem) {
          traceLine(ctx, knobs.stem, knobs.turn);
          strokeCopper(ctx, palette, 1.5, 4);
          paintKnob(ctx, knobs.turn, palette);
          paintTurn(ctx, knobs.turn, palette);
        }
        paintKnob(ctx, knobs.size, palette);
        paintGrow(ctx, knobs.size, toScreen(view, extent.kind === 'box' ? extent : { x: 0, y: 0 }), palette);
      }}
    />
  );
}

function paintKnob(ctx: CanvasRenderingContext2D, at: ScreenPoint, palette: StagePalette): void {
  fillKnob(ctx, at, KNOB_PX + 1.5, palette);
  strokeCopper(ctx, palette, 1.75, 4.25);
}

/** A bit of an arc in the knob: it turns. */
function paintTurn(ctx: CanvasRenderingContext2D, at: ScreenPoint, palette: StagePalette): void {
  ctx.beginPath();
  ctx.arc(at.leftPx, at.topPx, 3.6, Math.PI * 0.65, Math.PI * 2.15);
  ctx.strokeStyle = palette.copper;
  ctx.lineWidth = 1.5;
  ctx.stroke();
}

/** A bar in the knob that points away from the middle: it grows. */
function paintGrow(ctx: CanvasRenderingContext2D, at: ScreenPoint, from: ScreenPoint, palette: StagePalette): void {
  const [x, y] = [at.leftPx - from.leftPx, at.topPx - from.topPx];
  const length = Math.max(1, Math.hypot(x, y));
  const [ux, uy] = [(x / length) * 4, (y / length) * 4];
  ctx.beginPath();
  ctx.moveTo(at.leftPx - ux, at.topPx - uy);
  ctx.lineTo(at.leftPx + ux, at.topPx + uy);
  ctx.strokeStyle = palette.copper;
  ctx.lineWidth = 1.75;
  ctx.stroke();
}

function paintLock(ctx: CanvasRenderingContext2D, at: ScreenPoint, palette: StagePalette): void {
  paintKnob(ctx, at, palette);
  ctx.beginPath();
  ctx.rect(at.leftPx - 3.25, at.topPx - 0.75, 6.5, 4.5);
  ctx.fillStyle = palette.copper;
  ctx.fill();
  ctx.beginPath();
  ctx.arc(at.leftPx, at.topPx - 0.75, 2.1, Math.PI, Math.PI * 2);
  ctx.strokeStyle = palette.copper;
  ctx.lineWidth = 1.25;
  ctx.stroke();
}
