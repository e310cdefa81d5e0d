import { contourToRing } from '../../measure/arc.ts';
import { castRay, edgeGrid } from '../../measure/edge-grid.ts';
import type { GapOf } from '../tour/best-points.ts';
import type { PreparedOpening } from './prepared-opening.ts';
import { COARSE_ERROR_MM } from '../../units.ts';

/** A rapid move over the piece just cut goes around it: about so much longer for each millimetre over it. */
export const AROUND_SHARE = 0.4;

/** Off the edge, so that a ray begins inside it. */
const OFF_MM = 2 * COARSE_ERROR_MM;

/** Measures, mm, from where one opening's cut ends to where the next is pierced; openings and leads by number. */
export function createGapMeasure(openings: readonly Pick<PreparedOpening, 'outer'>[]): GapOf {
  const grids = openings.map((o) => edgeGrid([contourToRing(o.outer.path, COARSE_ERROR_MM)], [0]));
  return (from, fromLead, to, toLead) => {
    const { at, along } = openings[from]!.outer.leads[fromLead]!.start;
    const { pierce } = openings[to]!.outer.leads[toLead]!;
    const [x, y] = [pierce.x - at.x, pierce.y - at.y];
    const mm = Math.hypot(x, y);
    // The piece lies to the left of its path.
    const inward = along.x * y - along.y * x;
    if (mm === 0 || inward <= 0) return mm;
    const hit = castRay(grids[from]!, { x: at.x - along.y * OFF_MM, y: at.y + along.x * OFF_MM }, x / mm, y / mm)[0];
    return mm + AROUND_SHARE * Math.min(mm, hit?.at ?? 0);
  };
}
