import { proxy } from 'comlink';
import type { CutApi, SeriesProgress } from './cut-api.ts';
import { createLife, throughLife, WorkerGone } from './life.ts';

/** A sheet is placed and planned without a step to tell of, and a large one takes its time on a small machine. */
const PATIENCE = { firstS: 20, silentS: 120, idleS: 120 };

const life = createLife<CutApi>(
  () => new Worker(new URL('./cut-worker.ts', import.meta.url), { type: 'module' }),
  PATIENCE,
);
const remote = throughLife(life);

type Taken = Parameters<CutApi['take']>;

/** What the worker has, and whether it was ended since: another is told first. */
let taken: Taken | undefined;
let lost = false;

async function ask<T>(question: () => Promise<T>): Promise<T> {
  if (lost && taken) {
    lost = false;
    await remote.take(...taken);
  }
  return question().catch((fault: unknown) => {
    if (fault instanceof WorkerGone) lost = true;
    throw fault;
  });
}

const worker: CutApi = {
  async take(...given) {
    taken = undefined;
    lost = false;
    const made = await remote.take(...given).catch((fault: unknown) => ({
      problem:
        fault instanceof WorkerGone && fault.why === 'missing'
          ? ('trouble.notLoaded' as const)
          : ('trouble.worker' as const),
    }));
    if (!('problem' in made)) taken = given;
    return made;
  },
  nest: (...given) => ask(() => remote.nest(...given)),
  plan: (...given) => ask(() => remote.plan(...given)),
  cost: (...given) => ask(() => remote.cost(...given)),
  compare: (...given) => ask(() => remote.compare(...given)),
  files: (...given) => ask(() => remote.files(...given)).catch(() => ({ problem: 'trouble.files' as const })),
  readTable: (...given) => ask(() => remote.readTable(...given)),
  series: (...given) => ask(() => remote.series(...given)).catch(() => ({ problem: 'trouble.files' as const })),
  cancelSeries: () => remote.cancelSeries().catch(() => undefined),
};

/** The worker that places, plans and writes orders; begun when the page Cut is first opened. */
export function cutWorker(): CutApi {
  return worker;
}

/** A listener that the worker may call. */
export function told(listener: (progress: SeriesProgress) => void): (progress: SeriesProgress) => void {
  return proxy(listener);
}
