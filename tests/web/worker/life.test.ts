import { expose } from 'comlink';
import { describe, expect, it } from 'vitest';
import { BEAT } from '../../../web/worker/beat.ts';
import { createLife, throughLife, WorkerGone } from '../../../web/worker/life.ts';

/** What a worker does, spoken with through a channel as the real one is. */
function fakeWorker(api: object, { silent = false, idle = true } = {}) {
  const { port1, port2 } = new MessageChannel();
  if (!silent) {
    expose(api, port2);
    port2.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
      if (idle && (data as Record<string, unknown>)[BEAT] === 'ask') port2.postMessage({ [BEAT]: 'idle' });
    });
    port2.start();
    port2.postMessage({ [BEAT]: 'idle' });
  }
  port1.start();
  const ended = { count: 0 };
  const worker = Object.assign(port1, {
    terminate() {
      ended.count++;
      port1.close();
      port2.close();
    },
  }) as unknown as Worker;
  return { worker, port: port2, ended };
}

const QUICK = { firstS: 1.5, silentS: 1.5, idleS: 3.5 };
const NEVER = () => new Promise<never>(() => undefined);

async function whyOf(asked: Promise<unknown>): Promise<WorkerGone | undefined> {
  return asked.then(
    () => undefined,
    (fault: unknown) => (fault instanceof WorkerGone ? fault : undefined),
  );
}

describe('a worker that', () => {
  it('answers is the same for all questions', async () => {
    let opened = 0;
    const life = createLife<{ twice(n: number): Promise<number> }>(() => {
      opened++;
      return fakeWorker({ twice: (n: number) => 2 * n }).worker;
    }, QUICK);
    const api = throughLife(life);
    expect([await api.twice(4), await api.twice(5), opened]).toEqual([8, 10, 1]);
  });

  it('never comes is told as missing, one whose script fails at once', async () => {
    const life = createLife(() => fakeWorker({}, { silent: true }).worker, QUICK);
    expect((await whyOf(life.ask(NEVER)))?.why).toBe('missing');
    const failing = createLife(() => {
      const { worker } = fakeWorker({}, { silent: true });
      setTimeout(() => worker.dispatchEvent(new Event('error')), 5);
      return worker;
    }, QUICK);
    expect((await whyOf(failing.ask(NEVER)))?.why).toBe('missing');
  });

  it('hangs is ended, with the element it was at; the next question goes to another', async () => {
    const fakes: ReturnType<typeof fakeWorker>[] = [];
    const life = createLife<{ say(): Promise<string> }>(() => {
      const fake = fakeWorker({ say: () => (fakes.length === 1 ? NEVER() : 'well') }, { idle: false });
      fakes.push(fake);
      return fake.worker;
    }, QUICK);
    const asked = life.ask((api) => api.say());
    fakes[0]?.port.postMessage({ [BEAT]: 'work', at: 'ring-2' });
    const gone = await whyOf(asked);
    expect([gone?.why, gone?.at, fakes[0]?.ended.count]).toEqual(['silent', 'ring-2', 1]);
    expect(await life.ask((api) => api.say())).toBe('well');
  });

  it('works long but beats is left to work; one that only waits is ended in the end', async () => {
    const { worker, port } = fakeWorker({ say: () => new Promise((end) => setTimeout(end, 4200, 'done')) });
    const beats = setInterval(() => port.postMessage({ [BEAT]: 'work' }), 400);
    const life = createLife<{ say(): Promise<string> }>(() => worker, QUICK);
    expect(await life.ask((api) => api.say())).toBe('done');
    clearInterval(beats);
    const waiting = createLife<{ say(): Promise<string> }>(() => fakeWorker({ say: NEVER }).worker, QUICK);
    expect((await whyOf(waiting.ask((api) => api.say())))?.why).toBe('silent');
  });

  it('is ended by the page takes all that it was asked with it', async () => {
    const life = createLife<{ say(): Promise<string> }>(() => fakeWorker({ say: NEVER }).worker, QUICK);
    const asked = [1, 2, 3].map(() => whyOf(life.ask((api) => api.say())));
    life.end('stale');
    expect((await Promise.all(asked)).map((gone) => gone?.why)).toEqual(['stale', 'stale', 'stale']);
  });
});
