import { bringBack as broughtBack, type Keeping } from '../../../../geometry/approval/revisions.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** The design as it was in a revision; what is now is kept first (whyNoRevision says why it cannot be). One step. */
export function bringBack(design: Design, letter: string, keeping: Keeping): Change {
  return { design: broughtBack(design, letter, keeping), undo: 'step' };
}
