import type { Design, Motif } from '../../../../geometry/design/schema.ts';
import type { Extent } from '../../../../geometry/layout/placed.ts';
import { outlineBox } from '../../../../geometry/measure/outline-box.ts';
import { motifById } from '../../../../geometry/motifs/catalogue.ts';
import { drawMotif } from '../../../../geometry/motifs/draw-motif.ts';
import type { Change } from '../../change.ts';
import { freeId } from './free-id.ts';
import { freePlace } from './free-place.ts';

/**
 * Adds a motif where there is room; or puts it in the place of another drawing, whose place and size it takes.
 * extents: of the plate looked at, mm; radiusMm: its radius.
 */
export function addMotif(
  design: Design,
  motif: string,
  extents: readonly Extent[],
  radiusMm: number,
  inPlaceOf?: string,
): Change {
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
    ...freePlace(extents, radiusMm, motif === 'flourish' ? 0.14 : 0.5, widthOf(motif)),
    turnDeg: 0,
    around: 'once',
  };
  return { design: { ...design, elements: [...design.elements, fresh] }, undo: 'step' };
}

/** How wide it is when it is 1 high. */
function widthOf(id: string): number {
  const motif = motifById(id);
  const box = motif && outlineBox(drawMotif(motif, {}));
  return box ? box.maxX - box.minX : 1;
}
