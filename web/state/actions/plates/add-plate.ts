import type { Design, PlateSpec } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { freeId } from '../elements/free-id.ts';

export const MOST_PLATES = 12;

/** Adds one more plate of the same design; nothing happens when the order is full. */
export function addPlate(design: Design, name: string, diameter: PlateSpec['diameter']): Change {
  if (design.plates.length >= MOST_PLATES) return { design, undo: 'step' };
  const id = freeId(design.plates, 'plate');
  return { design: { ...design, plates: [...design.plates, { id, name, diameter, quantity: 1 }] }, undo: 'step' };
}
