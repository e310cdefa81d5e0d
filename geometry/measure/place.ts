import type { Placement, Region, Ring } from '../shapes.ts';

/** A ring moved rigidly into the plate's frame: placePoint for each point, the turn worked out once. */
export function placeRing(ring: Ring, at: Placement): Ring {
  const rad = (at.turnDeg * Math.PI) / 180;
  const c = Math.cos(rad);
  const s = Math.sin(rad);
  return ring.map((p) => ({ x: p.x * c + p.y * s + at.x, y: p.y * c - p.x * s + at.y }));
}

export function placeRegions(regions: readonly Region[], at: Placement): Region[] {
  return regions.map((r) => ({ outer: placeRing(r.outer, at), holes: r.holes.map((h) => placeRing(h, at)) }));
}
