import { Shape } from 'react-konva';
import type { Extent } from '../../../geometry/layout/placed.ts';
import type { SizePx } from '../../ui/size.ts';
import { KNOB_PX, knobsOf } from './element-hold.ts';
import type { StagePalette } from './palette.ts';
import { toScreen, type ScreenPoint, type View } from './view.ts';

/** Knobs of the one chosen element: a round one that turns it, and a round one with a bar that makes it larger. */
export function ElementHandles(props: {
  readonly extent: Extent;
  readonly locked: boolean;
  readonly view: View;
  readonly stage: SizePx;
  readonly palette: StagePalette;
}) {
  const { extent, locked, view, stage, palette } = props;
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(konva) => {
        const ctx = konva._context;
        const knobs = knobsOf(extent, view, stage);
        ctx.save();
        if (locked) drawLock(ctx, knobs.size, palette);
        else {
          if (knobs.turn && knobs.stem) {
            ctx.beginPath();
            ctx.moveTo(knobs.stem.leftPx, knobs.stem.topPx);
            ctx.lineTo(knobs.turn.leftPx, knobs.turn.topPx);
            stroke(ctx, palette, 1.5);
            drawKnob(ctx, knobs.turn, palette);
            drawTurn(ctx, knobs.turn, palette);
          }
          drawKnob(ctx, knobs.size, palette);
          drawGrow(ctx, knobs.size, toScreen(view, extent.kind === 'box' ? extent : { x: 0, y: 0 }), palette);
        }
        ctx.restore();
      }}
    />
  );
}

function stroke(ctx: CanvasRenderingContext2D, palette: StagePalette, wide: number): void {
  ctx.strokeStyle = palette.copperHalo;
  ctx.lineWidth = wide + 2.5;
  ctx.stroke();
  ctx.strokeStyle = palette.copper;
  ctx.lineWidth = wide;
  ctx.stroke();
}

function drawKnob(ctx: CanvasRenderingContext2D, at: ScreenPoint, palette: StagePalette): void {
  ctx.beginPath();
  ctx.arc(at.leftPx, at.topPx, KNOB_PX + 1.5, 0, Math.PI * 2);
  ctx.fillStyle = palette.glow;
  ctx.fill();
  stroke(ctx, palette, 1.75);
}

/** A bit of an arc in the knob: it turns. */
function drawTurn(ctx: CanvasRenderingContext2D, at: ScreenPoint, palette: StagePalette): void {
  ctx.beginPath();
  ctx.arc(at.leftPx, at.topPx, 3.6, Math.PI * 0.65, Math.PI * 2.15);
  ctx.strokeStyle = palette.copper;
  ctx.lineWidth = 1.5;
  ctx.stroke();
}

/** A bar in the knob that points away from the middle: it grows. */
function drawGrow(ctx: CanvasRenderingContext2D, at: ScreenPoint, from: ScreenPoint, palette: StagePalette): void {
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

function drawLock(ctx: CanvasRenderingContext2D, at: ScreenPoint, palette: StagePalette): void {
  drawKnob(ctx, at, palette);
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
