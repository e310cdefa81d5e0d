import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Types into the order: who, reference, needed by, notes. None of it changes what is cut. */
export function setOrder(design: Design, part: Partial<Design['order']>): Change {
  return {
    design: { ...design, order: { ...design.order, ...part } },
    undo: 'merge',
    about: `order:${Object.keys(part).sort().join()}`,
  };
}
