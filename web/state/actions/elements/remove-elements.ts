import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { removeElement } from './remove-element.ts';

/** Removes elements, but for those that are locked; with them what was changed by hand about their bridges. */
export function removeElements(design: Design, ids: readonly string[]): Change {
  const free = ids.filter((id) => design.elements.some((e) => e.id === id && e.locked !== true));
  return { design: free.reduce((d, id) => removeElement(d, id).design, design), undo: 'step' };
}
