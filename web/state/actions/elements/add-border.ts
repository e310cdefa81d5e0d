import { isBand } from '../../../../geometry/design/kinds.ts';
import { newBorder } from '../../../../geometry/design/defaults.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { freeId } from './free-id.ts';

/** Gap between a new border and what lies around it, share of the radius. */
const GAP = 0.035;

/** A border that would begin nearer to the middle than this share of the radius goes to the rim. */
const LEAST_INNER = 0.05;

/** Adds a border near the rim, or inside the innermost ring when the rim has one. */
export function addBorder(design: Design): Change {
  const fresh = newBorder(freeId(design.elements, 'border'));
  const bands = design.elements.flatMap((e) => (isBand(e) ? [e] : []));
  const rimTaken = bands.some((b) => b.outer > fresh.inner && b.inner < fresh.outer);
  const innermost = Math.min(...bands.map((b) => b.inner));
  const width = fresh.outer - fresh.inner;
  const outer = innermost - GAP;
  const element = rimTaken && outer - width > LEAST_INNER ? { ...fresh, outer, inner: outer - width } : fresh;
  return { design: { ...design, elements: [...design.elements, element] }, undo: 'step' };
}
