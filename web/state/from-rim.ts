import { isBand } from '../../geometry/design/kinds.ts';
import type { Design, DesignElement } from '../../geometry/design/schema.ts';

/** The elements as one meets them from the rim inward; rings before lines and drawings, those from top to bottom. */
export function fromRim(design: Design): DesignElement[] {
  return [...design.elements].sort((a, b) => {
    if (!isBand(a) && !isBand(b)) return b.y - a.y;
    if (!isBand(a)) return 1;
    if (!isBand(b)) return -1;
    return b.outer - a.outer || clockOf(a) - clockOf(b);
  });
}

/** On the same radius the one nearer the top comes first. */
function clockOf(element: DesignElement): number {
  return element.kind === 'ringText' ? Math.abs(((element.middleDeg + 540) % 360) - 180) : 0;
}
