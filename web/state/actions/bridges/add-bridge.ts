import { bridgeAcross } from '../../../../geometry/bridges/across-opening.ts';
import { type BridgedPlate, keepFrom } from '../../../../geometry/bridges/edit-terms.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Point, Region } from '../../../../geometry/shapes.ts';
import type { Change } from '../../change.ts';
import { MOST_EDITS } from '../elements/former-place.ts';
import { freeId } from '../elements/free-id.ts';

/**
 * Adds a bridge straight across the stroke at a place (mm, plate frame). The very same design, and no editId, where
 * nothing is cut away at that place.
 */
export function addBridge(
  design: Design,
  plate: BridgedPlate & { readonly unbridged: readonly Region[] },
  at: Point,
): Change & { readonly editId?: string } {
  const { edits } = design.bridges;
  const bridge = bridgeAcross(at, plate);
  const edit = bridge && keepFrom(bridge, plate, freeId(edits, 'bridge'));
  if (!edit || edits.length + 1 > MOST_EDITS) return { design, undo: 'step' };
  return {
    design: { ...design, bridges: { ...design.bridges, edits: [...edits, edit] } },
    undo: 'step',
    editId: edit.id,
  };
}
