import type { Placement, Region, Ring } from '../shapes.ts';
import { placePoint } from './clock.ts';

/** A ring moved rigidly into the plate's frame. */
export function placeRing(ring: Ring, at: Placement): Ring {
  return ring.map((p) => placePoint(p, at));
}

export function placeRegions(regions: readonly Region[], at: Placement): Region[] {
  return regions.map((r) => ({ outer: placeRing(r.outer, at), holes: r.holes.map((h) => placeRing(h, at)) }));
}
