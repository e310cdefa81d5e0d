import type { Design, DesignElement } from '../../geometry/design/schema.ts';

/** The elements as one meets them from the rim inward; rings before lines, lines from top to bottom. */
export function fromRim(design: Design): DesignElement[] {
  return [...design.elements].sort((a, b) => {
    if (a.kind === 'lineText' && b.kind === 'lineText') return b.y - a.y;
    if (a.kind === 'lineText') return 1;
    if (b.kind === 'lineText') return -1;
    return b.outer - a.outer || clockOf(a) - clockOf(b);
  });
}

/** On the same radius the one nearer the top comes first. */
function clockOf(element: DesignElement): number {
  return element.kind === 'ringText' ? Math.abs(((element.middleDeg + 540) % 360) - 180) : 0;
}
