import { del, get } from 'idb-keyval';
import { inTime } from '../in-time.ts';
import type { OldKeep } from './take-over-old.ts';

/** The page waits for this before it shows anything. */
const LONGEST_WAIT_MS = 1500;

/** Where earlier versions kept their one design. */
export const OLD_KEEP: OldKeep = {
  get: (key) => inTime(get(key), LONGEST_WAIT_MS),
  del: (key) => inTime(del(key), LONGEST_WAIT_MS),
};
