import type { Design, DesignElement } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';

/**
 * Puts elements where a hand brought them. Locked ones stay as they are. All changes about the same ids are one step
 * until the run is closed, so that one drag is one step.
 */
export function placeElements(design: Design, placed: readonly DesignElement[]): Change {
  const next = placed.reduce(
    (d, to) => editElement(d, to.id, (e) => (e.locked === true || sameRecord(e, to) ? e : to)),
    design,
  );
  return { design: next, undo: 'merge', about: `move:${placed.map((e) => e.id).join()}` };
}

function sameRecord(a: DesignElement, b: DesignElement): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
