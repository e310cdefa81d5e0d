import type { Design } from '../../geometry/design/schema.ts';
import type { Change } from '../state/history.ts';

export function removeElement(design: Design, id: string): Change {
  const elements = design.elements.filter((e) => e.id !== id);
  return { design: elements.length === design.elements.length ? design : { ...design, elements }, undo: 'step' };
}
