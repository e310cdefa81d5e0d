import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { thinRing } from '../../../geometry/measure/thin-ring.ts';
import type { Ring } from '../../../geometry/shapes.ts';
import type { CardPicture } from '../card.ts';

/** The picture's box goes from -100 to 100. */
const HALF = 100;
/** A point is left out where the line without it runs no farther off than this: a card's plate is some 130 px wide. */
const MOST_OFF = 0.3;
/** What is smaller than this across can't be seen there. */
const LEAST_ACROSS = 0.8;
/** A plate of more than this keeps its largest openings only. */
const MOST_CHARACTERS = 58_000;

/** A small drawing of what is cut from a plate, for the list of own designs. */
export function smallPicture(plate: PlateResult): CardPicture {
  const scale = HALF / (plate.diameterMm / 2);
  const rings = plate.openings.flatMap((o) => [o.region.outer, ...o.region.holes]);
  const drawn = rings
    .map((ring) => ring.map((p) => ({ x: p.x * scale, y: -p.y * scale })))
    .map((ring) => ({ ring, across: across(ring) }))
    .filter((one) => one.across >= LEAST_ACROSS)
    .sort((p, q) => q.across - p.across);
  let path = '';
  for (const { ring } of drawn) {
    const part = ringPath(ring);
    if (path.length + part.length <= MOST_CHARACTERS) path += part;
  }
  return { path };
}

/** y up in the plate's frame, down on the screen. */
function ringPath(ring: Ring): string {
  const kept = thinRing(ring, MOST_OFF);
  return `M${kept.map((p) => `${p.x.toFixed(1)} ${p.y.toFixed(1)}`).join('L')}Z`;
}

function across(ring: Ring): number {
  const [xs, ys] = [ring.map((p) => p.x), ring.map((p) => p.y)];
  return Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}
