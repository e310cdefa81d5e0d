import { PLATE_PARTS, pickParts, pickPlateParts } from '../../../geometry/design/design-parts.ts';
import { contentKey } from '../../../geometry/design/own-face-id.ts';
import type { Design, PlateSpec } from '../../../geometry/design/schema.ts';

/**
 * The same for plates that are cut alike and have the same findings: how many there are and what they are called is
 * counted apart. A font of one's own stands by its data.
 */
export function plateKey(design: Design, plateId: string): string {
  const plates = design.plates.map((p) => pickParts(p, PLATE_PARTS, 'cut', 'id'));
  const ownFaces = design.ownFaces.map(contentKey);
  return JSON.stringify([plateId, { ...pickPlateParts(design), plates, ownFaces }]);
}

/** A plate of a design as the price asks for it. */
export function plateKeys(design: Design): readonly { readonly spec: PlateSpec; readonly key: string }[] {
  return design.plates.map((spec) => ({ spec, key: plateKey(design, spec.id) }));
}
