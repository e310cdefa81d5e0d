import { get, set } from 'idb-keyval';
import type { Keep } from './saving.ts';

/** The browser's own store, IndexedDB. */
export const BROWSER_KEEP: Keep = { get: (key) => get(key), set: (key, value) => set(key, value) };
