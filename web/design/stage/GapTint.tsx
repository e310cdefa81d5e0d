import { gapMm, type Surface } from '../../../geometry/barrel/surface.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { PlateShape } from './canvas/PlateShape.tsx';

/** The tint is strongest at the greatest gap of the plate, or at this one where that is less: paint surely creeps under. */
const FULL_MM = 3;
const FULL_ALPHA = 0.5;
const STOPS = 24;

/** How far the plate stands off the wood, as a tint that grows with the gap; it hides nothing of what is cut. */
export function GapTint(props: { readonly surface: Surface; readonly radiusMm: number }) {
  const { surface, radiusMm } = props;
  return (
    <PlateShape
      paint={(ctx, _px, palette) => {
        ctx.beginPath();
        ctx.arc(0, 0, radiusMm, 0, 2 * Math.PI);
        ctx.fillStyle = tintOf(ctx, surface, radiusMm, palette.pin.stop);
        ctx.fill();
      }}
    />
  );
}

/** Rings about the middle of a head; bands across the staves on a side. */
function tintOf(ctx: CanvasRenderingContext2D, surface: Surface, radiusMm: number, hex: string): CanvasGradient {
  const head = surface.kind === 'head';
  const upright = !head && surface.lines === 'along-hoops';
  const end: Point = upright ? { x: 0, y: radiusMm } : { x: radiusMm, y: 0 };
  const from = head ? 0 : -1;
  const gradient = head
    ? ctx.createRadialGradient(0, 0, 0, 0, 0, radiusMm)
    : ctx.createLinearGradient(-end.x, -end.y, end.x, end.y);
  const gaps = Array.from({ length: STOPS + 1 }, (_, i) => {
    const share = from + ((1 - from) * i) / STOPS;
    return gapMm(surface, { x: share * end.x, y: share * end.y });
  });
  const fullMm = Math.max(FULL_MM, ...gaps);
  for (const [i, gap] of gaps.entries()) {
    const alpha = Math.round((255 * FULL_ALPHA * gap) / fullMm);
    gradient.addColorStop(i / STOPS, `${hex}${alpha.toString(16).padStart(2, '0')}`);
  }
  return gradient;
}
