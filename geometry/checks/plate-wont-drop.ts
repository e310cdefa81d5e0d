import { headDiameter, DIAMETER_STEP_MM } from '../barrel/blank.ts';
import type { Finding } from '../findings.ts';
import { inMm, labelled, said } from '../sentences/say.ts';
import { aboutPlate } from './about-plate.ts';
import type { CheckInput } from './input.ts';

/** A plate that does not drop inside the chime, or only without the clearance that was asked for. */
export function checkPlateWontDrop({ design, plate, diameterMm }: CheckInput): Finding[] {
  const { smallerMm } = headDiameter(design.head);
  if (smallerMm <= 0 || design.surface !== 'head') return [];
  const fittingMm = smallerMm - 2 * design.head.clearanceMm;
  if (diameterMm <= fittingMm + DIAMETER_STEP_MM) return [];
  const stuck = diameterMm > smallerMm;
  return [
    {
      ...aboutPlate('plate-wont-drop', stuck ? 'stop' : 'look', diameterMm, stuck ? smallerMm : fittingMm),
      ...(stuck
        ? said('findings.plateWontDrop', { size: inMm(diameterMm), head: inMm(smallerMm) })
        : said('findings.plateTight', {
            size: inMm(diameterMm),
            left: inMm((smallerMm - diameterMm) / 2),
            head: inMm(smallerMm),
            asked: inMm(design.head.clearanceMm),
          })),
      mend: {
        ...labelled('mends.fitHead'),
        change: { kind: 'set-plate-diameter', plateId: plate.id, diameter: 'fit' },
      },
    },
  ];
}
