import { headDiameter } from '../barrel/blank.ts';
import { crownGapMm } from '../barrel/crown.ts';
import type { Finding } from '../findings.ts';
import { inMm, said, say } from '../words/say.ts';
import type { CheckInput } from './input.ts';

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
  return [
    {
      code: 'crown-gap',
      severity: look ? 'look' : 'note',
      place: { kind: 'plate' },
      elementIds: [],
      measuredMm: gapMm,
      limitMm: look ? LOOK_GAP_MM : NOTE_GAP_MM,
      ...said('findings.crownGap', {
        form: say(crown > 0 ? 'names.bulges' : 'names.hollow'),
        crown: inMm(Math.abs(crown)),
        gap: inMm(gapMm),
        where: say(crown > 0 ? 'names.atEdge' : 'names.inMiddle'),
        advice: say(design.stock.use === 'paint' ? 'names.paintCreeps' : 'names.burntEdge'),
      }),
    },
  ];
}
