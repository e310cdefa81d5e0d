import { keepRevision as kept, type Keeping } from '../../../../geometry/approval/revisions.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Keeps the design as it is under the next letter (whyNoRevision says why it cannot be). */
export function keepRevision(design: Design, keeping: Keeping): Change {
  return { design: kept(design, keeping), undo: 'step' };
}
