import { approve as approved, type Approving } from '../../../../geometry/approval/approve.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Approves what the design is now (whyNoApproval says why not); undo takes all of it back in one step. */
export function approve(design: Design, asked: Approving): Change {
  return { design: approved(design, asked), undo: 'step' };
}
