import { oversprayOf } from '../barrel/overspray.ts';
import type { Finding } from '../findings.ts';
import { amount, inMm, labelled, said } from '../sentences/say.ts';
import { aboutPlate } from './about-plate.ts';
import type { CheckInput } from './input.ts';

/** Spray wanders about so far past the edge of a plate that a hand follows round: common practice, no source. */
const STRAY_MM = 40;

/** A plate that leaves a broad ring of the head open to stray paint, and no ring to keep it clean. */
export function checkOverspray({ design, plate, diameterMm }: CheckInput): Finding[] {
  const free = oversprayOf(design, diameterMm);
  if (!free || free.ringMm <= STRAY_MM || design.stock.use !== 'paint' || plate.masks !== undefined) return [];
  if (design.plates.some((p) => p.masks === plate.id)) return [];
  return [
    {
      ...aboutPlate('overspray', 'note', free.ringMm, STRAY_MM),
      ...said('findings.overspray', { ring: inMm(free.ringMm, 0), percent: amount(100 * free.share) }),
      mend: { ...labelled('mends.maskRing'), change: { kind: 'add-mask-ring', plateId: plate.id } },
    },
  ];
}
