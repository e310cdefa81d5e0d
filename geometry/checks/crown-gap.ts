import { gapAtOpenings, greatestGap } from '../barrel/gap-at-openings.ts';
import type { Finding } from '../findings.ts';
import { inMm, said, say } from '../sentences/say.ts';
import type { CheckInput } from './input.ts';
import { callElement } from './words.ts';

/** Gaps from which paint creeps under, and from which it surely does. Common practice, no source. */
const NOTE_GAP_MM = 0.5;
const LOOK_GAP_MM = 3;

/**
 * A flat plate on a crowned head, or a rolled one on the belly of a barrel, does not lie close everywhere: where it
 * stands farthest off the wood at an opening, paint bleeds under it. One finding, at that place.
 */
export function checkCrownGap({ design, plate, diameterMm, lying, openings }: CheckInput): Finding[] {
  if ('problem' in lying || plate.masks !== undefined) return [];
  const { surface } = lying;
  if (surface.kind === 'head' && surface.crownMm === 0) return [];
  const greatest = greatestGap(gapAtOpenings(openings, surface));
  if (!greatest || greatest.gapMm < NOTE_GAP_MM) return [];
  const look = greatest.gapMm >= LOOK_GAP_MM;
  const elementIds = openings[greatest.opening]?.elementIds ?? [];
  const paint = design.stock.use === 'paint';
  const values = {
    gap: inMm(greatest.gapMm),
    what: callElement(design.elements, elementIds[0] ?? ''),
    advice: paint ? say('names.paintCreeps', { bleed: inMm(greatest.bleedMm) }) : say('names.burntEdge'),
  };
  const crown = surface.kind === 'head' ? surface.crownMm : 0;
  return [
    {
      code: surface.kind === 'head' ? 'crown-gap' : 'stave-gap',
      severity: look ? 'look' : 'note',
      place: { kind: 'point', at: greatest.at, radiusMm: Math.max(5, diameterMm / 60) },
      elementIds,
      measuredMm: greatest.gapMm,
      limitMm: look ? LOOK_GAP_MM : NOTE_GAP_MM,
      ...(surface.kind === 'head'
        ? said('findings.crownGap', {
            ...values,
            form: say(crown > 0 ? 'names.bulges' : 'names.hollow'),
            crown: inMm(Math.abs(crown)),
          })
        : said('findings.staveGap', values)),
    },
  ];
}
