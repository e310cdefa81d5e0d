import { offset, ringsOf, subtract } from '../adapters/clipper.ts';
import type { PlateResult } from '../plate/plate.ts';
import type { Region } from '../shapes.ts';
import { DIFFERENCE_SEEN_MM } from '../units.ts';

export interface DifferenceShapes {
  /** Cut out before and metal now, in mm in the plate's frame. */
  readonly onlyBefore: readonly Region[];
  /** Metal before and cut out now. */
  readonly onlyAfter: readonly Region[];
}

/** What is cut away of the same plate before and after, as far as the two differ. */
export function differenceShapes(
  before: Pick<PlateResult, 'openings'>,
  after: Pick<PlateResult, 'openings'>,
  seenMm = DIFFERENCE_SEEN_MM,
): DifferenceShapes {
  const [was, is] = [regionsOf(before), regionsOf(after)];
  return { onlyBefore: seen(subtract(was, ringsOf(is)), seenMm), onlyAfter: seen(subtract(is, ringsOf(was)), seenMm) };
}

function regionsOf({ openings }: Pick<PlateResult, 'openings'>): Region[] {
  return openings.map((o) => o.region);
}

/** Without slivers: what vanishes when shrunk by half of what is seen. */
function seen(regions: readonly Region[], seenMm: number): Region[] {
  return regions.filter((r) => offset([r], -seenMm / 2).length > 0);
}
