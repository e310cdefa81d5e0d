import { clockAngleDeg, turnPoint } from '../../../../geometry/measure/clock.ts';
import { nearestOnSegment } from '../../../../geometry/measure/distance.ts';
import { ringHolds, regionHolds } from '../../../../geometry/measure/ring.ts';
import type { Opening } from '../../../../geometry/bridges/types.ts';
import { isElementId } from '../../../../geometry/layout/no-element.ts';
import type { Extent } from '../../../../geometry/layout/placed.ts';
import type { Point, Ring } from '../../../../geometry/shapes.ts';

/** Choosing by pointing. For the screen only: nothing that is cut depends on it. Pure; plate millimetres. */

/**
 * The element under a point: the one whose opening is hit, else the one with the smallest extent around the point
 * (a centre piece inside a ring border is meant rather than the border). slackMm makes thin things easy to hit.
 */
export function elementAt(
  extents: readonly Extent[],
  openings: readonly Opening[],
  p: Point,
  slackMm: number,
): string | undefined {
  const opening =
    openings.find((o) => regionHolds(o.region, p)) ?? openings.find((o) => touches(o.region.outer, p, slackMm));
  const owner = opening?.elementIds[0];
  if (owner !== undefined && isElementId(owner)) return owner;
  let best: Extent | undefined;
  for (const extent of extents) {
    if (!extentHolds(extent, p, slackMm)) continue;
    if (!best || extentAreaMm2(extent) < extentAreaMm2(best)) best = extent;
  }
  return best?.elementId;
}

export function extentHolds(extent: Extent, p: Point, slackMm: number): boolean {
  if (extent.kind === 'box') {
    const own = turnPoint({ x: p.x - extent.x, y: p.y - extent.y }, -extent.turnDeg);
    return Math.abs(own.x) <= extent.widthMm / 2 + slackMm && Math.abs(own.y) <= extent.heightMm / 2 + slackMm;
  }
  const radius = Math.hypot(p.x, p.y);
  if (radius < extent.innerMm - slackMm || radius > extent.outerMm + slackMm) return false;
  const span = sectorSpanDeg(extent);
  if (span >= 360) return true;
  const slackDeg = radius > 0 ? (slackMm / radius) * (180 / Math.PI) : 360;
  const past = (((clockAngleDeg(p) - extent.startDeg + slackDeg) % 360) + 360) % 360;
  return past <= span + 2 * slackDeg;
}

/** Clockwise from start to end, above 0 and at most 360. */
export function sectorSpanDeg(sector: Extent & { kind: 'sector' }): number {
  const raw = sector.endDeg - sector.startDeg;
  if (raw >= 360) return 360;
  const span = ((raw % 360) + 360) % 360;
  return span === 0 ? 360 : span;
}

function extentAreaMm2(extent: Extent): number {
  if (extent.kind === 'box') return extent.widthMm * extent.heightMm;
  const share = sectorSpanDeg(extent) / 360;
  return Math.PI * (extent.outerMm ** 2 - extent.innerMm ** 2) * share;
}

function touches(ring: Ring, p: Point, slackMm: number): boolean {
  if (ringHolds(ring, p)) return false;
  let a = ring[ring.length - 1];
  if (!a) return false;
  for (const b of ring) {
    const q = nearestOnSegment(p, a, b);
    if (Math.hypot(q.x - p.x, q.y - p.y) <= slackMm) return true;
    a = b;
  }
  return false;
}
