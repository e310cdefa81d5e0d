import { isBand } from '../../../../geometry/design/kinds.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';

/** Moves a ring text or border to the band between two radii, shares of the plate's radius, given in either order. */
export function setBand(design: Design, id: string, inner: number, outer: number): Change {
  const low = Math.min(1, Math.max(0, Math.min(inner, outer)));
  const high = Math.min(1, Math.max(0, Math.max(inner, outer)));
  return {
    design: editElement(design, id, (e) =>
      !isBand(e) || (e.inner === low && e.outer === high) ? e : { ...e, inner: low, outer: high },
    ),
    undo: 'merge',
    about: `band:${id}`,
  };
}
