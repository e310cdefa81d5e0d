import type { Artwork, Design } from '../../../../geometry/design/schema.ts';
import type { Extent } from '../../../../geometry/layout/placed.ts';
import { beginningOf } from '../../../../geometry/sentences/shorten.ts';
import type { Change } from '../../change.ts';
import { freeId } from './free-id.ts';
import { freePlace } from './free-place.ts';

/** A drawing as it was read: its name, its path 1 high, how wide that makes it, and its height in mm if the file says. */
export interface ReadDrawing {
  readonly name: string;
  readonly path: string;
  readonly width: number;
  readonly heightMm?: number | undefined;
}

/**
 * Adds a drawing where there is room, as large as its file says where that fits; or puts it in the place of another.
 * extents: of the plate looked at, mm; radiusMm: its radius.
 */
export function addArtwork(
  design: Design,
  drawing: ReadDrawing,
  extents: readonly Extent[],
  radiusMm: number,
  inPlaceOf?: string,
): Change {
  const name = beginningOf(drawing.name, 120);
  const old = design.elements.find((e) => e.id === inPlaceOf);
  if (old && (old.kind === 'motif' || old.kind === 'artwork')) {
    const { x, y, size, turnDeg, around, room } = old;
    const place = { x, y, size, turnDeg, around, ...(room !== undefined && { room }) };
    const fresh: Artwork = { kind: 'artwork', id: old.id, name, path: drawing.path, ...place };
    return { design: { ...design, elements: design.elements.map((e) => (e === old ? fresh : e)) }, undo: 'step' };
  }
  // Corner to corner across this much of the plate, at most.
  const most = MOST / Math.hypot(1, drawing.width);
  const asSaid = drawing.heightMm === undefined ? most : drawing.heightMm / radiusMm;
  const size = Math.max(0.02, Math.min(most, asSaid));
  const id = freeId(design.elements, 'drawing');
  const fresh: Artwork = {
    kind: 'artwork',
    id,
    name,
    path: drawing.path,
    ...freePlace(extents, radiusMm, size, drawing.width),
    turnDeg: 0,
    around: 'once',
  };
  return { design: { ...design, elements: [...design.elements, fresh] }, undo: 'step' };
}

const MOST = 1.1;
