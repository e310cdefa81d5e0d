import type { Design, Motif } from '../../geometry/design/schema.ts';
import type { Change } from '../state/history.ts';
import { freeId } from './free-id.ts';

/** Adds a motif in the middle; or puts it in the place of another drawing, whose place and size it takes. */
export function addMotif(design: Design, motif: string, inPlaceOf?: string): Change {
  const old = design.elements.find((e) => e.id === inPlaceOf);
  if (old && (old.kind === 'motif' || old.kind === 'artwork')) {
    const { x, y, size, turnDeg, around } = old;
    const fresh: Motif = { kind: 'motif', id: old.id, motif, x, y, size, turnDeg, around };
    return { design: { ...design, elements: design.elements.map((e) => (e === old ? fresh : e)) }, undo: 'step' };
  }
  const fresh: Motif = {
    kind: 'motif',
    id: freeId(design.elements, 'motif'),
    motif,
    x: 0,
    y: 0,
    size: motif === 'flourish' ? 0.14 : 0.5,
    turnDeg: 0,
    around: 'once',
  };
  return { design: { ...design, elements: [...design.elements, fresh] }, undo: 'step' };
}
