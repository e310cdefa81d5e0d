import { isText } from '../../../../geometry/design/kinds.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Gives one text its face, or all of them when no id is said. */
export function setFace(design: Design, face: string, id?: string): Change {
  const wanted = (e: Design['elements'][number]): boolean =>
    isText(e) && e.face !== face && (id === undefined || e.id === id);
  if (!design.elements.some(wanted)) return { design, undo: 'step' };
  const elements = design.elements.map((e) => (isText(e) && wanted(e) ? { ...e, face } : e));
  return { design: { ...design, elements }, undo: 'step' };
}
