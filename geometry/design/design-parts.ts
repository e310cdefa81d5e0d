import type { BridgeEdit, Design, DesignElement, Head, OwnFace, PlateSpec } from './schema.ts';

/**
 * What each part of a design decides. The one list that fingerprint, caches and page ask: the compiler demands a line
 * for every key of the schema, so that a part that is added later cannot leave a stale plate anywhere.
 *
 * cut    decides what is cut
 * id     names a part inside of the design: another id cuts alike
 * label  stands on a plate that was made, and on paper: another name or number cuts alike
 * said   only a finding speaks of it
 * paper  decides nothing about a plate
 */
export type Bearing = 'cut' | 'id' | 'label' | 'said' | 'paper';

type KeyOf<T> = T extends unknown ? keyof T : never;
type Parts<T> = Readonly<Record<KeyOf<T>, Bearing>>;

/** Keys of a record of parts that are cut. */
export type CutKey<P> = { [K in keyof P]: P[K] extends 'cut' ? K : never }[keyof P];

/** Parts that are `cut` may hold more than that; the records below say which of it counts. */
export const DESIGN_PARTS = {
  format: 'paper',
  version: 'paper',
  title: 'paper',
  head: 'cut',
  surface: 'cut',
  lifting: 'cut',
  plates: 'cut',
  stock: 'cut',
  elements: 'cut',
  bridges: 'cut',
  ownFaces: 'cut',
  order: 'said',
  beginning: 'paper',
  offer: 'paper',
  home: 'paper',
  approval: 'paper',
  options: 'paper',
  accepted: 'paper',
  revisions: 'paper',
} as const satisfies Parts<Design>;

/** The crown is checked, but the plate is flat. */
export const HEAD_PARTS = {
  source: 'cut',
  clearanceMm: 'cut',
  crownMm: 'said',
  recessMm: 'cut',
} as const satisfies Parts<Head>;

export const PLATE_PARTS = {
  id: 'id',
  name: 'label',
  diameter: 'cut',
  quantity: 'label',
  masks: 'cut',
} as const satisfies Parts<PlateSpec>;

export const FACE_PARTS = { id: 'cut', name: 'label', data: 'cut' } as const satisfies Parts<OwnFace>;

export const ORDER_PARTS = {
  who: 'paper',
  reference: 'paper',
  neededBy: 'said',
  notes: 'paper',
} as const satisfies Parts<Design['order']>;

/** All else of an element is cut, whatever its kind: what is added later counts until it is named here. */
export const ELEMENT_NOT_CUT = {
  id: 'id',
  name: 'label',
  locked: 'paper',
} as const satisfies Partial<Parts<DesignElement>>;

/** What a person changed about the bridges by hand names its element; the rest is cut. */
export const EDIT_NOT_CUT = { id: 'id', element: 'id' } as const satisfies Partial<Parts<BridgeEdit>>;

/** Of a value the parts that bear in one of these ways, in the order of the record; what is absent is left out. */
export function pickParts<T extends object>(value: T, parts: Parts<T>, ...bearings: readonly Bearing[]): Partial<T> {
  const keys = (Object.keys(parts) as (KeyOf<T> & keyof T)[]).filter((key) => bearings.includes(parts[key]));
  return Object.fromEntries(keys.flatMap((key) => (value[key] === undefined ? [] : [[key, value[key]]]))) as Partial<T>;
}

/** All that plates are made of, and what their findings speak of besides, by key and as the very same data. */
export function pickPlateParts(design: Design): Readonly<Record<string, unknown>> {
  return { ...pickParts(design, DESIGN_PARTS, 'cut'), ...pickParts(design.order, ORDER_PARTS, 'said') };
}
