import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { forgetEdits } from './forget-edits.ts';

/** Gives one shape (a letter, a border) back to the tool: all that was changed about its bridges is taken back. */
export function forgetEditsOn(design: Design, shapeId: string): Change {
  const mine = design.bridges.edits.filter((e) => `${e.element}/${e.shape}` === shapeId);
  return forgetEdits(
    design,
    mine.map((e) => e.id),
  );
}
