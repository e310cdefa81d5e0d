import { acceptFinding as accepted, type Accepting } from '../../../../geometry/approval/acceptances.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Notes that somebody lets a finding be, as long as the design stays as it is. What stops a plate is never let be. */
export function acceptFinding(design: Design, accepting: Accepting): Change {
  return { design: accepted(design, accepting), undo: 'step' };
}
