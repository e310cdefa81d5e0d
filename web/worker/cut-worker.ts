import { printInName } from '../../geometry/design/show-fingerprint.ts';
import { expose } from 'comlink';
import { designText } from '../../geometry/design/write-design.ts';
import type { SheetPlan } from '../../geometry/cutplan/sheet-plan.ts';
import { factsOf } from '../../geometry/files/job/job-facts.ts';
import type { Job } from '../../geometry/files/job/job.ts';
import type { JobFile } from '../../geometry/files/job/job-files.ts';
import { safePart } from '../../geometry/files/names.ts';
import { compareProcesses } from '../../geometry/cutplan/cost/compare.ts';
import type { NestedSheet } from '../../geometry/sheet/sheets.ts';
import { nest } from '../../geometry/sheet/nest.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { beat, beginBeats } from './beat.ts';
import type { CutApi, PlanJob } from './cut-api.ts';
import { orderCost } from './cut-cost.ts';
import { jobFile } from './cut-files.ts';
import { createSheetPlans, type SheetPlans } from './cut-plans.ts';
import { type OrderPlate, orderPlates } from './cut-plates.ts';
import { openSavedRows } from '../state/saved-rows.ts';
import { watchStore } from './watched-store.ts';
import { makeSeries, seriesHead } from './cut-series.ts';

/** Glyphs worked out once serve again as long as the page is open. */
const store = watchStore(createStore(), beat);

interface Order {
  readonly plates: readonly OrderPlate[];
  readonly book: StockBook;
}

/** The order that was taken last; what is asked is about this. */
let taken: Order | undefined;
let cached: { readonly key: string; readonly plans: SheetPlans } | undefined;
let seriesRun: AbortController | undefined;
/** The name of this very file changes with whatever is built into it. */
const savedRows = openSavedRows(new URL(import.meta.url).pathname);

function orderTaken(): Order {
  if (!taken) throw new RangeError('no order was taken');
  return taken;
}

function plansOf(job: PlanJob): SheetPlans {
  const key = JSON.stringify(job);
  if (cached?.key === key) return cached.plans;
  const { plates, book } = orderTaken();
  const [first] = plates;
  if (!first) throw new RangeError('the order has no plate');
  const plans = createSheetPlans(job, {
    plans: new Map(plates.map(({ shown, plan }) => [shown.wish, plan])),
    wastes: new Map(plates.map(({ shown }) => [shown.wish, shown.waste])),
    rules: first.plate.rules,
    book,
  });
  cached = { key, plans };
  return plans;
}

const api: CutApi = {
  async take(designs, book) {
    try {
      const made: OrderPlate[] = [];
      for (const design of designs) made.push(...(await orderPlates(design, store, book)));
      taken = { plates: made, book };
      cached = undefined;
      return made.map(({ shown }) => shown);
    } catch {
      return { problem: 'trouble.worker' };
    }
  },
  nest: (wishes, kinds, gaps, keptSheets) => Promise.resolve(nest(wishes, kinds, gaps, keptSheets)),
  plan: (job, sheet) => Promise.resolve(plansOf(job).shown(sheet)),
  async cost(job, rest) {
    const { plates, book } = orderTaken();
    const shown = plates.map(({ shown, plan }) => ({ ...shown, cuttingMm: plan.cuttingLengthMm }));
    return Promise.resolve(orderCost(job, rest, plansOf(job), shown, book));
  },
  async compare(wish) {
    const { plates, book } = orderTaken();
    const found = plates.find(({ shown }) => shown.wish === wish);
    return Promise.resolve(found && compareProcesses(found.plate, found.plan, found.design.stock, book));
  },
  async files(planJob, wanted, wishes) {
    try {
      const plans = plansOf(planJob);
      const asked = planJob.sheets.flatMap((_, i) => (wanted.kind === 'zip' || i === wanted.sheet ? [i] : []));
      if (asked.some((i) => plans.bites(i).length > 0)) return { problem: 'cut.files.bites' };
      const there = new Set(planJob.sheets.flatMap(({ plates }) => plates.map(({ wish }) => wish)));
      const { book } = orderTaken();
      const jobSheet = (sheet: NestedSheet, plan: SheetPlan) => ({
        sheet,
        plan,
        facts: factsOf(book, planJob.stock, plans.settings, plan),
      });
      const job: Job = {
        // one sheet asked for needs no others
        sheets: planJob.sheets.flatMap((sheet, i) =>
          wanted.kind === 'zip' || i <= wanted.sheet ? [jobSheet(sheet, plans.plan(i))] : [],
        ),
        designs: orderTaken().plates.flatMap(({ shown }) => (there.has(shown.wish) ? [shown.job] : [])),
      };
      return { file: await jobFile(job, wanted, wishes, wanted.kind === 'zip' ? designFiles(there) : []) };
    } catch {
      return { problem: 'trouble.files' };
    }
  },
  readTable: (design, bytes, book) => seriesHead(design, bytes, { book, saved: savedRows }),
  async series(design, bytes, book, anew, told) {
    const run = new AbortController();
    seriesRun?.abort();
    seriesRun = run;
    try {
      const tools = { store, book, signal: run.signal, saved: savedRows, anew };
      return await makeSeries(design, bytes, tools, told);
    } catch {
      return { problem: 'trouble.files' };
    }
  },
  cancelSeries() {
    seriesRun?.abort();
    return Promise.resolve();
  },
};

/** The designs themselves, so that the order can be made again. */
function designFiles(there: ReadonlySet<string>): JobFile[] {
  const files = new Map<string, JobFile>();
  for (const { shown, design } of orderTaken().plates) {
    if (!there.has(shown.wish)) continue;
    const name = `${safePart(design.title, 'design')}-${shown.key}-${printInName(shown.job.fingerprint)}.json`;
    files.set(shown.key, { name, bytes: new TextEncoder().encode(designText(design)) });
  }
  return [...files.values()];
}

expose(api);
beginBeats();
