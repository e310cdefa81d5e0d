import { isBand } from '../../../../geometry/design/kinds.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';

/** Makes a drawing or the letters of one text larger or smaller by a share (0.9 = a tenth smaller); it stays where it is. */
export function scaleText(design: Design, elementId: string, share: number): Change {
  const next = editElement(design, elementId, (e) => {
    if (e.kind === 'lineText') return { ...e, capHeight: clamp(e.capHeight * share, 0.005, 2) };
    if (!isBand(e)) return { ...e, size: clamp(e.size * share, 0.005, 2) };
    const middle = (e.inner + e.outer) / 2;
    const half = ((e.outer - e.inner) / 2) * share;
    return { ...e, inner: clamp(middle - half, 0, 1), outer: clamp(middle + half, 0, 1) };
  });
  return { design: next, undo: 'step' };
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
