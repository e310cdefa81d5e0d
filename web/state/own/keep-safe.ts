import type { Card } from '../card.ts';

/** Designs that lie in one browser only, for so long, are worth a reminder; it comes no more often than weekly. */
const WEEKS_WITHOUT = 4;
const WEEK_MS = 7 * 86_400_000;
const SAVED_KEY = 'bridgehead-all-saved';
const REMINDED_KEY = 'bridgehead-reminded';

/** When all designs were last saved as one file; undefined: never, or it is not known. */
export function lastSavedAllMs(storage: Storage): number | undefined {
  return timeIn(storage, SAVED_KEY);
}

export function noteSavedAll(storage: Storage, nowMs: number): void {
  storage.setItem(SAVED_KEY, String(nowMs));
}

/** Whether to remind now; then it is noted that it was done. cards: those that are not in the bin. */
export function remindsNow(storage: Storage, cards: readonly Card[], nowMs: number): boolean {
  const changed = cards.map(({ changedMs }) => changedMs).filter((ms) => ms > 0);
  if (changed.length < 2) return false;
  const since = Math.max(lastSavedAllMs(storage) ?? 0, Math.min(...changed));
  const reminded = timeIn(storage, REMINDED_KEY) ?? 0;
  if (nowMs - since < WEEKS_WITHOUT * WEEK_MS || Math.abs(nowMs - reminded) < WEEK_MS) return false;
  storage.setItem(REMINDED_KEY, String(nowMs));
  return true;
}

function timeIn(storage: Storage, key: string): number | undefined {
  const ms = Number(storage.getItem(key) ?? NaN);
  return Number.isFinite(ms) && ms > 0 ? ms : undefined;
}
