import { headDiameter } from '../barrel/blank.ts';
import { crownGapMm } from '../barrel/crown.ts';
import type { Finding } from '../findings.ts';
import type { CheckInput } from './input.ts';
import { inMm } from './words.ts';

/** Gaps from which paint creeps under, and from which it surely does. Common practice, no source. */
const NOTE_GAP_MM = 0.5;
const LOOK_GAP_MM = 3;

/** A flat plate on a crowned head does not lie close: paint bleeds under it. */
export function checkCrownGap({ design, diameterMm }: CheckInput): Finding[] {
  const { smallerMm } = headDiameter(design.head);
  if (smallerMm <= 0) return [];
  const crown = design.head.crownMm;
  const gapMm = crownGapMm(smallerMm, crown, diameterMm);
  if (gapMm < NOTE_GAP_MM) return [];
  const look = gapMm >= LOOK_GAP_MM;
  const where = crown > 0 ? 'at its edge' : 'in the middle';
  const paint = design.stock.use === 'paint';
  const advice = paint
    ? 'Paint creeps under there: hold the plate down with magnets or weights, and spray light coats straight on.'
    : 'The burnt edge is soft there: hold the plate down with weights.';
  return [
    {
      code: 'crown-gap',
      severity: look ? 'look' : 'note',
      place: { kind: 'plate' },
      elementIds: [],
      measuredMm: gapMm,
      limitMm: look ? LOOK_GAP_MM : NOTE_GAP_MM,
      sentence: `The head ${crown > 0 ? 'bulges' : 'is hollow'} by ${inMm(Math.abs(crown))}, so a flat plate stands off the wood by ${inMm(gapMm)} ${where}. ${advice}`,
    },
  ];
}
