import type { Design } from '../../../geometry/design/schema.ts';
import { lockOnSheets, moveOnSheets, turnOnSheets } from '../../../geometry/sheet/move-on-sheet.ts';
import type { Comparison } from '../../../geometry/cutplan/cost/compare.ts';
import type { Page } from '../../page/page-context.ts';
import { record, stepBack, stepForward } from '../../state/history.ts';
import type {
  CutApi,
  FileWishes,
  OrderCost,
  SeriesEnd,
  SeriesHead,
  SeriesProgress,
  WantedJobFile,
} from '../../worker/cut-api.ts';
import { told as proxied } from '../../worker/cut-client.ts';
import { createCutDesk } from './cut-desk.ts';
import type { CutState, CutStore, Origin } from './cut-store.ts';
import { lookForChanges } from './look-for-changes.ts';
import { lay, place } from './place-plates.ts';
import { plan, planSheetOf } from './plan-sheets.ts';
import { freeKey, gapsOf, wishesOf } from './plates-wanted.ts';
import type { PlayStore } from './play-store.ts';
import { designsNow, take, takeNow } from './take-designs.ts';

/** What the page Cut does. Every change of what is wanted places the plates anew; locked ones stay. */
export interface CutWork {
  /** The page was opened: takes the open design, or says that a plan no longer fits it. */
  readonly look: () => Promise<void>;
  readonly add: (origin: Origin, design: Design) => void;
  readonly drop: (key: string) => void;
  readonly count: (key: string, plateId: string, count: number) => void;
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
  readonly series: (
    bytes: Uint8Array,
    anew: boolean,
    onProgress: (progress: SeriesProgress) => void,
  ) => Promise<SeriesEnd>;
  readonly cancelSeries: () => void;
}

/** How files are wanted. */
interface WantedSo extends Omit<FileWishes, 'outdated'> {
  readonly evenOutdated: boolean;
}

export function createCutWork(page: Page, store: CutStore, play: PlayStore): CutWork {
  const desk = createCutDesk(page, store, play);
  const { get, set, worker } = desk;
  const { book } = page;
  return {
    async look() {
      const { items, planned } = get();
      const open = page.design.getState().history.present;
      if (items.length === 0) {
        await take(desk, [{ key: 'A', origin: { kind: 'open' }, design: open, counts: {} }]);
        return;
      }
      const now = await designsNow(desk);
      if (planned) lookForChanges(desk, now);
      else if (items.some(({ key, design }) => now.get(key) !== design)) await takeNow(desk);
    },
    add(origin, design) {
      const { items } = get();
      void take(desk, [...items, { key: freeKey(items), origin, design, counts: {} }]);
    },
    drop(key) {
      void take(
        desk,
        get().items.filter((item) => item.key !== key),
      );
    },
    count(key, plateId, count) {
      const items = get().items.map((item) =>
        item.key === key ? { ...item, counts: { ...item.counts, [plateId]: count } } : item,
      );
      set({ items });
      void place(desk);
    },
    choose(part) {
      set(part);
      void place(desk);
    },
    placeAnew: () => void place(desk, false),
    move(id, to, at, slide = true) {
      const state = get();
      const { history } = state;
      const limits = { wishes: wishesOf(state), gaps: gapsOf(state, book) };
      lay(desk, record(history, moveOnSheets(history.present, id, to, at, limits, slide).sheets), to);
    },
    turn(ids, turnDeg) {
      const wishes = wishesOf(get());
      const { history } = get();
      lay(
        desk,
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
    undo: () => lay(desk, stepBack(get().history)),
    redo: () => lay(desk, stepForward(get().history)),
    show(sheetAt) {
      desk.stopPlay();
      set({ sheetAt, selected: undefined, lit: undefined });
      const { planned } = get();
      if (planned && !planned.sheets[sheetAt]) void planSheetOf(desk, planned.job, sheetAt);
    },
    plan: () => plan(desk),
    async planAgain() {
      if (await takeNow(desk)) await plan(desk);
    },
    wish(part) {
      const { wishes, planned } = get();
      set({ wishes: { ...wishes, ...part } });
      if (planned) void plan(desk);
    },
    async files(wanted, { evenOutdated, ...wishes }) {
      const { planned } = get();
      if (!planned) return { problem: 'trouble.files' };
      const changed = lookForChanges(desk, await designsNow(desk));
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
    series: (bytes, anew, onProgress) =>
      worker.series(page.design.getState().history.present, bytes, book, anew, proxied(onProgress)),
    cancelSeries: () => void worker.cancelSeries(),
  };
}
