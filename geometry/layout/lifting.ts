import type { Lifting } from '../design/schema.ts';
import { clockPoint } from '../measure/clock.ts';
import type { Outline } from '../shapes.ts';
import { arcCurves, circleCurves } from './arc-curves.ts';
import { FINGER_HOLES_ID, HAND_SLOTS_ID } from './no-element.ts';
import type { Layout } from './placed.ts';

/**
 * A gloved finger goes through a hole of so much, a gloved hand through a slot of so much; they do not shrink with the
 * plate. Common practice, no source.
 */
export const FINGER_HOLE_MM = 28;
const HAND_SLOT_MM = { long: 100, wide: 32 } as const;

/**
 * Openings to take the plate up by, evenly round its centre; slots lie along the rim, their ends half circles.
 * In: the wish, the plate's radius in mm. Out: shapes without extents, since nobody chooses them on the plate; the same
 * rules hold for them as for all openings.
 */
export function layLifting(lifting: Lifting, radiusMm: number): Layout {
  const holes = lifting.shape === 'holes';
  const elementId = holes ? FINGER_HOLES_ID : HAND_SLOTS_ID;
  const outline = holes ? circleCurves({ x: 0, y: 0 }, FINGER_HOLE_MM / 2, false) : slot();
  const shapes = Array.from({ length: lifting.count }, (_, i) => {
    const turnDeg = lifting.firstDeg + (i * 360) / lifting.count;
    return {
      id: `${elementId}/${i}`,
      elementId,
      label: holes ? 'finger hole' : 'hand slot',
      storeKey: `lifting|${lifting.shape}`,
      outline,
      placement: { ...clockPoint(lifting.at * radiusMm, turnDeg), turnDeg },
      word: i,
    };
  });
  return { shapes, extents: [], findings: [] };
}

function slot(): Outline {
  const { long, wide } = HAND_SLOT_MM;
  const half = (long - wide) / 2;
  const r = wide / 2;
  // Counter-clockwise from the top of the right end.
  return [
    { type: 'M', x: half, y: r },
    { type: 'L', x: -half, y: r },
    ...arcCurves({ x: -half, y: 0 }, r, 0, -180),
    { type: 'L', x: half, y: -r },
    ...arcCurves({ x: half, y: 0 }, r, 180, 0),
    { type: 'Z' },
  ];
}
