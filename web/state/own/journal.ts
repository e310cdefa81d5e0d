import { inTime } from '../in-time.ts';
import { newId } from './new-id.ts';
import type { Shelf, Writing } from './shelf.ts';

/** One design as it was typed. */
export interface Typed extends Writing {
  /** When these letters were typed, an earlier text with this `changedMs` was on its way into the store. */
  readonly saving?: number | undefined;
}

/**
 * What was typed and is not in the store yet. Written while the letters are typed, since a tab that is closed or killed
 * has no time left to wait for a database.
 */
export interface Journal {
  /** Takes the place of what was noted of the same design. False where there is no room or no leave. */
  note(entry: Typed): boolean;
  /** It is in the store now. */
  forget(id: string): void;
  /** Newest first. */
  entries(): readonly Typed[];
}

const FAMILY = 'bridgehead-typed ';

/** storage: where localStorage is shut, undefined or throwing. */
export function createJournal(storage: () => Storage | undefined): Journal {
  function allowed<T>(work: (there: Storage) => T, otherwise: T): T {
    try {
      const there = storage();
      return there ? work(there) : otherwise;
    } catch {
      return otherwise;
    }
  }
  return {
    note: (entry) =>
      allowed((there) => {
        there.setItem(FAMILY + entry.id, JSON.stringify(entry));
        return true;
      }, false),
    forget: (id) => allowed((there) => there.removeItem(FAMILY + id), undefined),
    entries: () =>
      allowed((there) => {
        const keys = Array.from({ length: there.length }, (_, i) => there.key(i) ?? '');
        const texts = keys.filter((key) => key.startsWith(FAMILY)).map((key) => there.getItem(key) ?? '');
        return texts.flatMap(entryOf).sort((a, b) => b.changedMs - a.changedMs);
      }, []),
  };
}

/** Whatever else lies there is not ours. */
function entryOf(text: string): Typed[] {
  try {
    const { id, title, text: design, changedMs, after, saving } = JSON.parse(text) as Record<string, unknown>;
    return typeof id === 'string' &&
      typeof title === 'string' &&
      typeof design === 'string' &&
      typeof changedMs === 'number' &&
      (after === undefined || typeof after === 'number')
      ? [{ id, title, text: design, changedMs, after, ...(typeof saving === 'number' && { saving }) }]
      : [];
  } catch {
    return [];
  }
}

/** A page that is just being left lets go of its designs within this time. */
const PATIENCE_MS = 300;

/**
 * Brings what a tab left behind into the store. Whatever was stored meanwhile stays, and the typed text becomes a copy
 * beside it. An entry whose design another tab works on is that tab's; one that the store refuses waits.
 */
export async function takeUpJournal(journal: Journal, shelf: Shelf, locks: LockManager | undefined): Promise<void> {
  for (const entry of journal.entries()) {
    try {
      if (await isFree(locks, entry.id)) await takeUp(entry, journal, shelf);
    } catch {
      // it stays in the journal for the next visit
    }
  }
}

async function takeUp({ saving, ...entry }: Typed, journal: Journal, shelf: Shelf): Promise<void> {
  const stored = await shelf.read(entry.id);
  if (stored?.text !== entry.text) {
    // the text before these letters got through, but nobody was left to note it
    const goesOn = stored !== undefined && (stored.revision === entry.after || stored.changedMs === saving);
    const written = await shelf.write({ ...entry, after: goesOn ? stored.revision : undefined });
    if (written.kind === 'changed') await shelf.write({ ...entry, id: newId(), after: undefined });
  }
  journal.forget(entry.id);
}

/** A lock manager that says nothing keeps nobody from their own letters. */
async function isFree(locks: LockManager | undefined, id: string): Promise<boolean> {
  if (!locks) return true;
  const end = Date.now() + PATIENCE_MS;
  do {
    let free = false;
    const asked = locks.request(`bridgehead-design ${id}`, { ifAvailable: true }, (lock) => {
      free = lock !== null;
      return undefined;
    });
    await inTime(asked, PATIENCE_MS).catch(() => {
      free = true;
    });
    if (free) return true;
    await new Promise((resolve) => setTimeout(resolve, 50));
  } while (Date.now() < end);
  return false;
}
