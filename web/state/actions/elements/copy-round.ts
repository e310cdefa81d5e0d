import { isDrawing } from '../../../../geometry/design/kinds.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { addCopies } from './add-copies.ts';
import { editElement } from './edit-element.ts';
import { isFree, swingElement } from './move-element.ts';

/** As many as the schema takes of a drawing; of texts fewer make sense. */
export const MOST_ROUND = 72;

/**
 * So many of an element in all, evenly round the plate's centre. A drawing stays one element that goes round (1 makes
 * it one again); of a text copies are added. The very same design where that can't be: a border goes round anyway,
 * and what lies on the very centre would only lie on itself.
 */
export function copyRound(design: Design, id: string, count: number): Change & { readonly ids: readonly string[] } {
  const same = { design, undo: 'step', ids: [] } as const;
  const element = design.elements.find((e) => e.id === id);
  if (element === undefined || !Number.isInteger(count) || count < 1 || count > MOST_ROUND) return same;
  if (isFree(element) && Math.hypot(element.x, element.y) < LEAST_AWAY) return same;
  if (isDrawing(element)) {
    const around = count === 1 ? ('once' as const) : { count };
    const next = editElement(design, id, (e) => (isDrawing(e) ? { ...e, around } : e));
    return { design: next, undo: 'step', ids: [id] };
  }
  if (element.kind === 'border' || count === 1) return same;
  const { locked: _, ...free } = element;
  const copies = Array.from({ length: count - 1 }, (_, i) => swingElement(free, ((i + 1) * 360) / count));
  const added = addCopies(design, copies);
  return { design: added.design, undo: 'step', ids: added.ids.length === 0 ? [] : [id, ...added.ids] };
}

/** Nearer to the centre than this share of the radius, copies would lie on each other. */
export const LEAST_AWAY = 0.01;
