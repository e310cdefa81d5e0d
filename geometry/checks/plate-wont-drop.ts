import { headDiameter, DIAMETER_STEP_MM } from '../barrel/blank.ts';
import type { Finding } from '../findings.ts';
import type { CheckInput } from './input.ts';
import { inMm } from './words.ts';

/** A plate that does not drop inside the chime, or only without the clearance that was asked for. */
export function checkPlateWontDrop({ design, plate, diameterMm }: CheckInput): Finding[] {
  const { smallerMm } = headDiameter(design.head);
  if (smallerMm <= 0) return [];
  const fittingMm = smallerMm - 2 * design.head.clearanceMm;
  if (diameterMm <= fittingMm + DIAMETER_STEP_MM) return [];
  const stuck = diameterMm > smallerMm;
  return [
    {
      code: 'plate-wont-drop',
      severity: stuck ? 'stop' : 'look',
      place: { kind: 'plate' },
      elementIds: [],
      measuredMm: diameterMm,
      limitMm: stuck ? smallerMm : fittingMm,
      sentence: stuck
        ? `The plate of ${inMm(diameterMm)} will not drop inside the chime: the head measures ${inMm(smallerMm)}. Make the plate smaller.`
        : `The plate of ${inMm(diameterMm)} leaves ${inMm((smallerMm - diameterMm) / 2)} on each side of a head of ${inMm(smallerMm)}; you asked for ${inMm(design.head.clearanceMm)}.`,
      mend: {
        label: 'Make it fit the head',
        change: { kind: 'set-plate-diameter', plateId: plate.id, diameter: 'fit' },
      },
    },
  ];
}
