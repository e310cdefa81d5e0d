import { clockPoint, turnPoint } from '../../../geometry/measure/clock.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import { sectorSpanDeg } from './carry/hit.ts';

/** Outline of an element's extent on a context that maps plate millimetres, y up; padMm stands it off the letters. */
export function traceExtent(ctx: CanvasRenderingContext2D, extent: Extent, padMm: number): void {
  ctx.beginPath();
  if (extent.kind === 'box') {
    const w = extent.widthMm / 2 + padMm;
    const h = extent.heightMm / 2 + padMm;
    const corners = [
      [-w, -h],
      [w, -h],
      [w, h],
      [-w, h],
    ] as const;
    corners.forEach(([x, y], n) => {
      const p = turnPoint({ x, y }, extent.turnDeg);
      if (n === 0) ctx.moveTo(extent.x + p.x, extent.y + p.y);
      else ctx.lineTo(extent.x + p.x, extent.y + p.y);
    });
    ctx.closePath();
    return;
  }
  const outer = extent.outerMm + padMm;
  const inner = Math.max(0, extent.innerMm - padMm);
  const span = sectorSpanDeg(extent);
  if (span >= 360) {
    ctx.arc(0, 0, outer, 0, Math.PI * 2);
    ctx.closePath();
    if (inner > 0) {
      ctx.moveTo(inner, 0);
      ctx.arc(0, 0, inner, 0, Math.PI * 2);
      ctx.closePath();
    }
    return;
  }
  const padDeg = Math.min((360 - span) / 2, outer > 0 ? (padMm / outer) * (180 / Math.PI) : 0);
  const start = extent.startDeg - padDeg;
  const end = extent.startDeg + span + padDeg;
  const from = clockPoint(outer, start);
  ctx.moveTo(from.x, from.y);
  // A clock angle c lies at 90° - c counter-clockwise from the x axis; with y up, clockwise means falling angles.
  ctx.arc(0, 0, outer, rad(90 - start), rad(90 - end), true);
  if (inner > 0) ctx.arc(0, 0, inner, rad(90 - end), rad(90 - start), false);
  else ctx.lineTo(0, 0);
  ctx.closePath();
}

function rad(deg: number): number {
  return (deg * Math.PI) / 180;
}
