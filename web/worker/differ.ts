import { differenceShapes } from '../../geometry/approval/difference-shapes.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { regionsPath } from '../../geometry/proof/picture-path.ts';
import type { PlateDifference } from './plate-api.ts';

/** One plate before and after, as the page draws it: path data in mm about the plate's middle, y down, filled even-odd. */
export function differ(before: PlateResult, after: PlateResult): PlateDifference {
  const { onlyBefore, onlyAfter } = differenceShapes(before, after);
  return {
    beforeMm: before.diameterMm,
    afterMm: after.diameterMm,
    after: regionsPath(after.openings.map((o) => o.region)),
    onlyBefore: regionsPath(onlyBefore),
    onlyAfter: regionsPath(onlyAfter),
  };
}
