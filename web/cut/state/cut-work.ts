import { ownRules } from '../../../geometry/stock/own-rules.ts';
import { shortFingerprint } from '../../../geometry/design/fingerprint.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { findOutdated } from '../../../geometry/files/job/job.ts';
import { checkSheet } from '../../../geometry/sheet/check-nest.ts';
import { lockOnSheets, moveOnSheets, turnOnSheets } from '../../../geometry/sheet/move-on-sheet.ts';
import { restOf } from '../../../geometry/sheet/sheet-use.ts';
import type { Refused } from '../../../geometry/sentences/wording.ts';
import { settingsFor } from '../../../geometry/cutplan/cost/settings-for.ts';
import type { Comparison } from '../../../geometry/cutplan/cost/compare.ts';
import type { Page } from '../../page/page-context.ts';
import { record, startHistory, stepBack, stepForward } from '../../state/history.ts';
import type {
  CutApi,
  FileWishes,
  OrderCost,
  PlanJob,
  SeriesEnd,
  SeriesHead,
  SeriesProgress,
  WantedJobFile,
} from '../../worker/cut-api.ts';
import { cutWorker, told as toldBy } from '../../worker/cut-client.ts';
import type { CutState, CutStore, OrderItem, Origin } from './cut-store.ts';
import { freeKey, gapsOf, kindsOf, stockOf, wishesOf } from './plates-wanted.ts';
import type { PlayStore } from './play-store.ts';

/** What the page Cut does. Every change of what is wanted places the plates anew; locked ones stay. */
export interface CutWork {
  /** The page was opened: takes the open design, or says that a plan no longer fits it. */
  readonly look: () => Promise<void>;
  readonly add: (origin: Origin, design: Design) => void;
  readonly drop: (key: string) => void;
  readonly count: (key: string, plateId: string, count: number) => void;
  /** Kinds, remnants or gaps. */
  readonly choose: (part: Partial<Pick<CutState, 'kindIds' | 'remnants' | 'ownGaps'>>) => void;
  /** Gives all plates back to the tool. */
  readonly placeAnew: () => void;
  readonly move: (id: string, to: number, at: { readonly x: number; readonly y: number }, slide?: boolean) => void;
  readonly turn: (ids: readonly string[], turnDeg: number) => void;
  readonly lock: (id: string, locked: boolean) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly show: (sheetAt: number) => void;
  readonly plan: () => Promise<void>;
  /** The designs as they are now, placed and planned anew. */
  readonly planAgain: () => Promise<void>;
  readonly wish: (part: Partial<CutState['wishes']>) => void;
  /** Of a plan that no longer fits its designs only when that is wanted. */
  readonly files: (wanted: WantedJobFile, wishes: WantedSo) => ReturnType<CutApi['files']>;
  /** Time and cost of all sheets of the plan; undefined without one, or when it could not be worked out. */
  readonly cost: () => Promise<OrderCost | undefined>;
  readonly compare: (wish: string) => Promise<Comparison | undefined>;
  readonly readTable: (bytes: Uint8Array) => Promise<SeriesHead>;
  /** anew: also what an earlier run made. */
  readonly series: (bytes: Uint8Array, anew: boolean, told: (progress: SeriesProgress) => void) => Promise<SeriesEnd>;
  readonly cancelSeries: () => void;
}

/** How files are wanted. */
export interface WantedSo extends Omit<FileWishes, 'outdated'> {
  readonly evenOutdated: boolean;
}

export function createCutWork(page: Page, store: CutStore, play: PlayStore): CutWork {
  const { book } = page;
  const worker = cutWorker();
  const get = (): CutState => store.getState();
  const set = (part: Partial<CutState>): void => get().set(part);
  let newest = 0;
  /** Apart from the others: a plate counted or moved meanwhile must not lose the designs just added. */
  let newestTake = 0;

  async function take(items: readonly OrderItem[]): Promise<boolean> {
    const mine = ++newestTake;
    set({ items, work: 'taking', trouble: undefined, planned: undefined, changed: [] });
    const made = await worker.take(
      items.map(({ key, design }) => ({ key, design })),
      book,
    );
    if (mine !== newestTake) return false;
    if ('problem' in made) {
      set({ work: undefined, trouble: made.problem });
      return false;
    }
    set({ plates: made });
    return place();
  }

  async function place(keepLocked = true): Promise<boolean> {
    const mine = ++newest;
    set({ work: 'placing', planned: undefined, trouble: undefined, refused: undefined });
    play.getState().set({ on: false, playing: false, atS: 0 });
    const state = get();
    const kept = keepLocked ? state.history.present.filter(({ plates }) => plates.some((p) => p.locked)) : [];
    const laid = await worker
      .nest(wishesOf(state), kindsOf(state, book), gapsOf(state, book), kept)
      .catch(() => undefined);
    if (mine !== newest) return false;
    if (!laid) {
      set({ work: undefined, trouble: 'trouble.worker' });
      return false;
    }
    const { sheets, missing, rest } = laid;
    const { sheetAt, selected } = get();
    set({
      history: startHistory(sheets),
      missing,
      rest,
      work: undefined,
      sheetAt: Math.min(sheetAt, Math.max(0, sheets.length - 1)),
      selected: sheets.some(({ plates }) => plates.some((p) => p.id === selected)) ? selected : undefined,
      faults: [],
    });
    return true;
  }

  /** Takes a change by hand in, or a step of its history; one that changes nothing leaves the plan as it is. */
  function lay(history: CutState['history'], sheetAt = get().sheetAt): void {
    const state = get();
    if (history === state.history) return;
    newest++;
    const sheets = history.present;
    const [wishes, gaps] = [wishesOf(state), gapsOf(state, book)];
    play.getState().set({ on: false, playing: false, atS: 0 });
    set({
      history,
      sheetAt: Math.min(sheetAt, Math.max(0, sheets.length - 1)),
      planned: undefined,
      rest: sheets.length > 0 ? restOf(sheets.at(-1)!, sheets.length - 1, gaps) : undefined,
      work: undefined,
      faults: sheets.flatMap((sheet, i) => checkSheet(sheet, wishes, gaps).map((fault) => ({ ...fault, sheet: i }))),
    });
  }

  async function plan(): Promise<void> {
    const state = get();
    const stock = stockOf(state);
    if (!stock || state.history.present.length === 0 || state.faults.length > 0) return;
    const settings = settingsFor(book, stock);
    if ('problem' in settings) {
      set({ refused: settings });
      return;
    }
    const job: PlanJob = { sheets: state.history.present, stock, gaps: gapsOf(state, book), wishes: state.wishes };
    await planSheetOf(job, state.sheetAt);
  }

  async function planSheetOf(job: PlanJob, sheetAt: number): Promise<void> {
    const mine = ++newest;
    set({ work: 'planning', trouble: undefined, refused: undefined });
    const planned = await worker.plan(job, sheetAt).catch(() => undefined);
    if (mine !== newest) return;
    const before = get().planned;
    set({
      work: undefined,
      ...(planned
        ? { planned: { job, sheets: { ...(before?.job === job ? before.sheets : {}), [sheetAt]: planned } } }
        : { trouble: 'trouble.worker' as const }),
    });
  }

  /** The designs as they are now, by key; one that is gone is absent. */
  async function designsNow(): Promise<ReadonlyMap<string, Design>> {
    const now = new Map<string, Design>();
    for (const { key, origin, design } of get().items) {
      if (origin.kind === 'open') now.set(key, page.design.getState().history.present);
      else if (origin.kind === 'file') now.set(key, design);
      else {
        const text = await page.list.textOf(origin.id);
        if (text === undefined) continue;
        const { readDesign } = await import('../../../geometry/design/read-design.ts');
        const read = readDesign(text);
        if ('design' in read) now.set(key, read.design);
      }
    }
    return now;
  }

  /** What the plates taken no longer fit, by the designs as they are now; told to the page. */
  function lookForChanges(now: ReadonlyMap<string, Design>): readonly Refused[] {
    const { plates, changed: before } = get();
    const prints = new Map(
      plates.flatMap(({ wish, key, plateId }) => {
        const design = now.get(key);
        const there = design?.plates.some((p) => p.id === plateId);
        return design && there ? [[wish, shortFingerprint(design, ownRules(design, book))] as const] : [];
      }),
    );
    const changed = findOutdated(
      plates.map(({ job }) => job),
      prints,
    );
    const isNews = changed.map(({ problem }) => problem).join() !== before.map(({ problem }) => problem).join();
    if (isNews && get().planned) set({ changed });
    return changed;
  }

  async function takeNow(): Promise<boolean> {
    const now = await designsNow();
    const items = get().items.flatMap((item) => {
      const design = now.get(item.key);
      return design ? [{ ...item, design }] : [];
    });
    return take(items);
  }

  return {
    async look() {
      const { items, planned } = get();
      const open = page.design.getState().history.present;
      if (items.length === 0) {
        await take([{ key: 'A', origin: { kind: 'open' }, design: open, counts: {} }]);
        return;
      }
      const now = await designsNow();
      if (planned) lookForChanges(now);
      else if (items.some(({ key, design }) => now.get(key) !== design)) await takeNow();
    },
    add(origin, design) {
      const { items } = get();
      void take([...items, { key: freeKey(items), origin, design, counts: {} }]);
    },
    drop(key) {
      void take(get().items.filter((item) => item.key !== key));
    },
    count(key, plateId, count) {
      const items = get().items.map((item) =>
        item.key === key ? { ...item, counts: { ...item.counts, [plateId]: count } } : item,
      );
      set({ items });
      void place();
    },
    choose(part) {
      set(part);
      void place();
    },
    placeAnew: () => void place(false),
    move(id, to, at, slide = true) {
      const state = get();
      const { history } = state;
      const limits = { wishes: wishesOf(state), gaps: gapsOf(state, book) };
      lay(record(history, moveOnSheets(history.present, id, to, at, limits, slide).sheets), to);
    },
    turn(ids, turnDeg) {
      const wishes = wishesOf(get());
      const { history } = get();
      lay(
        record(
          history,
          ids.reduce((sheets, id) => turnOnSheets(sheets, id, turnDeg, wishes), history.present),
        ),
      );
    },
    lock: (id, locked) => {
      // where it lies stays as it is, and so does the plan
      const { history } = get();
      set({ history: record(history, lockOnSheets(history.present, id, locked)) });
    },
    undo: () => lay(stepBack(get().history)),
    redo: () => lay(stepForward(get().history)),
    show(sheetAt) {
      play.getState().set({ on: false, playing: false, atS: 0 });
      set({ sheetAt, selected: undefined, lit: undefined });
      const { planned } = get();
      if (planned && !planned.sheets[sheetAt]) void planSheetOf(planned.job, sheetAt);
    },
    plan,
    async planAgain() {
      if (await takeNow()) await plan();
    },
    wish(part) {
      const { wishes, planned } = get();
      set({ wishes: { ...wishes, ...part } });
      if (planned) void plan();
    },
    async files(wanted, { evenOutdated, ...wishes }) {
      const { planned } = get();
      if (!planned) return { problem: 'trouble.files' };
      const changed = lookForChanges(await designsNow());
      if (changed.length > 0 && !evenOutdated) return { problem: 'cut.files.outdatedNow' };
      const outdated = [...new Set(changed.map(({ problem }) => problem))];
      return worker.files(planned.job, wanted, { ...wishes, outdated });
    },
    async cost() {
      const { planned, rest } = get();
      return planned && worker.cost(planned.job, rest).catch(() => undefined);
    },
    compare: (wish) => worker.compare(wish).catch(() => undefined),
    readTable: (bytes) => worker.readTable(page.design.getState().history.present, bytes, book),
    series: (bytes, anew, told) =>
      worker.series(page.design.getState().history.present, bytes, book, anew, toldBy(told)),
    cancelSeries: () => void worker.cancelSeries(),
  };
}
