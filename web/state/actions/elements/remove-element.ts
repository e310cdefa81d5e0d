import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Removes an element, and with it what was changed by hand about its bridges. */
export function removeElement(design: Design, id: string): Change {
  const elements = design.elements.filter((e) => e.id !== id);
  if (elements.length === design.elements.length) return { design, undo: 'step' };
  const edits = design.bridges.edits.filter((e) => e.element !== id);
  const bridges = edits.length === design.bridges.edits.length ? design.bridges : { ...design.bridges, edits };
  return { design: { ...design, elements, bridges }, undo: 'step' };
}
