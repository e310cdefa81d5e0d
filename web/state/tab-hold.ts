import { inTime } from './in-time.ts';

/** Says which of several tabs works on a design. A tab holds at most one design. */
export interface TabHold {
  /** Holds a design in place of the one before. False when another tab has it; then none is held. */
  take(id: string): Promise<boolean>;
  /** Asks the tab that has it to save and let go, and holds it then, even when that tab does not answer. */
  takeOver(id: string): Promise<void>;
  letGo(): void;
}

export interface HoldHooks {
  /** Another tab asks for what this one holds: saves what is not saved yet. */
  beforeLosing(id: string): Promise<void>;
  /** This tab no longer holds the design. */
  lost(id: string): void;
}

/** The parts of the browser that are used; the lock manager is missing where a page is served without encryption. */
export interface HoldParts {
  readonly locks: LockManager | undefined;
  readonly channel: BroadcastChannel | undefined;
}

/** What tabs say to each other. */
type Word =
  | { readonly say: 'let-go'; readonly id: string; readonly from: string }
  | { readonly say: 'gone'; readonly id: string; readonly from: string }
  | { readonly say: 'who-has'; readonly id: string; readonly from: string }
  | { readonly say: 'i-have'; readonly id: string; readonly from: string };

/** Time for a page that is just being left to let go, and for tabs to answer. */
const SHORT_WAIT_MS = 300;
/** A tab that sleeps or hangs does not answer: after this the design is taken without it. */
const LONG_WAIT_MS = 1500;

export function createTabHold({ locks, channel }: HoldParts, hooks: HoldHooks, me: string): TabHold {
  let held: { readonly id: string; readonly free: () => void } | undefined;
  const listeners = new Set<(word: Word) => void>();

  channel?.addEventListener('message', (event: MessageEvent<unknown>) => {
    const word = event.data as Word;
    listeners.forEach((listen) => listen(word));
    if (word.from === me || held?.id !== word.id) return;
    if (word.say === 'who-has') channel.postMessage({ say: 'i-have', id: word.id, from: me } satisfies Word);
    if (word.say === 'let-go') void giveUp(word.id);
  });

  async function giveUp(id: string): Promise<void> {
    await hooks.beforeLosing(id);
    if (held?.id !== id) return;
    letGo();
    channel?.postMessage({ say: 'gone', id, from: me } satisfies Word);
    hooks.lost(id);
  }

  function letGo(): void {
    held?.free();
    held = undefined;
  }

  function hold(id: string, free: () => void): void {
    letGo();
    held = { id, free };
  }

  /** Waits for the lock as options say; resolves with whether it was granted. It is kept until it is freed. */
  function lock(manager: LockManager, id: string, options: LockOptions): Promise<boolean> {
    return new Promise((resolve) => {
      let granted = false;
      manager
        .request(`bridgehead-design ${id}`, options, (given) => {
          if (given === null) return resolve(false);
          granted = true;
          return new Promise<void>((free) => {
            hold(id, free);
            resolve(true);
          });
        })
        .catch(() => {
          resolve(false);
          // another tab took it without waiting
          if (granted && held?.id === id) {
            held = undefined;
            hooks.lost(id);
          }
        });
    });
  }

  /** True when such a word comes in time. */
  function hears(say: Word['say'], id: string, ms: number): Promise<boolean> {
    return new Promise((resolve) => {
      const end = (heard: boolean): void => {
        clearTimeout(timer);
        listeners.delete(listen);
        resolve(heard);
      };
      const listen = (word: Word): void => {
        if (word.say === say && word.id === id && word.from !== me) end(true);
      };
      const timer = setTimeout(() => end(false), ms);
      listeners.add(listen);
    });
  }

  return {
    letGo,
    async take(id) {
      if (held?.id === id) return true;
      letGo();
      if (locks) {
        const mine = await inTime(
          lock(locks, id, { ifAvailable: true }).then(
            (free) => free || lock(locks, id, { signal: AbortSignal.timeout(SHORT_WAIT_MS) }),
          ),
          LONG_WAIT_MS,
        ).catch(() => undefined);
        if (mine !== undefined) return mine;
        // a lock manager that does not answer keeps nobody from working: revisions are compared at each save
        hold(id, () => undefined);
        return true;
      }
      if (channel) {
        channel.postMessage({ say: 'who-has', id, from: me } satisfies Word);
        if (await hears('i-have', id, SHORT_WAIT_MS)) return false;
      }
      // without either of the two only the comparison of revisions at each save keeps tabs apart
      hold(id, () => undefined);
      return true;
    },
    async takeOver(id) {
      channel?.postMessage({ say: 'let-go', id, from: me } satisfies Word);
      if (locks) {
        const waited = lock(locks, id, { signal: AbortSignal.timeout(LONG_WAIT_MS) });
        if (await inTime(waited, 2 * LONG_WAIT_MS).catch(() => false)) return;
        await inTime(lock(locks, id, { steal: true }), LONG_WAIT_MS).catch(() => hold(id, () => undefined));
        return;
      }
      if (channel) await hears('gone', id, LONG_WAIT_MS);
      hold(id, () => undefined);
    },
  };
}
