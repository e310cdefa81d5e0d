import { ringsOf, union } from '../adapters/clipper.ts';
import type { PlacedShape } from '../layout/placed.ts';
import { flattenOutline } from '../measure/flatten.ts';
import { placeRing } from '../measure/place.ts';
import type { Region, Ring } from '../shapes.ts';
import { FLATTEN_ERROR_MM } from '../units.ts';

/** Outlines already flattened and united, by the shape's storeKey, in the shape's own frame. */
export interface OutlineStore {
  readonly regions: Map<string, readonly Region[]>;
  /** How many outlines were worked out since the store was made: counted work for tests and bench. */
  flattened: number;
}

export function createOutlineStore(): OutlineStore {
  return { regions: new Map(), flattened: 0 };
}

/** What the shape cuts away, in its own frame, mm; worked out once for each storeKey. */
export function shapeRegions(shape: PlacedShape, store: OutlineStore): readonly Region[] {
  const known = store.regions.get(shape.storeKey);
  if (known) return known;
  const regions = union(flattenOutline(shape.outline, FLATTEN_ERROR_MM));
  store.flattened++;
  store.regions.set(shape.storeKey, regions);
  return regions;
}

/** Rings of the shape in the plate's frame. */
export function placedRings(shape: PlacedShape, store: OutlineStore): Ring[] {
  return ringsOf(shapeRegions(shape, store)).map((ring) => placeRing(ring, shape.placement));
}
