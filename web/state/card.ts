import { beginningOf } from '../../geometry/sentences/shorten.ts';

/** A small drawing of a plate: SVG path data in a box from -100 to 100, y down, filled even-odd. */
export interface CardPicture {
  readonly path: string;
}

/** What the list of own designs shows; the design itself lies beside it, as the text of a design file. */
export interface Card {
  readonly id: string;
  readonly title: string;
  /** When it was last changed, ms since 1970. */
  readonly changedMs: number;
  /** Goes up by one at each save. A save that names another one than is stored is refused. */
  readonly revision: number;
  /** When it was put into the bin; absent when it was not. */
  readonly binnedMs?: number;
  readonly picture?: CardPicture;
  /** The card or the text could not be made out: all that can be done is to save it as it is, or to delete it. */
  readonly damaged?: true;
}

/** Longest drawing that is taken from a store; what is longer is left out. */
const LONGEST_PICTURE = 60_000;

/** A card as it lay in the store; one that is not whole comes back as damaged, with what could be read of it. */
export function cardOf(value: unknown, id: string): Card {
  const raw = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>;
  const { title, changedMs, revision, binnedMs } = raw;
  const whole =
    typeof title === 'string' && isTime(changedMs) && typeof revision === 'number' && Number.isInteger(revision);
  const picture = pictureOf(raw['picture']);
  return {
    id,
    title: typeof title === 'string' ? beginningOf(title, 120) : '',
    changedMs: isTime(changedMs) ? changedMs : 0,
    revision: typeof revision === 'number' && Number.isInteger(revision) ? revision : 0,
    ...(isTime(binnedMs) ? { binnedMs } : {}),
    ...(picture ? { picture } : {}),
    ...(whole ? {} : { damaged: true }),
  };
}

function pictureOf(value: unknown): CardPicture | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { path } = value as Record<string, unknown>;
  return typeof path === 'string' && path.length <= LONGEST_PICTURE && /^[MLZ0-9 .-]*$/.test(path)
    ? { path }
    : undefined;
}

function isTime(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value) && value >= 0;
}
