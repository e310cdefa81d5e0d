import type { Design, PlateSpec } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** So many of one plate, in the design and in every option that has it: prices stay comparable. */
export function setQuantity(design: Design, plateId: string, quantity: number): Change {
  const set = (plates: readonly PlateSpec[]): PlateSpec[] =>
    plates.map((p) => (p.id === plateId ? { ...p, quantity } : p));
  const options = design.options?.map((o) => (o.plates ? { ...o, plates: set(o.plates) } : o));
  return {
    design: { ...design, plates: set(design.plates), ...(options && { options }) },
    undo: 'merge',
    about: `quantity:${plateId}`,
  };
}
