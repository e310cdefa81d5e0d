import { newRingText } from '../../../../geometry/design/defaults.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { usualFace } from './usual-face.ts';
import { freeId } from './free-id.ts';

/** Adds lettering along the rim: at the top, or at the bottom reading inward when the top is taken. */
export function addRingText(design: Design): Change {
  const fresh = newRingText(freeId(design.elements, 'ring-text'), usualFace(design));
  const rings = design.elements.flatMap((e) => (e.kind === 'ringText' ? [e] : []));
  const model = rings[0];
  const inRow =
    model === undefined ? fresh : { ...fresh, inner: model.inner, outer: model.outer, tracking: model.tracking };
  const topTaken = rings.some((r) => r.reads === 'outward');
  const element = topTaken ? { ...inRow, middleDeg: 180, reads: 'inward' as const } : inRow;
  return { design: { ...design, elements: [...design.elements, element] }, undo: 'step' };
}
