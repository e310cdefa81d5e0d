/** What stands where an element's id would for openings that no element draws; the schema keeps elements from such ids. */
export const FINGER_HOLES_ID = ':finger-holes';
export const HAND_SLOTS_ID = ':hand-slots';
/** The opening of a ring that masks, which takes a plate in. */
export const MASK_ID = ':mask';

/** False for openings that no element draws: there is nothing to choose, to move or to change. */
export function isElementId(id: string): boolean {
  return !id.startsWith(':');
}
