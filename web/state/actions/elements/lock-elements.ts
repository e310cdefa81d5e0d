import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';

/** Makes elements stand fast on the stage, or lets them move again. Nothing is cut otherwise for it. */
export function lockElements(design: Design, ids: readonly string[], locked: boolean): Change {
  const next = ids.reduce(
    (d, id) =>
      editElement(d, id, (e) => {
        if ((e.locked === true) === locked) return e;
        const { locked: _, ...free } = e;
        return locked ? { ...free, locked } : free;
      }),
    design,
  );
  return { design: next, undo: 'step' };
}
