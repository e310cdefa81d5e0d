import { clockPoint } from '../../../geometry/measure/clock.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { PlateShape } from './canvas/PlateShape.tsx';
import type { Guide } from './carry/snap-targets.ts';
import { LEAST_DIVISOR_MM } from '../../../geometry/units.ts';

/** What something dragged has come to rest on: fine dashed copper; equal gaps as bars with ends. */
export function Guides(props: { readonly guides: readonly Guide[]; readonly radiusMm: number }) {
  const { guides, radiusMm } = props;
  if (guides.length === 0) return null;
  return (
    <PlateShape
      paint={(ctx, px, palette) => {
        for (const guide of guides) {
          ctx.beginPath();
          const bar = trace(ctx, guide, radiusMm, px);
          ctx.setLineDash([]);
          ctx.strokeStyle = palette.copperHalo;
          ctx.lineWidth = 3.5 * px;
          ctx.stroke();
          ctx.setLineDash(bar ? [] : [6 * px, 4 * px]);
          ctx.strokeStyle = palette.copper;
          ctx.lineWidth = 1.25 * px;
          ctx.stroke();
        }
      }}
    />
  );
}

/** Says whether it is a bar, which is drawn whole. */
function trace(ctx: CanvasRenderingContext2D, guide: Guide, radiusMm: number, px: number): boolean {
  switch (guide.kind) {
    case 'upright':
      line(ctx, { x: guide.x, y: -radiusMm }, { x: guide.x, y: radiusMm });
      return false;
    case 'level':
      line(ctx, { x: -radiusMm, y: guide.y }, { x: radiusMm, y: guide.y });
      return false;
    case 'ray':
      line(ctx, { x: 0, y: 0 }, clockPoint(radiusMm, guide.deg));
      return false;
    case 'ring':
      ctx.arc(0, 0, guide.radiusMm, 0, Math.PI * 2);
      return false;
    case 'gap': {
      const [x, y] = [guide.to.x - guide.from.x, guide.to.y - guide.from.y];
      const length = Math.max(LEAST_DIVISOR_MM, Math.hypot(x, y));
      const [nx, ny] = [(-y / length) * 4 * px, (x / length) * 4 * px];
      line(ctx, guide.from, guide.to);
      for (const end of [guide.from, guide.to]) {
        line(ctx, { x: end.x - nx, y: end.y - ny }, { x: end.x + nx, y: end.y + ny });
      }
      return true;
    }
    case 'arc': {
      const { radiusMm: r, fromDeg, toDeg } = guide;
      const start = clockPoint(r, fromDeg);
      ctx.moveTo(start.x, start.y);
      ctx.arc(0, 0, r, ((90 - fromDeg) * Math.PI) / 180, ((90 - toDeg) * Math.PI) / 180, true);
      for (const deg of [fromDeg, toDeg]) line(ctx, clockPoint(r - 4 * px, deg), clockPoint(r + 4 * px, deg));
      return true;
    }
  }
}

function line(ctx: CanvasRenderingContext2D, from: Point, to: Point): void {
  ctx.moveTo(from.x, from.y);
  ctx.lineTo(to.x, to.y);
}
