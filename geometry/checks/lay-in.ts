import { FINGER_REACH_MM, FINGER_ROOM_MM, fingerRoom } from '../barrel/finger-room.ts';
import { headRecess } from '../barrel/recess.ts';
import type { Finding } from '../findings.ts';
import { FINGER_HOLES_ID, HAND_SLOTS_ID } from '../layout/no-element.ts';
import { inMm, labelled, said } from '../sentences/say.ts';
import { aboutPlate } from './about-plate.ts';
import type { CheckInput } from './input.ts';
import { placeLifting } from './place-lifting.ts';
import { callElement } from './words.ts';

/** Whether the plate can be laid into the head and taken out again; what its openings to lift it by leave behind. */
export function checkLayIn(input: CheckInput): Finding[] {
  const { design, diameterMm, openings } = input;
  const findings: Finding[] = [];
  const lifting = [FINGER_HOLES_ID, HAND_SLOTS_ID].find((id) => openings.some((o) => o.elementIds.includes(id)));
  const room = fingerRoom(design, diameterMm);
  if (lifting !== undefined) {
    const what = callElement(design.elements, lifting);
    findings.push({
      ...aboutPlate('lifting-marks', 'note'),
      elementIds: [lifting],
      ...said('findings.liftingMarks', { what }),
    });
  } else if (room && room.roomMm >= 0 && (room.tight || room.deep) && input.plate.masks === undefined) {
    const [measuredMm, limitMm] = room.tight ? [room.roomMm, FINGER_ROOM_MM] : [room.recessMm, FINGER_REACH_MM];
    findings.push({
      ...aboutPlate('no-finger-room', 'note', measuredMm, limitMm),
      ...(room.tight
        ? said('findings.noFingerRoom', { left: inMm(room.roomMm), need: inMm(FINGER_ROOM_MM) })
        : said('findings.tooDeep', { recess: inMm(room.recessMm), reach: inMm(FINGER_REACH_MM) })),
      ...offerHoles(input),
    });
  }
  if (room) findings.push(...checkStandsProud(input));
  return findings;
}

/** Nothing is offered where the lettering leaves no room for holes. */
function offerHoles(input: CheckInput): Pick<Finding, 'mend'> {
  const lifting = placeLifting(input);
  if (!lifting) return {};
  return { mend: { ...labelled('mends.fingerHoles'), change: { kind: 'set-lifting', lifting } } };
}

/** A plate whose edge, or whose middle on a bulging head, comes out above the staves' ends is not kept by them. */
function checkStandsProud({ design }: CheckInput): Finding[] {
  const { mm: recessMm, measured } = headRecess(design.head);
  const highMm = design.stock.thicknessMm + Math.max(0, design.head.crownMm);
  if (highMm <= recessMm) return [];
  return [
    {
      ...aboutPlate('stands-proud', measured ? 'look' : 'note', highMm, recessMm),
      ...said('findings.standsProud', { over: inMm(highMm - recessMm), recess: inMm(recessMm) }),
    },
  ];
}
