import { wrap } from 'comlink';
import type { ArtworkApi } from './artwork-api.ts';

let remote: ArtworkApi | undefined;

/** The worker that composes, traces and draws motifs; begun when it is first needed. */
export function artworkWorker(): ArtworkApi {
  remote ??= wrap<ArtworkApi>(new Worker(new URL('./artwork-worker.ts', import.meta.url), { type: 'module' }));
  return remote;
}
