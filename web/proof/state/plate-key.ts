import type { Design, PlateSpec } from '../../../geometry/design/schema.ts';

/**
 * The same for plates that are cut alike: how many there are and what they are called is counted apart. The order's day
 * is part of it, since findings speak of that too.
 */
export function plateKey(design: Design, plateId: string): string {
  const { head, surface, lifting, stock, elements, bridges, ownFaces, order } = design;
  const plates = design.plates.map(({ id, diameter, masks }) => [id, diameter, masks]);
  const faces = ownFaces.map(({ id }) => id);
  return JSON.stringify([plateId, plates, head, surface, lifting, stock, elements, bridges, faces, order.neededBy]);
}

/** A plate of a design as the price asks for it. */
export function plateKeys(design: Design): readonly { readonly spec: PlateSpec; readonly key: string }[] {
  return design.plates.map((spec) => ({ spec, key: plateKey(design, spec.id) }));
}
