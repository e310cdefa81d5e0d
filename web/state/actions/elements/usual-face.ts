import { isText } from '../../../../geometry/design/kinds.ts';
import type { Design } from '../../../../geometry/design/schema.ts';

/** The classic crate face: what a first text gets. */
export const FIRST_FACE = 'stardos-stencil-700';

/** The face that most texts of the design have, so that a new one fits in. */
export function usualFace(design: Design): string {
  const counts = new Map<string, number>();
  for (const e of design.elements) if (isText(e)) counts.set(e.face, (counts.get(e.face) ?? 0) + 1);
  let best: string | undefined;
  for (const [face, count] of counts) if (best === undefined || count > (counts.get(best) ?? 0)) best = face;
  return best ?? FIRST_FACE;
}
