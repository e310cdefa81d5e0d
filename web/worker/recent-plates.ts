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
  const plates = new Map<string, PlateResult>();
  return {
    get(design, plateId) {
      const key = keyOf(design, plateId);
      const plate = plates.get(key);
      if (plate !== undefined) {
        // taken out and put back: the oldest stands first
        plates.delete(key);
        plates.set(key, plate);
      }
      return plate;
    },
    put(design, plateId, plate) {
      plates.set(keyOf(design, plateId), plate);
      const [oldest] = plates.keys();
      if (plates.size > most && oldest !== undefined) plates.delete(oldest);
    },
  };
}

function keyOf(design: Design, plateId: string): string {
  return `${plateId}\n${JSON.stringify(pickParts(design, DESIGN_PARTS, 'cut'))}`;
}
