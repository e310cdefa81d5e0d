import type { Extent } from '../../../../geometry/layout/placed.ts';
import type { Box } from '../../../../geometry/shapes.ts';

/** Upright box around a turned one; mm. */
export function uprightBox(box: Extent & { kind: 'box' }): Box {
  const rad = (box.turnDeg * Math.PI) / 180;
  const [c, s] = [Math.abs(Math.cos(rad)), Math.abs(Math.sin(rad))];
  const halfX = (box.widthMm * c + box.heightMm * s) / 2;
  const halfY = (box.widthMm * s + box.heightMm * c) / 2;
  return { minX: box.x - halfX, maxX: box.x + halfX, minY: box.y - halfY, maxY: box.y + halfY };
}

/** Upright box around a free element; of one that goes round, its first drawing's. Undefined for bands. */
export function boxOf(id: string, extents: readonly Extent[]): Box | undefined {
  const extent = extents.find((e) => e.elementId === id);
  return extent?.kind === 'box' ? uprightBox(extent) : undefined;
}

/** Degrees that a ring text takes, seen from the centre; 0 for what lies in no ring. */
export function spanOf(id: string, extents: readonly Extent[]): number {
  const extent = extents.find((e) => e.elementId === id);
  return extent?.kind === 'sector' ? Math.min(360, Math.abs(extent.endDeg - extent.startDeg)) : 0;
}
