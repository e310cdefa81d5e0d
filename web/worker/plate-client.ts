import { proxy } from 'comlink';
import { sortFindings } from '../../geometry/findings.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { Day } from '../../geometry/sentences/calendar.ts';
import type { Halt, PlatesStore } from '../state/plates-store.ts';
import type { WorkMark } from '../state/work-mark.ts';
import { createLatestWins } from './latest-wins.ts';
import { createLife, WorkerGone } from './life.ts';
import { unpackPlate } from './pack-plate.ts';
import type { Differed, Made, MadeFiles, OpenedOrder, Planned, PlateApi, Progress, WantedFile } from './plate-api.ts';

export interface PlateClient {
  /** Works the design out, the plate looked at first; a newer call makes an older one stop. */
  work(design: Design, plateId: string | undefined): void;
  /** The same for a design that was stopped before: a person wants it tried. */
  again(design: Design, plateId: string | undefined): void;
  /** Seconds that work has gone on without a sign of life. */
  silentS(): number;
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

/** What made a worker hang: one element, by its id and as it then was, or the whole design. */
interface Stuck {
  readonly elementId: string | undefined;
  readonly text: string | undefined;
}

/** An answer about a design that has changed since is waited for so long. */
const STALE_MS = 15_000;
/** A refused design that changes is left alone until it has rested so long. */
const REST_MS = 700;

/**
 * Speaks with the worker that makes the plates, and puts what comes back where the page looks. Every question waits for
 * the book, since a plate made by other numbers would be another plate.
 */
export function startPlateClient(store: PlatesStore, coming: Promise<StockBook>, mark: WorkMark): PlateClient {
  const life = createLife<PlateApi>(
    () => new Worker(new URL('./plate-worker.ts', import.meta.url), { type: 'module' }),
  );
  let stuck: Stuck | undefined;
  let begun = 0;

  /** A design that made a worker hang is not given to the next one by itself. */
  async function ask<T>(designs: readonly Design[], question: (api: PlateApi) => Promise<T>): Promise<T> {
    if (designs.some((design) => isStuck(design))) throw new WorkerGone('silent', stuck?.elementId);
    // the page ended over it last time: neither prices nor files begin it again
    if (designs.length > 0 && store.getState().halt?.why === 'before') throw new WorkerGone('stale');
    try {
      return await life.ask(question);
    } catch (fault) {
      if (fault instanceof WorkerGone && fault.why === 'silent' && designs[0]) stuck = stuckIn(designs[0], fault.at);
      throw fault;
    }
  }

  function isStuck(design: Design): boolean {
    if (stuck === undefined) return false;
    return stuck.text === textOf(stuck.elementId === undefined ? design : elementIn(design, stuck.elementId));
  }

  async function make(design: Design, plateId: string): Promise<Made> {
    const book = await coming;
    const made = await ask([design], (api) => api.make(design, plateId, book, today()));
    return 'problem' in made ? made : { plate: unpackPlate(made.packed) };
  }

  const queue = createLatestWins<Job>(async (job, stale) => {
    store.getState().set({ busy: true, halt: undefined });
    begun++;
    mark.begin();
    for (const plateId of inOrder(job)) {
      let made: Made;
      try {
        made = await make(job.design, plateId);
      } catch (fault) {
        made = { problem: 'trouble.worker' };
        if (!stale()) store.getState().set({ halt: haltBy(fault) });
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
    mark.end();
    store.getState().set({ busy: false });
    void advise(job, stale);
  });

  /** Once a refused design has rested: where its texts would hold. The next keystroke does not wait for it. */
  async function advise({ design, plateId }: Job, stale: () => boolean): Promise<void> {
    const refused = inOrder({ design, plateId }).filter((id) => store.getState().plates[id]?.verdict === 'stop');
    if (refused.length > 0) await new Promise((resolve) => setTimeout(resolve, REST_MS));
    for (const id of refused) {
      if (stale()) return;
      const book = await coming;
      const told = await ask([design], (api) => api.advise(design, id, book)).catch(() => []);
      const plate = store.getState().plates[id];
      if (stale() || plate === undefined || told.length === 0) continue;
      store.getState().put({ ...plate, findings: sortFindings([...plate.findings, ...told]) });
    }
  }

  /** What runs for a design that has changed since is given so much time and no more. */
  function hurry(): void {
    const now = begun;
    setTimeout(() => {
      if (begun === now && !queue.idle()) life.end('stale');
    }, STALE_MS);
  }

  return {
    silentS: () => life.silentS(),
    work(design, plateId) {
      if (!queue.idle()) hurry();
      queue.submit({ design, plateId });
    },
    again(design, plateId) {
      stuck = undefined;
      store.getState().set({ halt: undefined, trouble: undefined });
      queue.submit({ design, plateId });
    },
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
        const planned = await ask([design], (api) => api.plan(design, plateId, book, today()));
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
        return await ask([before, after], (api) => api.differ(before, after, plateId, book));
      } catch {
        return { problem: 'trouble.worker' };
      }
    },
    async files(design, wanted, told) {
      try {
        const book = await coming;
        return await ask([design], (api) => api.files(design, wanted, book, told && proxy(told)));
      } catch {
        return { problem: 'trouble.files' };
      }
    },
    async openOrder(bytes, told) {
      try {
        const book = await coming;
        return await ask([], (api) => api.openOrder(bytes, book, proxy(told)));
      } catch {
        return { problem: 'handOver.trouble' };
      }
    },
  };
}

function stuckIn(design: Design, at: string | undefined): Stuck {
  const element = at === undefined ? undefined : elementIn(design, at);
  return element ? { elementId: element.id, text: textOf(element) } : { elementId: undefined, text: textOf(design) };
}

function elementIn(design: Design, id: string): Design['elements'][number] | undefined {
  return design.elements.find((element) => element.id === id);
}

function textOf(part: object | undefined): string | undefined {
  return part && JSON.stringify(part);
}

function haltBy(fault: unknown): Halt | undefined {
  if (!(fault instanceof WorkerGone)) return undefined;
  if (fault.why === 'missing') return { why: 'missing' };
  return fault.why === 'silent' ? { why: 'stuck', elementId: fault.at } : undefined;
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
