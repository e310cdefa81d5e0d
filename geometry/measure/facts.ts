import { memoize } from '../cache.ts';
import type { Box, Point, Region, Ring } from '../shapes.ts';
import { type Gap, ringsGap } from './distance.ts';
import { regionAreaMm2, ringBox } from './ring.ts';

/**
 * Facts about rings and regions where they lie, each worked out once for each: a keystroke leaves most openings of a
 * plate as they were. Kept as long as the ring or region itself (rings are never changed once they are made).
 */

export const boxOf: (ring: Ring) => Box = memoize(ringBox);

export const areaOf: (region: Region) => number = memoize(regionAreaMm2);

/** How far from the centre of the plate the points of a ring lie. */
export interface Reach {
  readonly mm: number;
  readonly at: Point;
}

/** The first of the points that lie farthest out; for a ring without points, the centre. */
export const reachOf: (ring: Ring) => Reach = memoize((ring) => {
  let [mm, at]: [number, Point] = [0, { x: 0, y: 0 }];
  for (const p of ring) {
    const out = Math.hypot(p.x, p.y);
    if (out > mm) [mm, at] = [out, p];
  }
  return { mm, at };
});

/** Distance from the centre of the plate to the nearest edge: along sides, not at points only. */
export const nearestToCentre: (region: Region) => number = memoize(({ outer, holes }) => {
  let best = Infinity;
  for (const ring of [outer, ...holes]) {
    let a = ring[ring.length - 1];
    if (!a) continue;
    for (const b of ring) {
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const lengthSq = dx * dx + dy * dy;
      const t = lengthSq === 0 ? 0 : Math.min(1, Math.max(0, -(a.x * dx + a.y * dy) / lengthSq));
      best = Math.min(best, Math.hypot(a.x + t * dx, a.y + t * dy));
      a = b;
    }
  }
  return best;
});

/** ringsGap of two rings, once for each two and a limit. */
export function gapOf(a: Ring, b: Ring, withinMm: number): Gap | undefined {
  const gaps = gapsFrom(a);
  const known = gaps.get(b);
  if (known?.withinMm === withinMm) return known.gap;
  const gap = ringsGap([a], [b], withinMm);
  gaps.set(b, { withinMm, gap });
  return gap;
}

interface KnownGap {
  readonly withinMm: number;
  readonly gap: Gap | undefined;
}

const gapsFrom = memoize((_ring: Ring) => new WeakMap<Ring, KnownGap>());
