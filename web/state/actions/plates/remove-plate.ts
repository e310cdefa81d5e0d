import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Takes one plate out of the order, and the ring around it; the last one stays. */
export function removePlate(design: Design, plateId: string): Change {
  const plates = design.plates.filter((p) => p.id !== plateId && p.masks !== plateId);
  if (plates.length === 0 || plates.length === design.plates.length) return { design, undo: 'step' };
  return { design: { ...design, plates }, undo: 'step' };
}
