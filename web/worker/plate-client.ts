import { proxy, wrap } from 'comlink';
import type { Design } from '../../geometry/design/schema.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { Day } from '../../geometry/sentences/calendar.ts';
import type { PlatesStore } from '../state/plates-store.ts';
import { createLatestWins } from './latest-wins.ts';
import { unpackPlate } from './pack-plate.ts';
import type { Differed, Made, MadeFiles, OpenedOrder, Planned, PlateApi, Progress, WantedFile } from './plate-api.ts';

export interface PlateClient {
  /** Works the design out, the plate looked at first; a newer call makes an older one stop. */
  work(design: Design, plateId: string | undefined): void;
  /** One plate of some other design, for a small picture; waits until the page's own work is done. */
  picture(design: Design): Promise<PlateResult | undefined>;
  /** One plate of a design with its cut plan; waits until the page's own work is done. */
  plan(design: Design, plateId: string): Promise<Planned>;
  /** What is cut otherwise of one plate that both designs have; waits as well. */
  differ(before: Design, after: Design, plateId: string): Promise<Differed>;
  files(design: Design, wanted: readonly WantedFile[], told?: (progress: Progress) => void): Promise<MadeFiles>;
  /** Reads an order and makes its cut files again. */
  openOrder(bytes: Uint8Array, told: (progress: Progress) => void): Promise<OpenedOrder>;
}

interface Job {
  readonly design: Design;
  readonly plateId: string | undefined;
}

/**
 * Speaks with the worker that makes the plates, and puts what comes back where the page looks. Every question waits for
 * the book, since a plate made by other numbers would be another plate.
 */
export function startPlateClient(store: PlatesStore, coming: Promise<StockBook>): PlateClient {
  let remote = open();

  function open(): { readonly worker: Worker; readonly api: PlateApi; readonly broken: Promise<never> } {
    const worker = new Worker(new URL('./plate-worker.ts', import.meta.url), { type: 'module' });
    const broken = new Promise<never>((_, reject) => {
      worker.addEventListener('error', (event) => reject(new Error(event.message)));
    });
    broken.catch(() => undefined);
    // every call of the interface already answers with a promise, so the wrapped side looks just like it
    return { worker, api: wrap<PlateApi>(worker), broken };
  }

  /** A worker that has died is replaced: what was typed is in the page, not in it. */
  async function ask<T>(question: (api: PlateApi) => Promise<T>): Promise<T> {
    const asked = remote;
    try {
      return await Promise.race([question(asked.api), asked.broken]);
    } catch (fault) {
      if (remote === asked) {
        asked.worker.terminate();
        remote = open();
      }
      throw fault;
    }
  }

  async function make(design: Design, plateId: string): Promise<Made> {
    const book = await coming;
    const made = await ask((api) => api.make(design, plateId, book, today()));
    return 'problem' in made ? made : { plate: unpackPlate(made.packed) };
  }

  const queue = createLatestWins<Job>(async (job, stale) => {
    store.getState().set({ busy: true });
    for (const plateId of inOrder(job)) {
      let made: Made;
      try {
        made = await make(job.design, plateId);
      } catch {
        made = { problem: 'trouble.worker' };
      }
      if (stale()) return;
      if ('plate' in made) {
        store.getState().put(made.plate);
        store.getState().set({ trouble: undefined });
      } else {
        store.getState().set({ trouble: made.problem });
        break;
      }
    }
    store.getState().set({ busy: false });
  });

  return {
    work: (design, plateId) => queue.submit({ design, plateId }),
    async picture(design) {
      await queue.whenIdle();
      const first = design.plates[0];
      if (first === undefined) return undefined;
      try {
        const made = await make(design, first.id);
        return 'plate' in made ? made.plate : undefined;
      } catch {
        return undefined;
      }
    },
    async plan(design, plateId) {
      await queue.whenIdle();
      try {
        const book = await coming;
        const planned = await ask((api) => api.plan(design, plateId, book, today()));
        if ('problem' in planned) return planned;
        const { packed, ...rest } = planned;
        return { plate: unpackPlate(packed), ...rest };
      } catch {
        return { problem: 'trouble.worker' };
      }
    },
    async differ(before, after, plateId) {
      await queue.whenIdle();
      try {
        const book = await coming;
        return await ask((api) => api.differ(before, after, plateId, book));
      } catch {
        return { problem: 'trouble.worker' };
      }
    },
    async files(design, wanted, told) {
      try {
        const book = await coming;
        return await ask((api) => api.files(design, wanted, book, told && proxy(told)));
      } catch {
        return { problem: 'trouble.files' };
      }
    },
    async openOrder(bytes, told) {
      try {
        const book = await coming;
        return await ask((api) => api.openOrder(bytes, book, proxy(told)));
      } catch {
        return { problem: 'handOver.trouble' };
      }
    },
  };
}

function today(): Day {
  const now = new Date();
  return { year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() };
}

/** The plate looked at first, then the others. */
function inOrder({ design, plateId }: Job): string[] {
  const ids = design.plates.map((p) => p.id);
  return plateId !== undefined && ids.includes(plateId) ? [plateId, ...ids.filter((id) => id !== plateId)] : ids;
}
