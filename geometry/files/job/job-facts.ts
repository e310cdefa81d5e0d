import { timePlan } from '../../cutplan/cost/time-plan.ts';
import type { CutSettings, SheetPlan } from '../../cutplan/sheet-plan.ts';
import type { Stock } from '../../design/schema.ts';
import { materialIn, processIn, type StockBook } from '../../stock/stock-book.ts';
import { fileNumber } from '../numbers.ts';
import { oneLine } from '../plain-text.ts';

/** What the operator must set before the sheet is cut, a line each: the same in the drawing and in the cut list. */
export function factsOf(book: StockBook, stock: Stock, settings: CutSettings, plan: SheetPlan): string[] {
  const material = materialIn(book, stock.material)?.name ?? stock.material;
  const process = processIn(book, stock.process)?.name ?? stock.process;
  const { seconds, minutes } = clockOf(timePlan(plan, settings).totalS);
  return [
    `Material: ${oneLine(material, 80)}, ${fileNumber(stock.thicknessMm)} mm`,
    `Process: ${oneLine(process, 80)}, kerf ${fileNumber(settings.kerfMm)} mm`,
    `Feed: ${Math.round(settings.feedMmMin)} mm/min, pierce ${fileNumber(settings.pierceS)} s each`,
    'Gas, nozzle and film side: as the machine table says for this material and thickness',
    `Time by the plan: ${minutes} min ${seconds} s, ${plan.passes.length} cuts`,
  ];
}

function clockOf(totalS: number): { readonly minutes: number; readonly seconds: number } {
  const whole = Math.round(totalS);
  return { minutes: Math.floor(whole / 60), seconds: whole % 60 };
}
