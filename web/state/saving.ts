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
/** Room may be made elsewhere, and a database may wake up: how long after each failure it is tried again. */
const TRY_AGAIN_MS = [5000, 15_000, 60_000];

/**
 * Calls save a moment after the first change that is not saved; says how it went, never throws. save stores what is
 * newest when it is called, and is never called twice at the same time. What failed is tried again at the next change
 * or flush, and after a while by itself.
 */
export function createSaver(save: () => Promise<void>, tell: (state: SavingState) => void): Saver {
  let dirty = false;
  let failures = 0;
  /** The timer waits long, after a failure: a change does not wait for it. */
  let retrying = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let chain: Promise<void> = Promise.resolve();

  function clearTimer(): void {
    clearTimeout(timer);
    timer = undefined;
    retrying = false;
  }

  function saveNow(): Promise<void> {
    clearTimer();
    // one write after the other, so that an older text never lands on a newer one
    chain = chain.then(async () => {
      if (!dirty) return;
      dirty = false;
      try {
        await save();
        failures = 0;
        if (!dirty) tell('saved');
      } catch (fault) {
        dirty = true;
        tell(isFull(fault) ? 'full' : 'shut');
        if (timer === undefined) {
          timer = setTimeout(() => void saveNow(), TRY_AGAIN_MS[Math.min(failures++, TRY_AGAIN_MS.length - 1)]);
          retrying = true;
        }
      }
    });
    return chain;
  }

  return {
    schedule() {
      dirty = true;
      tell('saving');
      if (retrying) clearTimer();
      // not put off by later changes: somebody who types without a pause is saved all the same
      timer ??= setTimeout(() => void saveNow(), SAVE_DELAY_MS);
    },
    flush: saveNow,
  };
}

export function isFull(fault: unknown): boolean {
  return fault instanceof Error && fault.name === 'QuotaExceededError';
}
