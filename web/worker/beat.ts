/** Marks a message as a beat, so that it is told from questions and answers. */
export const BEAT = 'bridgehead-beat';

/** work: a step was done. idle: nothing is being worked out just now. ask: the page wants to know. */
export interface Beat {
  readonly [BEAT]: 'work' | 'idle' | 'ask';
  /** The element that is worked on from here. */
  readonly at?: string | undefined;
}

const SELDOM_MS = 200;
let last: { readonly ms: number; readonly at: string | undefined } | undefined;

/** The worker's part: says that it is there, and answers whenever it does not work. */
export function beginBeats(): void {
  addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if ((data as Partial<Beat> | null)?.[BEAT] === 'ask') send({ [BEAT]: 'idle' });
  });
  send({ [BEAT]: 'idle' });
}

/** A step of work begins; told at once for another element, else seldom. */
export function beat(at?: string): void {
  const ms = performance.now();
  if (last !== undefined && last.at === at && ms - last.ms < SELDOM_MS) return;
  last = { ms, at };
  send({ [BEAT]: 'work', at });
}

function send(what: Beat): void {
  postMessage(what);
}
