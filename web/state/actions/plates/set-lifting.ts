import type { Design, Lifting } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Two holes near the rim, left and right: what a pair of hands expects. */
export const USUAL_LIFTING: Lifting = { shape: 'holes', count: 2, firstDeg: 90, at: 0.88 };

/** Sets the openings to lift plates by, or takes them away. */
export function setLifting(design: Design, lifting: Lifting | undefined): Change {
  if (lifting) return { design: { ...design, lifting }, undo: 'merge', about: 'lifting' };
  const { lifting: _, ...without } = design;
  return { design: without, undo: 'step' };
}
