import type { CutPlan } from '../../geometry/cutplan/cut-plan.ts';
import { mapHeat } from '../../geometry/cutplan/cost/heat-map.ts';
import { type Bite, findBites } from '../../geometry/cutplan/sheet/find-bites.ts';
import { planSheets } from '../../geometry/cutplan/sheet/plan-sheets.ts';
import { settingsFor } from '../../geometry/cutplan/cost/settings-for.ts';
import type { CutSettings, SheetPlan } from '../../geometry/cutplan/sheet-plan.ts';
import { suggestRemedies } from '../../geometry/cutplan/sheet/slug-remedies.ts';
import { placeWitness } from '../../geometry/cutplan/drift/witness.ts';
import type { NestedSheet, PlateWish } from '../../geometry/sheet/sheets.ts';
import { wasteInPlace } from '../../geometry/sheet/place-waste.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { StockRules } from '../../geometry/stock/rules.ts';
import type { PlanJob, PlannedSheet } from './cut-api.ts';

/** What planning needs of the order. */
export interface Drawn {
  readonly plans: ReadonlyMap<string, CutPlan>;
  readonly wastes: ReadonlyMap<string, NonNullable<PlateWish['waste']>>;
  readonly rules: StockRules;
  readonly book: StockBook;
}

/** Plans of the order as it lies now, each made when it is first asked for. */
export interface SheetPlans {
  plan(sheet: number): SheetPlan;
  shown(sheet: number): PlannedSheet;
  readonly settings: CutSettings;
  /** Of a sheet: cuts that would spoil a plate. */
  bites(sheet: number): readonly Bite[];
}

export function createSheetPlans(job: PlanJob, drawn: Drawn): SheetPlans {
  const found = settingsFor(drawn.book, job.stock);
  if ('problem' in found) throw new RangeError(found.problem);
  const settings = found;
  const placed = job.sheets.map((sheet) => (job.wishes.witness ? marksOn(sheet) : { marks: [], findings: [] }));
  const marksOf = (sheet: NestedSheet) => placed[job.sheets.indexOf(sheet)]?.marks ?? [];
  const { tabs, held, last } = job.wishes;
  const sheetWishes = { tabs, held: new Set(held), last: new Set(last) };
  const coming = planSheets(job.sheets, drawn.plans, settings, sheetWishes, marksOf);
  const made: SheetPlan[] = [];

  function marksOn(sheet: NestedSheet) {
    return placeWitness(sheet, {
      kerfMm: settings.kerfMm,
      leastWebMm: drawn.rules.leastWebMm,
      leastOpeningMm: drawn.rules.leastOpeningMm,
      leadInMm: settings.leadInMm,
      edgeMm: job.gaps.edgeMm,
      stages: job.wishes.stages,
      waste: sheet.plates.flatMap((plate) =>
        (drawn.wastes.get(plate.wish) ?? []).map((waste) => ({ ...wasteInPlace(waste, plate), plate: plate.id })),
      ),
    });
  }

  function plan(sheet: number): SheetPlan {
    while (made.length <= sheet) {
      const next = coming.next();
      if (next.done) throw new RangeError(`there is no sheet ${sheet + 1}`);
      made.push(next.value);
    }
    return made[sheet]!;
  }

  function bites(sheet: number): readonly Bite[] {
    return findBites(job.sheets[sheet]!, plan(sheet), settings.kerfMm);
  }

  return {
    settings,
    plan,
    bites,
    shown(at) {
      const sheet = job.sheets[at]!;
      const made = plan(at);
      return {
        plan: made,
        settings,
        marks: placed[at]?.marks ?? [],
        findings: (placed[at]?.findings ?? []).map(({ sentence, words }) => ({ sentence, ...(words && { words }) })),
        mends: suggestRemedies(made, sheet, drawn.plans, settings),
        heat: mapHeat(made, settings),
        bites: bites(at),
      };
    },
  };
}
