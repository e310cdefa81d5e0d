/** full: no room left. shut: the browser keeps nothing (private window, storage switched off). */
export type SavingState = 'saved' | 'saving' | 'full' | 'shut';

export interface Saver {
  /** Something changed: saves soon, however many more changes come meanwhile. */
  schedule(): void;
  /** Saves at once whatever waits: the page is being left. */
  flush(): Promise<void>;
}

/** A killed tab loses no more than this and the time of one write. */
const SAVE_DELAY_MS = 200;

/**
 * Calls save a moment after the first change that is not saved; says how it went, never throws. save stores what is
 * newest when it is called, and is never called twice at the same time. What failed is tried again at the next change
 * or flush.
 */
export function createSaver(save: () => Promise<void>, tell: (state: SavingState) => void): Saver {
  let dirty = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let chain: Promise<void> = Promise.resolve();

  function saveNow(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    // one write after the other, so that an older text never lands on a newer one
    chain = chain.then(async () => {
      if (!dirty) return;
      dirty = false;
      try {
        await save();
        if (!dirty) tell('saved');
      } catch (fault) {
        dirty = true;
        tell(isFull(fault) ? 'full' : 'shut');
      }
    });
    return chain;
  }

  return {
    schedule() {
      dirty = true;
      tell('saving');
      // not put off by later changes: somebody who types without a pause is saved all the same
      timer ??= setTimeout(() => void saveNow(), SAVE_DELAY_MS);
    },
    flush: saveNow,
  };
}

export function isFull(fault: unknown): boolean {
  return fault instanceof Error && fault.name === 'QuotaExceededError';
}
