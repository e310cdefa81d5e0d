import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Sets the two measured diameters, mm: along the boards and across them. */
export function measureHead(design: Design, alongMm: number, acrossMm: number): Change {
  return {
    design: { ...design, head: { ...design.head, source: { kind: 'measured', alongMm, acrossMm } } },
    undo: 'merge',
    about: 'head-measured',
  };
}
