import { differenceShapes } from '../../geometry/approval/difference-shapes.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { Region, Ring } from '../../geometry/shapes.ts';
import type { PlateDifference } from './plate-api.ts';

/** One plate before and after, as the page draws it: path data in mm about the plate's middle, y down, filled even-odd. */
export function differ(before: PlateResult, after: PlateResult): PlateDifference {
  const { onlyBefore, onlyAfter } = differenceShapes(before, after);
  return {
    beforeMm: before.diameterMm,
    afterMm: after.diameterMm,
    after: pathOf(after.openings.map((o) => o.region)),
    onlyBefore: pathOf(onlyBefore),
    onlyAfter: pathOf(onlyAfter),
  };
}

function pathOf(regions: readonly Region[]): string {
  return regions
    .flatMap((r) => [r.outer, ...r.holes])
    .map(ringPath)
    .join('');
}

/** y up in the plate's frame, down on the screen. */
function ringPath(ring: Ring): string {
  return `M${ring.map((p) => `${p.x.toFixed(2)} ${(-p.y).toFixed(2)}`).join('L')}Z`;
}
