import { offset } from '../adapters/clipper.ts';
import { signedAreaMm2 } from '../measure/ring.ts';
import type { Region } from '../shapes.ts';
import { PINCH_MM, SPECK_MM2 } from '../units.ts';

/**
 * Openings that touch in a point cut metal off that no ring shows as an island: a drawing can have two loops whose
 * corners meet. Where growing by PINCH_MM walls metal in that was not walled in before, the grown openings are taken:
 * the touch becomes a true join. Anything else comes back as it was.
 */
export function closePinches(regions: readonly Region[]): readonly Region[] {
  const grown = offset(regions, PINCH_MM);
  return holeCount(grown) > holeCount(regions) ? grown : regions;
}

function holeCount(regions: readonly Region[]): number {
  return regions.reduce((n, r) => n + r.holes.filter((h) => Math.abs(signedAreaMm2(h)) > SPECK_MM2).length, 0);
}
