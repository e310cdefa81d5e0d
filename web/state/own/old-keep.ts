import { del, get } from 'idb-keyval';
import type { OldKeep } from './take-over-old.ts';

/** Where earlier versions kept their one design. */
export const OLD_KEEP: OldKeep = { get: (key) => get(key), del: (key) => del(key) };
