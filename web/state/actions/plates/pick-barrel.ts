import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Takes the head from the table of barrels instead of a tape measure. */
export function pickBarrel(design: Design, barrel: string): Change {
  return { design: { ...design, head: { ...design.head, source: { kind: 'barrel', barrel } } }, undo: 'step' };
}
