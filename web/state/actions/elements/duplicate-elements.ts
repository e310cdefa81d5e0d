import type { Design, DesignElement } from '../../../../geometry/design/schema.ts';
import type { Extent } from '../../../../geometry/layout/placed.ts';
import type { Change } from '../../change.ts';
import { addCopies } from './add-copies.ts';
import { isFree, pullElement, shiftElement, swingElement } from './move-element.ts';
import { boxOf, spanOf } from './reach.ts';

/** Between an element and its copy, share of the radius; degrees along a ring. */
const STEP = 0.04;
const STEP_DEG = 6;

/**
 * Adds one more of each element, beside it: under a free one, further along the ring for ring text, inside for a
 * border. extents are those of the plate looked at (mm), radiusMm its radius. Copies are not locked.
 */
export function duplicateElements(
  design: Design,
  ids: readonly string[],
  extents: readonly Extent[],
  radiusMm: number,
): Change & { readonly ids: readonly string[] } {
  const chosen = ids.flatMap((id) => design.elements.filter((e) => e.id === id));
  const copies = chosen.map((e) => {
    const { locked: _, ...free } = e;
    return beside(free, extents, radiusMm);
  });
  return { ...addCopies(design, copies), undo: 'step' };
}

function beside(e: DesignElement, extents: readonly Extent[], radiusMm: number): DesignElement {
  if (e.kind === 'ringText') return swingElement(e, spanOf(e.id, extents) + STEP_DEG);
  if (e.kind === 'border') {
    const by = Math.abs(e.outer - e.inner) + STEP;
    return pullElement(e, Math.min(e.inner, e.outer) > by ? -by : by);
  }
  if (!isFree(e)) return e;
  const box = boxOf(e.id, extents);
  const down = box === undefined ? STEP : (box.maxY - box.minY) / radiusMm + STEP;
  return shiftElement(e, 0, e.y - down < -0.9 ? down : -down);
}
