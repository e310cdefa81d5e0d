import type { BridgeEdit, Design, DesignElement } from '../../../../geometry/design/schema.ts';
import { MOST_EDITS } from './former-place.ts';
import { freeId } from './free-id.ts';

/** As many elements as a design may carry. */
const MOST_ELEMENTS = 200;

export interface Copies {
  readonly design: Design;
  /** Of the copies, in the order in which they were wanted. */
  readonly ids: readonly string[];
}

/**
 * The design with copies of elements after the last one, each with what was changed by hand about the bridges of the
 * one it copies. The very same design and no ids when there is no room for all of them.
 */
export function addCopies(design: Design, copies: readonly DesignElement[]): Copies {
  if (copies.length === 0 || design.elements.length + copies.length > MOST_ELEMENTS) return { design, ids: [] };
  const elements = [...design.elements];
  const edits: BridgeEdit[] = [...design.bridges.edits];
  const ids: string[] = [];
  for (const copy of copies) {
    const id = freeId(elements, wordOf(copy.id));
    const mine = design.bridges.edits.filter((e) => e.element === copy.id);
    elements.push({ ...copy, id });
    ids.push(id);
    if (edits.length + mine.length > MOST_EDITS) continue;
    for (const edit of mine) edits.push({ ...edit, id: freeId(edits, 'bridge'), element: id });
  }
  const bridges = edits.length === design.bridges.edits.length ? design.bridges : { ...design.bridges, edits };
  return { design: { ...design, elements, bridges }, ids };
}

/** `ring` of `ring-2`. */
function wordOf(id: string): string {
  return id.replace(/-\d+$/, '').slice(0, 50);
}
