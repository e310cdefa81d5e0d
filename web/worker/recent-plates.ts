import { createCache } from '../../geometry/cache.ts';
import { DESIGN_PARTS, pickParts } from '../../geometry/design/design-parts.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';

export interface RecentPlates {
  get(design: Design, plateId: string): PlateResult | undefined;
  put(design: Design, plateId: string, plate: PlateResult): void;
}

/**
 * The last few plates worked out, so that undo, a switch back and the downloads need not wait again.
 * Title, order, approval and what else is paper change no plate and do not count.
 */
export function createRecentPlates(most: number): RecentPlates {
  const plates = createCache<PlateResult>(most);
  return {
    get: (design, plateId) => plates.get(keyOf(design, plateId)),
    put: (design, plateId, plate) => plates.set(keyOf(design, plateId), plate),
  };
}

function keyOf(design: Design, plateId: string): string {
  return `${plateId}\n${JSON.stringify(pickParts(design, DESIGN_PARTS, 'cut'))}`;
}
