import type { Design } from '../../design/schema.ts';
import type { PlateResult } from '../../plate/plate.ts';
import type { Circle } from '../../sheet/sheets.ts';

/** The one round opening of a ring that masks, about the plate's centre: smaller plates may lie in it. */
export function findMaskWaste(design: Design, plate: PlateResult): readonly Circle[] {
  const masks = design.plates.find((p) => p.id === plate.plateId)?.masks;
  const [round] = masks === undefined ? [] : plate.openings;
  return round ? [{ x: 0, y: 0, radiusMm: inradius(round.region.outer) }] : [];
}

/** Of a ring about the origin: its corners lie on the circle, its sides a little inside. */
function inradius(ring: readonly { readonly x: number; readonly y: number }[]): number {
  return ring.reduce((least, a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    return Math.min(least, Math.hypot((a.x + b.x) / 2, (a.y + b.y) / 2));
  }, Infinity);
}
