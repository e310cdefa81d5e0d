import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Takes back what was changed about bridges by hand: the edits named, or all of them. The tool's own come back. */
export function forgetEdits(design: Design, editIds: readonly string[] | 'all'): Change {
  const gone = new Set(editIds);
  const edits = editIds === 'all' ? [] : design.bridges.edits.filter((e) => !gone.has(e.id));
  const same = edits.length === design.bridges.edits.length;
  return { design: same ? design : { ...design, bridges: { ...design.bridges, edits } }, undo: 'step' };
}
