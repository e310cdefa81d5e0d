import type { Design, Head } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Sets the clearance left on each side, how far the head bulges, or how deep it lies; mm. */
export function setHead(design: Design, part: Partial<Pick<Head, 'clearanceMm' | 'crownMm' | 'recessMm'>>): Change {
  return {
    design: { ...design, head: { ...design.head, ...part } },
    undo: 'merge',
    about: `head:${Object.keys(part).sort().join()}`,
  };
}
