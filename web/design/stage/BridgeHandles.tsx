import { Shape } from 'react-konva';
import { barOf, HANDLE_PX, handlesOf, type Line } from './bridge-line.ts';
import type { StagePalette } from './palette.ts';
import { toScreen, type ScreenPoint, type View } from './view.ts';

export interface BridgeHandlesProps {
  readonly line: Line;
  readonly widthMm: number;
  /** Being dragged: the bar itself is drawn, since the plate does not have it yet. */
  readonly solid: boolean;
  /** Only pointed at: an outline and no handles. */
  readonly faint?: boolean;
  readonly view: View;
  readonly palette: StagePalette;
}

/** The chosen bridge: a copper outline and two handles that turn it. */
export function BridgeHandles({ line, widthMm, solid, faint = false, view, palette }: BridgeHandlesProps) {
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(konva) => {
        const ctx = konva._context;
        ctx.save();
        ctx.lineJoin = 'round';
        ctx.beginPath();
        barOf(line, widthMm).forEach((corner, i) => {
          const p = toScreen(view, corner);
          if (i === 0) ctx.moveTo(p.leftPx, p.topPx);
          else ctx.lineTo(p.leftPx, p.topPx);
        });
        ctx.closePath();
        if (solid) {
          ctx.fillStyle = palette.bridge;
          ctx.fill();
        }
        stroke(ctx, palette, faint);
        if (!faint) {
          const handles = handlesOf(line, view);
          thread(ctx, toScreen(view, line.from), handles.from, palette);
          thread(ctx, toScreen(view, line.to), handles.to, palette);
          knob(ctx, handles.from, palette);
          knob(ctx, handles.to, palette);
        }
        ctx.restore();
      }}
    />
  );
}

/** Where the next bridge goes when it is set by keyboard. */
export function AddingCross(props: { readonly at: ScreenPoint; readonly palette: StagePalette }) {
  const { at, palette } = props;
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(konva) => {
        const ctx = konva._context;
        ctx.save();
        ctx.lineCap = 'round';
        ctx.beginPath();
        for (const [x, y] of [
          [1, 0],
          [-1, 0],
          [0, 1],
          [0, -1],
        ] as const) {
          ctx.moveTo(at.leftPx + 4 * x, at.topPx + 4 * y);
          ctx.lineTo(at.leftPx + 13 * x, at.topPx + 13 * y);
        }
        stroke(ctx, palette, false);
        ctx.restore();
      }}
    />
  );
}

function stroke(ctx: CanvasRenderingContext2D, palette: StagePalette, faint: boolean): void {
  ctx.strokeStyle = palette.copperHalo;
  ctx.lineWidth = faint ? 3.5 : 5;
  ctx.stroke();
  ctx.strokeStyle = palette.copper;
  ctx.lineWidth = faint ? 1.5 : 2;
  ctx.stroke();
}

function thread(ctx: CanvasRenderingContext2D, from: ScreenPoint, to: ScreenPoint, palette: StagePalette): void {
  ctx.beginPath();
  ctx.moveTo(from.leftPx, from.topPx);
  ctx.lineTo(to.leftPx, to.topPx);
  stroke(ctx, palette, true);
}

function knob(ctx: CanvasRenderingContext2D, at: ScreenPoint, palette: StagePalette): void {
  ctx.beginPath();
  ctx.arc(at.leftPx, at.topPx, HANDLE_PX, 0, Math.PI * 2);
  ctx.fillStyle = palette.glow;
  ctx.fill();
  stroke(ctx, palette, false);
}
