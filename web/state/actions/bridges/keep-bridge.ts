import { type BridgedPlate, dropFrom, type HandBridge, keepFrom } from '../../../../geometry/bridges/edit-terms.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { freeId } from '../elements/free-id.ts';
import { formerPlaceId, MOST_EDITS } from '../elements/former-place.ts';

/** A bridge a person works on: the tool's own, or one by hand (then with its edit). */
export interface WorkedBridge extends HandBridge {
  readonly shapeId: string;
  readonly editId?: string;
  /** It widens a neck of the drawing, which needs that wherever else a bridge goes. */
  readonly widens: boolean;
}

/**
 * Puts a bridge where a person moved, turned or widened it (mm, plate frame). One of the tool's own becomes one by
 * hand, and its former place is barred, so that it does not come back beside it. Runs by keyboard are one step.
 */
export function keepBridge(
  design: Design,
  plate: BridgedPlate,
  bridge: WorkedBridge,
  moved: Partial<HandBridge>,
  undo: 'step' | 'merge',
): Change & { readonly editId?: string } {
  const { edits } = design.bridges;
  const edit = keepFrom(bridge, plate, freeId(edits, 'bridge'), moved);
  const same = { design, undo: 'step' } as const;
  if (!edit) return same;
  const known = edits.some((e) => e.id === edit.id);
  if (!known && edits.length + 2 > MOST_EDITS) return same;
  const former = known || bridge.widens ? undefined : dropFrom(bridge, plate, formerPlaceId(edit.id));
  const next = known ? edits.map((e) => (e.id === edit.id ? edit : e)) : [...edits, edit, ...(former ? [former] : [])];
  return {
    design: { ...design, bridges: { ...design.bridges, edits: next } },
    undo,
    about: `bridge:${edit.id}`,
    editId: edit.id,
  };
}
