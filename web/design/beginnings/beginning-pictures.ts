import type { Design } from '../../../geometry/design/schema.ts';
import { smallPicture } from '../../state/own/small-picture.ts';
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
      if (plate !== undefined) made.set(design, smallPicture(plate).path);
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
