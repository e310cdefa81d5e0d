import type { Design, DesignElement } from '../../../../geometry/design/schema.ts';

/**
 * The design with one element replaced; the very same design when there is no such element or nothing changed,
 * so that no empty step lands in the history.
 */
export function editElement(design: Design, id: string, edit: (element: DesignElement) => DesignElement): Design {
  let changed = false;
  const elements = design.elements.map((element) => {
    if (element.id !== id) return element;
    const next = edit(element);
    if (next !== element) changed = true;
    return next;
  });
  return changed ? { ...design, elements } : design;
}
