import { withoutRevisions } from '../../../../geometry/approval/revisions.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Takes all revisions out, so that the next one is A again; the approval stays. */
export function forgetRevisions(design: Design): Change {
  return { design: design.revisions ? withoutRevisions(design) : design, undo: 'step' };
}
