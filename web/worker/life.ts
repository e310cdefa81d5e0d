import { wrap } from 'comlink';
import { BEAT, type Beat } from './beat.ts';

/**
 * missing: its script did not come. broken: it died, or sent what cannot be read. silent: it gave no sign of work for
 * too long. stale: what it worked on is no longer wanted.
 */
export type WhyGone = 'missing' | 'broken' | 'silent' | 'stale';

/** A worker was ended, and with it all that it was asked. */
export class WorkerGone extends Error {
  readonly why: WhyGone;
  /** The element it was at, when it said so. */
  readonly at: string | undefined;
  constructor(why: WhyGone, at?: string) {
    super(`the worker is gone: ${why}`);
    this.why = why;
    this.at = at;
  }
}

export interface Patience {
  /** For a script to come and begin, s. */
  readonly firstS: number;
  /** For work without a beat, s. */
  readonly silentS: number;
  /** For a worker that waits for something and does no work, s. */
  readonly idleS: number;
}

const USUAL: Patience = { firstS: 20, silentS: 30, idleS: 90 };
const TICK_S = 0.5;

export interface Life<Api> {
  /** Asks the worker, which is begun when it is needed. Rejects with WorkerGone when it is ended meanwhile. */
  ask<T>(question: (api: Api) => Promise<T>): Promise<T>;
  /** Ends it now; the next question begins another. */
  end(why: WhyGone): void;
  /** Seconds without a sign of life from a worker that was asked something; 0 when none is, or it has not come yet. */
  silentS(): number;
}

interface Running<Api> {
  readonly worker: Worker;
  readonly api: Api;
  readonly gone: Promise<never>;
  readonly fail: (why: WhyGone) => void;
  asked: number;
  begun: boolean;
  /** Ticks since the last sign of life, and since the last of work: a machine that sleeps does not tick. */
  silent: number;
  idle: number;
  at: string | undefined;
  timer: ReturnType<typeof setInterval> | undefined;
}

/**
 * A worker that may die, hang or never come: what waits for it is told, and the next question goes to another. Whether
 * it hangs is judged by its beats (beat.ts), so that long work on a slow machine is no hanging.
 */
export function createLife<Api>(open: () => Worker, patience: Patience = USUAL): Life<Api> {
  let running: Running<Api> | undefined;

  function begin(): Running<Api> {
    const worker = open();
    let reject: (gone: WorkerGone) => void = () => undefined;
    const gone = new Promise<never>((_, no) => (reject = no));
    gone.catch(() => undefined);
    const now: Running<Api> = {
      worker,
      // every call of the interface already answers with a promise, so the wrapped side looks just like it
      api: wrap<Api>(worker) as Api,
      gone,
      asked: 0,
      begun: false,
      silent: 0,
      idle: 0,
      at: undefined,
      timer: undefined,
      fail(why) {
        clearInterval(now.timer);
        if (running === now) running = undefined;
        worker.terminate();
        reject(new WorkerGone(why, now.at));
      },
    };
    worker.addEventListener('error', () => now.fail(now.begun ? 'broken' : 'missing'));
    worker.addEventListener('messageerror', () => now.fail('broken'));
    worker.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
      now.begun = true;
      now.silent = 0;
      const beat = data as Partial<Beat> | null;
      if (beat?.[BEAT] !== undefined && beat[BEAT] !== 'work') return;
      now.idle = 0;
      if (beat?.[BEAT] === 'work') now.at = beat.at;
    });
    return now;
  }

  function tick(now: Running<Api>): void {
    now.silent += TICK_S;
    now.idle += TICK_S;
    if (!now.begun) {
      if (now.silent >= patience.firstS) now.fail('missing');
    } else if (now.silent >= patience.silentS || now.idle >= patience.idleS) now.fail('silent');
    else now.worker.postMessage({ [BEAT]: 'ask' } satisfies Beat);
  }

  return {
    async ask(question) {
      const now = (running ??= begin());
      if (now.asked++ === 0) {
        now.silent = now.idle = 0;
        now.at = undefined;
        now.timer = setInterval(() => tick(now), TICK_S * 1000);
      }
      try {
        return await Promise.race([question(now.api), now.gone]);
      } finally {
        if (--now.asked === 0) clearInterval(now.timer);
      }
    },
    end: (why) => running?.fail(why),
    silentS: () => (running?.begun && running.asked > 0 ? running.silent : 0),
  };
}

/** Each function of the interface, asked through the life of its worker. */
export function throughLife<Api extends object>(life: Life<Api>): Api {
  return new Proxy({} as Api, {
    get:
      (_, name) =>
      (...given: unknown[]) =>
        life.ask((api) => (api[name as keyof Api] as (...given: unknown[]) => Promise<unknown>)(...given)),
  });
}
