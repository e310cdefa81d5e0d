import type { Design } from '../../geometry/design/schema.ts';
import { smallPicture } from '../state/own/small-picture.ts';
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
    const plate = await client.picture(design);
    if (plate !== undefined) made.set(design, smallPicture(plate).path);
    return made.get(design);
  });
  last = mine.catch(() => undefined);
  return mine;
}
