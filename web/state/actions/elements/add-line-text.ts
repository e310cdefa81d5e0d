import { newLineText } from '../../../../geometry/design/defaults.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { freeId } from './free-id.ts';
import { usualFace } from './usual-face.ts';

/** Adds a line of text: through the middle, or under the lowest line there is. */
export function addLineText(design: Design): Change {
  const fresh = newLineText(freeId(design.elements, 'line'), usualFace(design));
  const lines = design.elements.flatMap((e) => (e.kind === 'lineText' ? [e] : []));
  const lowest = lines.reduce<(typeof lines)[number] | undefined>(
    (low, l) => (low === undefined || l.y < low.y ? l : low),
    undefined,
  );
  if (lowest === undefined) return { design: { ...design, elements: [...design.elements, fresh] }, undo: 'step' };
  const capHeight = Math.min(fresh.capHeight, 0.16);
  const under = lowest.y - lowest.capHeight / 2 - capHeight * 1.1;
  const element = { ...fresh, capHeight, y: Math.max(-0.6, under) };
  return { design: { ...design, elements: [...design.elements, element] }, undo: 'step' };
}
