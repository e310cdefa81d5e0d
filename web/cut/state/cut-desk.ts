import type { Page } from '../../page/page-context.ts';
import { cutWorker } from '../../worker/cut-client.ts';
import type { CutState, CutStore } from './cut-store.ts';
import type { PlayStore } from './play-store.ts';

/** What every job of the page Cut works with: the page, what is known of the order, and the worker. */
export interface CutDesk {
  readonly page: Page;
  readonly worker: ReturnType<typeof cutWorker>;
  readonly get: () => CutState;
  readonly set: (part: Partial<CutState>) => void;
  /** Shows the sheet as it comes out, not as it is cut. */
  readonly stopPlay: () => void;
  /** Begins a job of its kind and gives a question: is it still the newest? An answer that comes too late is dropped. */
  readonly begin: (kind: Job) => () => boolean;
}

/** Taking is apart from placing and planning: a plate counted meanwhile must not lose the designs just added. */
type Job = 'take' | 'lay';

export function createCutDesk(page: Page, store: CutStore, play: PlayStore): CutDesk {
  const newest = { take: 0, lay: 0 };
  return {
    page,
    worker: cutWorker(),
    get: () => store.getState(),
    set: (part) => store.getState().set(part),
    stopPlay: () => play.getState().set({ on: false, playing: false, atS: 0 }),
    begin(kind) {
      const mine = ++newest[kind];
      return () => mine === newest[kind];
    },
  };
}
