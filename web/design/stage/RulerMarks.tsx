import type { Extent } from '../../../geometry/layout/placed.ts';
import { clockAngleDeg, clockPoint } from '../../../geometry/measure/clock.ts';
import { seenMiddle } from './element-hold.ts';
import { sectorSpanDeg } from './carry/hit.ts';
import { ScreenShape } from './canvas/ScreenShape.tsx';
import { toScreen, type View } from './canvas/view.ts';

/** Where the chosen element stands, on the rulers: its band's edges along the radius, its angle on the hours. */
export function RulerMarks({ extent }: { readonly extent: Extent }) {
  return (
    <ScreenShape
      paint={(ctx, { view, worldMm, palette }) => {
        ctx.strokeStyle = palette.copper;
        ctx.fillStyle = palette.copper;
        const middle = seenMiddle(extent);
        const edges =
          extent.kind === 'sector'
            ? [extent.innerMm, extent.outerMm]
            : [Math.hypot(middle.x, middle.y)].filter((r) => r > 1);
        ctx.lineWidth = 1;
        for (const r of edges) {
          const at = toScreen(view, { x: r, y: 0 });
          const centre = toScreen(view, { x: 0, y: 0 });
          ctx.globalAlpha = 0.55;
          ctx.setLineDash([2, 4]);
          ctx.beginPath();
          ctx.arc(centre.leftPx, centre.topPx, r * view.scale, 0, Math.PI * 2);
          ctx.stroke();
          ctx.setLineDash([]);
          ctx.globalAlpha = 1;
          // A wedge on the scale at three o'clock.
          ctx.beginPath();
          ctx.moveTo(at.leftPx, at.topPx + 1);
          ctx.lineTo(at.leftPx - 4, at.topPx + 8);
          ctx.lineTo(at.leftPx + 4, at.topPx + 8);
          ctx.closePath();
          ctx.fill();
        }
        const round = extent.kind === 'sector' && sectorSpanDeg(extent) >= 360;
        if (!round && Math.hypot(middle.x, middle.y) > 1) paintHour(ctx, clockAngleDeg(middle), worldMm, view);
      }}
    />
  );
}

function paintHour(ctx: CanvasRenderingContext2D, deg: number, worldMm: number, view: View): void {
  const ray = clockPoint(1, deg);
  const centre = toScreen(view, { x: 0, y: 0 });
  const edge = worldMm * view.scale;
  const at = (r: number, side: number) =>
    [centre.leftPx + ray.x * r + ray.y * side, centre.topPx - ray.y * r + ray.x * side] as const;
  ctx.globalAlpha = 1;
  ctx.beginPath();
  ctx.moveTo(...at(edge + 1, 0));
  ctx.lineTo(...at(edge + 9, 4));
  ctx.lineTo(...at(edge + 9, -4));
  ctx.closePath();
  ctx.fill();
}
