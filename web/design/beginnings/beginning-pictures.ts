import type { Design } from '../../../geometry/design/schema.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Ring } from '../../../geometry/shapes.ts';
import type { PlateClient } from '../../worker/plate-client.ts';
import { BEGINNINGS } from './beginnings.ts';

/** The beginnings never change, so their pictures are made once a visit. */
const made = new Map<Design, string>();

interface Wish {
  readonly design: Design;
  readonly unwanted: () => boolean;
  readonly tell: (path: string | undefined) => void;
}

let waiting: Wish[] = [];
let running = false;

/** The picture of a beginning's plate, as path data in a box from -100 to 100, if it has been made. */
export function pictureOf(design: Design): string | undefined {
  return made.get(design);
}

/**
 * Makes it by the same worker as the plate itself, one after the other as they are offered, and each only when the
 * page's own work is done, so that a keystroke waits for one picture at most. Whoever no longer wants it says so.
 */
export function pictureWhenIdle(
  client: PlateClient,
  design: Design,
  unwanted: () => boolean,
): Promise<string | undefined> {
  return new Promise((tell) => {
    waiting.push({ design, unwanted, tell });
    if (!running) void run(client);
  });
}

async function run(client: PlateClient): Promise<void> {
  running = true;
  // all that come into sight at once are there before the first is taken, whatever order the browser tells them in
  await new Promise((go) => setTimeout(go, 50));
  for (let wish = next(); wish !== undefined; wish = next()) {
    const { design } = wish;
    if (!wish.unwanted() && !made.has(design)) {
      // the smallest plate has the fewest bridges to find and looks the same at this size
      const plate = await client.picture({ ...design, plates: design.plates.slice(-1) });
      if (plate !== undefined) made.set(design, platePath(plate));
    }
    wish.tell(made.get(design));
  }
  running = false;
}

function next(): Wish | undefined {
  const order = (wish: Wish): number => BEGINNINGS.indexOf(wish.design);
  const [first, ...rest] = waiting.sort((a, b) => order(a) - order(b));
  waiting = rest;
  return first;
}

/** The picture's box goes from -100 to 100. */
const HALF = 100;
/** Points nearer than this to the one before are left out: a card is some 160 px wide. */
const LEAST_STEP = 0.35;

function platePath(plate: PlateResult): string {
  const scale = HALF / (plate.diameterMm / 2);
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
