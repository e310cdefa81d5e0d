import type { PlateResult } from '../../../geometry/plate.ts';
import type { Ring } from '../../../geometry/shapes.ts';
import type { CardPicture } from './card.ts';

/** The picture's box goes from -100 to 100. */
const HALF = 100;
/** Points nearer than this to the one before are left out: on a card the whole plate is some 130 px wide. */
const LEAST_STEP = 0.7;
/** A plate of more than this keeps its largest openings only. */
const MOST_CHARACTERS = 40_000;

/** A small drawing of what is cut from a plate, for the list of own designs. */
export function smallPicture(plate: PlateResult): CardPicture {
  const scale = HALF / Math.max(plate.diameterMm / 2, 1e-9);
  const rings = plate.openings.flatMap((o) => [o.region.outer, ...o.region.holes]);
  const drawn = rings.map((ring) => ringPath(ring, scale)).filter((path) => path !== '');
  let path = '';
  for (const part of drawn.sort((a, b) => b.length - a.length)) {
    if (path.length + part.length <= MOST_CHARACTERS) path += part;
  }
  return { path };
}

/** y up in the plate's frame, down on the screen. Empty for what is too small to be seen. */
function ringPath(ring: Ring, scale: number): string {
  const kept: string[] = [];
  let [lastX, lastY] = [Infinity, Infinity];
  for (const p of ring) {
    const [x, y] = [p.x * scale, -p.y * scale];
    if (Math.hypot(x - lastX, y - lastY) < LEAST_STEP) continue;
    kept.push(`${x.toFixed(1)} ${y.toFixed(1)}`);
    [lastX, lastY] = [x, y];
  }
  return kept.length < 3 ? '' : `M${kept.join('L')}Z`;
}
