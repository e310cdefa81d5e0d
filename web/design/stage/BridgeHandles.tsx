import type { Point } from '../../../geometry/shapes.ts';
import { barOf, HANDLE_PX, handlesOf, type Line } from './bridge-line.ts';
import { fillKnob, strokeCopper, traceLine } from './canvas/copper-line.ts';
import type { StagePalette } from './canvas/palette.ts';
import { ScreenShape } from './canvas/ScreenShape.tsx';
import { toScreen } from './canvas/view.ts';

export interface BridgeHandlesProps {
  readonly line: Line;
  readonly widthMm: number;
  /** Being dragged: the bar itself is painted, since the plate does not have it yet. */
  readonly solid: boolean;
  /** Only pointed at: an outline and no handles. */
  readonly faint?: boolean;
}

/** The chosen bridge: a copper outline and two handles that turn it. */
export function BridgeHandles({ line, widthMm, solid, faint = false }: BridgeHandlesProps) {
  return (
    <ScreenShape
      paint={(ctx, { view, palette }) => {
        ctx.lineJoin = 'round';
        ctx.beginPath();
        for (const corner of barOf(line, widthMm)) {
          const p = toScreen(view, corner);
          ctx.lineTo(p.leftPx, p.topPx);
        }
        ctx.closePath();
        if (solid) {
          ctx.fillStyle = palette.bridge;
          ctx.fill();
        }
        stroke(ctx, palette, faint);
        if (faint) return;
        const handles = handlesOf(line, view);
        for (const end of ['from', 'to'] as const) {
          traceLine(ctx, toScreen(view, line[end]), handles[end]);
          stroke(ctx, palette, true);
        }
        for (const end of ['from', 'to'] as const) {
          fillKnob(ctx, handles[end], HANDLE_PX, palette);
          stroke(ctx, palette, false);
        }
      }}
    />
  );
}

const ARMS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;

/** Where the next bridge goes when it is set by keyboard. */
export function AddingCross({ at }: { readonly at: Point }) {
  return (
    <ScreenShape
      paint={(ctx, { view, palette }) => {
        const { leftPx, topPx } = toScreen(view, at);
        ctx.lineCap = 'round';
        ctx.beginPath();
        for (const [x, y] of ARMS) {
          ctx.moveTo(leftPx + 4 * x, topPx + 4 * y);
          ctx.lineTo(leftPx + 13 * x, topPx + 13 * y);
        }
        stroke(ctx, palette, false);
      }}
    />
  );
}

function stroke(ctx: CanvasRenderingContext2D, palette: StagePalette, faint: boolean): void {
  if (faint) strokeCopper(ctx, palette, 1.5, 3.5);
  else strokeCopper(ctx, palette, 2, 5);
}
