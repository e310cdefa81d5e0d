/** The few things the saver asks of a browser's store; idb-keyval's functions in the page, a fake in tests. */
export interface Keep {
  get(key: string): Promise<unknown>;
  set(key: string, value: unknown): Promise<void>;
}

/** full: no room left. shut: the browser keeps nothing (private window, storage switched off). */
export type SavingState = 'saved' | 'saving' | 'full' | 'shut';

export interface Saver {
  /** Saves soon; a later call takes the place of an earlier one. */
  schedule(text: string): void;
  /** Saves at once whatever waits: the page is being left. */
  flush(): Promise<void>;
}

const DESIGN_KEY = 'design';
const ASIDE_KEY = 'design-set-aside';
const SAVE_DELAY_MS = 250;

/** Saves the newest text a moment after the last change; says how it went, never throws. */
export function createSaver(keep: Keep, tell: (state: SavingState) => void): Saver {
  let waiting: string | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let chain: Promise<void> = Promise.resolve();

  function saveNow(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    // one write after the other, so that an older text never lands on a newer one
    chain = chain.then(async () => {
      if (waiting === undefined) return;
      const text = waiting;
      waiting = undefined;
      try {
        await keep.set(DESIGN_KEY, text);
        if (waiting === undefined) tell('saved');
      } catch (fault) {
        tell(isFull(fault) ? 'full' : 'shut');
      }
    });
    return chain;
  }

  return {
    schedule(text) {
      waiting = text;
      tell('saving');
      clearTimeout(timer);
      timer = setTimeout(() => void saveNow(), SAVE_DELAY_MS);
    },
    flush: saveNow,
  };
}

/** What was saved last; undefined when there is nothing or the browser keeps nothing. */
export async function readSaved(keep: Keep): Promise<string | undefined> {
  try {
    const value = await keep.get(DESIGN_KEY);
    return typeof value === 'string' ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a saved text that could not be read, so that the next save does not write over it. True when it is safe. */
export async function setAside(keep: Keep, text: string): Promise<boolean> {
  try {
    const before = await keep.get(ASIDE_KEY);
    const list = Array.isArray(before) ? before.filter((t): t is string => typeof t === 'string') : [];
    if (!list.includes(text)) await keep.set(ASIDE_KEY, [...list, text]);
    return true;
  } catch {
    return false;
  }
}

/** The texts set aside, oldest first. */
export async function readAside(keep: Keep): Promise<readonly string[]> {
  try {
    const list = await keep.get(ASIDE_KEY);
    return Array.isArray(list) ? list.filter((t): t is string => typeof t === 'string') : [];
  } catch {
    return [];
  }
}

function isFull(fault: unknown): boolean {
  return fault instanceof Error && fault.name === 'QuotaExceededError';
}
