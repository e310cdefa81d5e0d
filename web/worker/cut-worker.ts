import { expose } from 'comlink';
import { designText } from '../../geometry/design/write-design.ts';
import type { Job } from '../../geometry/files/job/job.ts';
import type { JobFile } from '../../geometry/files/job/job-files.ts';
import { safePart } from '../../geometry/files/names.ts';
import { compareProcesses } from '../../geometry/cutplan/cost/compare.ts';
import { nest } from '../../geometry/sheet/nest.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { CutApi, PlanJob } from './cut-api.ts';
import { orderCost } from './cut-cost.ts';
import { jobFile } from './cut-files.ts';
import { type KeptPlans, keptPlans } from './cut-plans.ts';
import { type OrderPlate, orderPlates } from './cut-plates.ts';
import { keptRows } from '../state/kept-rows.ts';
import { makeSeries, seriesHead } from './cut-series.ts';

/** Glyphs worked out once serve again as long as the page is open. */
const store = createStore();

/** The order that was taken last; what is asked is about this. */
let order: { readonly plates: readonly OrderPlate[]; readonly book: StockBook } = { plates: [], book: BUILT_IN };
let kept: { readonly key: string; readonly plans: KeptPlans } | undefined;
let seriesRun: AbortController | undefined;
/** The name of this very file changes with whatever is built into it. */
const rowsKept = keptRows(new URL(import.meta.url).pathname);

function plansOf(job: PlanJob): KeptPlans {
  const key = JSON.stringify(job);
  if (kept?.key === key) return kept.plans;
  const { plates, book } = order;
  const [first] = plates;
  if (!first) throw new RangeError('no order was taken');
  const plans = keptPlans(job, {
    plans: new Map(plates.map(({ shown, plan }) => [shown.wish, plan])),
    wastes: new Map(plates.map(({ shown }) => [shown.wish, shown.waste])),
    rules: first.plate.rules,
    book,
  });
  kept = { key, plans };
  return plans;
}

const api: CutApi = {
  async take(designs, book = BUILT_IN) {
    try {
      const made: OrderPlate[] = [];
      for (const design of designs) made.push(...(await orderPlates(design, store, book)));
      order = { plates: made, book };
      kept = undefined;
      return made.map(({ shown }) => shown);
    } catch {
      return { problem: 'trouble.worker' };
    }
  },
  nest: (wishes, kinds, gaps, keptSheets) => Promise.resolve(nest(wishes, kinds, gaps, keptSheets)),
  plan: (job, sheet) => Promise.resolve(plansOf(job).shown(sheet)),
  cost: (job, rest) =>
    Promise.resolve(
      orderCost(
        job,
        rest,
        plansOf(job),
        order.plates.map(({ shown, plan }) => ({ ...shown, cuttingMm: plan.cuttingLengthMm })),
        order.book,
      ),
    ),
  compare(wish) {
    const found = order.plates.find(({ shown }) => shown.wish === wish);
    return Promise.resolve(found && compareProcesses(found.plate, found.plan, found.design.stock, order.book));
  },
  async files(planJob, wanted, wishes) {
    try {
      const plans = plansOf(planJob);
      const there = new Set(planJob.sheets.flatMap(({ plates }) => plates.map(({ wish }) => wish)));
      const job: Job = {
        title: wishes.title,
        // one sheet asked for needs no others
        sheets: planJob.sheets.flatMap((sheet, i) =>
          wanted.kind === 'zip' || i <= wanted.sheet ? [{ sheet, plan: plans.plan(i) }] : [],
        ),
        designs: order.plates.flatMap(({ shown }) => (there.has(shown.wish) ? [shown.job] : [])),
      };
      return { file: await jobFile(job, wanted, wishes, wanted.kind === 'zip' ? designFiles(there) : []) };
    } catch {
      return { problem: 'trouble.files' };
    }
  },
  readTable: (design, bytes, book = BUILT_IN) => seriesHead(design, bytes, { book, kept: rowsKept }),
  async series(design, bytes, book, anew, told) {
    const run = new AbortController();
    seriesRun?.abort();
    seriesRun = run;
    try {
      const tools = { store, book: book ?? BUILT_IN, signal: run.signal, kept: rowsKept, anew };
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
  for (const { shown, design } of order.plates) {
    if (!there.has(shown.wish)) continue;
    const name = `${safePart(design.title, 'design')}-${shown.key}-${shown.job.fingerprint}.json`;
    files.set(shown.key, { name, bytes: new TextEncoder().encode(designText(design)) });
  }
  return [...files.values()];
}

expose(api);
