import type { Design } from '../../geometry/design/schema.ts';
import type { PlateResult } from '../../geometry/plate.ts';
import type { Ring } from '../../geometry/shapes.ts';
import type { PlateClient } from '../worker/plate-client.ts';

/** The beginnings never change, so their pictures are made once a visit. */
const made = new Map<Design, string>();
let last: Promise<unknown> = Promise.resolve();

/** The picture of a beginning's plate, as path data in a box from -100 to 100, if it has been made. */
export function pictureOf(design: Design): string | undefined {
  return made.get(design);
}

/**
 * Makes it by the same worker as the plate itself, one after the other and each only when the page's own work is done,
 * so that a keystroke waits for one picture at most. Whoever no longer wants it by then says so.
 */
export function pictureWhenIdle(
  client: PlateClient,
  design: Design,
  unwanted: () => boolean,
): Promise<string | undefined> {
  const mine = last.then(async () => {
    if (unwanted() || made.has(design)) return made.get(design);
    // the smallest plate has the fewest bridges to find and looks the same at this size
    const plate = await client.picture({ ...design, plates: design.plates.slice(-1) });
    if (plate !== undefined) made.set(design, platePath(plate));
    return made.get(design);
  });
  last = mine.catch(() => undefined);
  return mine;
}

/** The picture's box goes from -100 to 100. */
const HALF = 100;
/** Points nearer than this to the one before are left out: a card is some 160 px wide. */
const LEAST_STEP = 0.35;

function platePath(plate: PlateResult): string {
  const scale = HALF / Math.max(plate.diameterMm / 2, 1e-9);
  return plate.openings
    .flatMap((o) => [o.region.outer, ...o.region.holes])
    .map((ring) => ringPath(ring, scale))
    .join('');
}

/** y up in the plate's frame, down on the screen. */
function ringPath(ring: Ring, scale: number): string {
  const kept: string[] = [];
  let [lastX, lastY] = [Infinity, Infinity];
  for (const p of ring) {
    const [x, y] = [p.x * scale, -p.y * scale];
    if (Math.hypot(x - lastX, y - lastY) < LEAST_STEP) continue;
    kept.push(`${x.toFixed(1)} ${y.toFixed(1)}`);
    [lastX, lastY] = [x, y];
  }
  return `M${kept.join('L')}Z`;
}
