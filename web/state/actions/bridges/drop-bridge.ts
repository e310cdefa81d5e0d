import { type BridgedPlate, dropFrom } from '../../../../geometry/bridges/edit-terms.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { MOST_EDITS } from '../elements/former-place.ts';
import { freeId } from '../elements/free-id.ts';
import type { WorkedBridge } from './keep-bridge.ts';

/** Removes a bridge: one by hand is taken back, and the tool puts none of its own there unless the plate needs it. */
export function dropBridge(design: Design, plate: BridgedPlate, bridge: WorkedBridge): Change {
  const edits = design.bridges.edits.filter((e) => e.id !== bridge.editId);
  const edit = dropFrom(bridge, plate, freeId(design.bridges.edits, 'bridge'));
  if (!edit || edits.length + 1 > MOST_EDITS) return { design, undo: 'step' };
  return { design: { ...design, bridges: { ...design.bridges, edits: [...edits, edit] } }, undo: 'step' };
}
