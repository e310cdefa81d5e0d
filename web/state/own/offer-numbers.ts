import { offerNumber } from '../../../geometry/approval/offer.ts';

const KEY = 'bridgehead-offers';
/** Without signs that are taken for others when read aloud or off paper: five make 33 million desks. */
const SIGNS = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const DESK_SIGNS = 5;

interface Desk {
  readonly mark: string;
  readonly count: number;
}

export interface OfferNumberParts {
  /** Where the desk's mark and counter are kept; shut, undefined or throwing: each number has a mark of its own. */
  readonly storage: () => Storage | undefined;
  /** One tab at a time; absent in old browsers, where a mark of its own keeps two tabs apart. */
  readonly locks: Pick<LockManager, 'request'> | undefined;
  readonly random: (count: number) => Uint8Array;
}

/** The next number of an offer made on this day (ISO 8601): no other tab, browser or desk gives it too. */
export async function nextOfferNumber(day: string, { storage, locks, random }: OfferNumberParts): Promise<string> {
  const freshMark = (): string => Array.from(random(DESK_SIGNS), (byte) => SIGNS[byte % SIGNS.length]).join('');
  const take = (): string => {
    try {
      const there = locks && storage();
      const kept = there && readDesk(there.getItem(KEY));
      const desk: Desk = { mark: kept?.mark ?? freshMark(), count: (kept?.count ?? 0) + 1 };
      there?.setItem(KEY, JSON.stringify(desk));
      return offerNumber(day, desk.mark, desk.count);
    } catch {
      return offerNumber(day, freshMark(), 1);
    }
  };
  return locks ? locks.request(KEY, take) : take();
}

/** Whatever else lies there is not ours. */
function readDesk(text: string | null): Desk | undefined {
  try {
    const { mark, count } = JSON.parse(text ?? '') as Record<string, unknown>;
    const isOurs = typeof mark === 'string' && mark.length === DESK_SIGNS && Number.isSafeInteger(count);
    return isOurs ? { mark, count: count as number } : undefined;
  } catch {
    return undefined;
  }
}
