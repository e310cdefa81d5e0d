import { withdrawApproval as withdrawn } from '../../../../geometry/approval/approve.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Takes the approval away; what was approved stays as a revision. */
export function withdrawApproval(design: Design): Change {
  return { design: withdrawn(design), undo: 'step' };
}
