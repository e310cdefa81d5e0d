import { timePlan } from '../../geometry/cutplan/cost/time-plan.ts';
import { computePrice, computeSheetShares } from '../../geometry/cutplan/cost/price.ts';
import type { SheetRest } from '../../geometry/sheet/sheets.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { OrderCost, PlanJob } from './cut-api.ts';
import type { SheetPlans } from './cut-plans.ts';

/** Time and inner cost of all sheets of an order. */
export function orderCost(
  { sheets, stock }: PlanJob,
  rest: SheetRest | undefined,
  plans: SheetPlans,
  plates: readonly { readonly wish: string; readonly diameterMm: number; readonly cuttingMm: number }[],
  book: StockBook,
): OrderCost {
  const sums = { cutS: 0, pierceS: 0, rapidS: 0, raiseS: 0, totalS: 0, cuttingMm: 0, rapidMm: 0, pierces: 0 };
  sheets.forEach((_, i) => {
    const plan = plans.plan(i);
    const time = timePlan(plan, plans.settings);
    for (const part of ['cutS', 'pierceS', 'rapidS', 'raiseS', 'totalS'] as const) sums[part] += time[part];
    sums.cuttingMm += plan.cuttingMm;
    sums.rapidMm += plan.rapidMm;
    sums.pierces += plan.passes.length;
  });
  const placed = sheets.flatMap((sheet) => sheet.plates);
  const shares = computeSheetShares(book, stock, { sheets, ...(rest && { rest }) }, () => true);
  const price =
    shares &&
    computePrice(book, stock, {
      plates: plates.flatMap(({ wish, diameterMm, cuttingMm }) => {
        const quantity = placed.filter((p) => p.wish === wish).length;
        return quantity > 0 ? [{ diameterMm, quantity, cuttingMm }] : [];
      }),
      sheets: shares,
      machineS: sums.totalS,
      setUps: sheets.length,
    });
  const { cutS, pierceS, rapidS, raiseS, ...others } = sums;
  return { ...others, times: { cutS, pierceS, rapidS, raiseS }, ...(price && { price }) };
}
