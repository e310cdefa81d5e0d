import { proxy, wrap } from 'comlink';
import type { CutApi, SeriesProgress } from './cut-api.ts';

let remote: CutApi | undefined;

/** The worker that places, plans and writes orders; begun when the page Cut is first opened. */
export function cutWorker(): CutApi {
  // every call of the interface already answers with a promise, so the wrapped side looks just like it
  remote ??= wrap<CutApi>(new Worker(new URL('./cut-worker.ts', import.meta.url), { type: 'module' }));
  return remote;
}

/** A listener that the worker may call. */
export function told(listener: (progress: SeriesProgress) => void): (progress: SeriesProgress) => void {
  return proxy(listener);
}
