import type { ArtworkApi } from './artwork-api.ts';
import { createLife, throughLife } from './life.ts';

/** What it is asked has no steps to tell of, and a large picture takes its time on a small machine. */
const PATIENCE = { firstS: 20, silentS: 60, idleS: 60 };

const life = createLife<ArtworkApi>(
  () => new Worker(new URL('./artwork-worker.ts', import.meta.url), { type: 'module' }),
  PATIENCE,
);
const remote = throughLife(life);

/** Ends what it is at, for nobody waits for it any more; the next question begins another. */
export function endArtworkWork(): void {
  life.end('stale');
}

/** The worker that composes, traces and draws motifs; begun when it is first needed. */
export function artworkWorker(): ArtworkApi {
  return remote;
}
