import { facesNeeded } from '../../../../geometry/approval/snapshot.ts';
import type { Design, OwnFace } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { setFace } from './set-face.ts';

export const MOST_OWN_FACES = 8;

/**
 * Puts a person's own font file into the design and gives it to one text, or to all when no id is said.
 * A file that is there already is only chosen. With eight in the design, one makes room that no text uses, in no option and no revision.
 */
export function addOwnFace(design: Design, face: OwnFace, elementId?: string): Change {
  const known = design.ownFaces.some((f) => f.id === face.id);
  let kept = design.ownFaces;
  if (!known && kept.length >= MOST_OWN_FACES) {
    const needed = facesNeeded(design);
    const spare = kept.find((f) => !needed.has(f.id));
    if (spare === undefined) return { design, undo: 'step' };
    kept = kept.filter((f) => f !== spare);
  }
  const withFace = known ? design : { ...design, ownFaces: [...kept, face] };
  return { design: setFace(withFace, face.id, elementId).design, undo: 'step' };
}
