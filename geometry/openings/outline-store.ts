import { type Cache, createCache } from '../cache.ts';
import { ringsOf, union } from '../adapters/clipper.ts';
import type { PlacedShape } from '../layout/placed.ts';
import { flattenOutline } from '../measure/flatten.ts';
import { placeRegions } from '../measure/place.ts';
import { joinBoxes, ringBox } from '../measure/ring.ts';
import type { Box, Region, Ring } from '../shapes.ts';
import { FLATTEN_ERROR_MM } from '../units.ts';

/** Outlines already flattened and united, by the shape's storeKey, in the shape's own frame. */
export interface OutlineStore {
  readonly regions: Cache<readonly Region[]>;
  /** Shapes where they stand; goes with the shapes, which a layout store keeps as long as their element is unchanged. */
  readonly placed: WeakMap<PlacedShape, Placed>;
  /** How many outlines were worked out since the store was made: counted work for tests and bench. */
  flattened: number;
}

/** What a shape cuts away: in its own frame, and on the plate. */
export interface Placed {
  readonly shape: PlacedShape;
  readonly regions: readonly Region[];
  readonly inPlace: readonly Region[];
  /** All rings on the plate and the box around them. */
  readonly rings: readonly Ring[];
  readonly box: Box;
}

/** most: outlines held at least, once so many came in. */
export function createOutlineStore(most: number): OutlineStore {
  return { regions: createCache(most), placed: new WeakMap(), flattened: 0 };
}

/** What the shape cuts away, in its own frame, mm; worked out once for each storeKey. */
export function shapeRegions(shape: PlacedShape, store: OutlineStore): readonly Region[] {
  return store.regions.getOrMake(shape.storeKey, () => {
    store.flattened++;
    return union(flattenOutline(shape.outline, FLATTEN_ERROR_MM));
  });
}

/** The shape in the plate's frame; worked out once for each shape. */
export function placeShape(shape: PlacedShape, store: OutlineStore): Placed {
  const known = store.placed.get(shape);
  if (known) return known;
  const regions = shapeRegions(shape, store);
  const inPlace = placeRegions(regions, shape.placement);
  const rings = ringsOf(inPlace);
  const placed = { shape, regions, inPlace, rings, box: joinBoxes(rings.map(ringBox)) };
  store.placed.set(shape, placed);
  return placed;
}
