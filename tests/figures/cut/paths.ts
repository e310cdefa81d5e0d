import { loadFaces } from '../../../fonts/node-faces.ts';
import type { CutPlan } from '../../../geometry/cutplan/cut-plan.ts';
import { mapHeat } from '../../../geometry/cutplan/cost/heat-map.ts';
import { HOT } from '../../../geometry/cutplan/sheet/heat-measure.ts';
import { planCuts } from '../../../geometry/cutplan/plate/plan-cuts.ts';
import { planSheet } from '../../../geometry/cutplan/sheet/plan-sheet.ts';
import type { SheetPlan } from '../../../geometry/cutplan/sheet-plan.ts';
import { findTour } from '../../../geometry/cutplan/tour/find-tour.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import type { NestedSheet } from '../../../geometry/sheet/sheets.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { OPTIMA, readInstance, roundedDistance, tsplibFolder } from '../../cutplan/tsplib.ts';
import { judgeSheetPlan, KERF_ERROR_MM, sweptErrorMm } from '../../judge/judge-sheet-plan.ts';
import { randomDesign } from '../../judge/random-design.ts';
import { type PoolPlate, randomSheet } from '../../judge/random-sheet.ts';
import { type Claim, type Measured, once, rounded } from '../claim.ts';
import { demoPlates } from '../main/demo-plates.ts';
import { demoSheet, LASER, nearestFirstMm } from './demo-sheet.ts';

const SEEDS = 100;
/** Designs that the seeded sheets are filled from; more openings than this only cost time. */
const POOL_SEEDS = 24;
const POOL_OPENINGS = 80;

/** Order and paths: the tour, the ways of the head, what another library finds, heat. */
export const PATH_CLAIMS: readonly Claim[] = [
  {
    name: 'tour-tsplib',
    wanted: 'at most 2 % over the published optimum',
    measure: () => Promise.resolve(tourOverOptimum()),
  },
  {
    name: 'rapids',
    wanted: 'at most 0.6 of cutting nearest-first, all demo sheets together',
    async measure() {
      const sheets = await demoSheets();
      const ways = sheets.map(({ title, plan, sheet, plans }) => {
        return { title, mm: plan.rapidMm, nearestMm: nearestFirstMm(plan, sheet, plans, LASER) };
      });
      const sum = (of: (w: (typeof ways)[number]) => number) => ways.reduce((s, w) => s + of(w), 0);
      const share = sum((w) => w.mm) / sum((w) => w.nearestMm);
      const each = ways.map((w) => `${w.title} ${rounded(w.mm / w.nearestMm)}`).join(', ');
      return { value: rounded(share), unit: `of nearest-first (${each})`, ok: ways.length > 0 && share <= 0.6 };
    },
  },
  {
    name: 'paths-checked',
    wanted: '0 faults',
    async measure() {
      const faults: string[] = [];
      let passes = 0;
      const demos = await demoPairs();
      for (const { plan, sheet } of demos) faults.push(...judgeSheetPlan(plan, sheet, LASER));
      const pool = await seededPool();
      for (let seed = 1; seed <= SEEDS; seed++) {
        const { sheet, settings, plans } = randomSheet(seed, pool);
        const plan = planSheet(sheet, plans, settings);
        passes += plan.passes.length;
        faults.push(...judgeSheetPlan(plan, sheet, settings).map((fault) => `seed ${seed}: ${fault}`));
      }
      passes += demos.reduce((sum, { plan }) => sum + plan.passes.length, 0);
      const first = faults.length > 0 ? `, first: ${faults[0]}` : '';
      const unit = `faults in ${passes} passes of ${demos.length} demo and ${SEEDS} seeded sheets${first}`;
      return { value: faults.length, unit, ok: faults.length === 0 && passes > 0 };
    },
  },
  {
    name: 'kerf-swept',
    wanted: `at most ${KERF_ERROR_MM} mm off the true shape`,
    async measure() {
      const demos = await demoPairs();
      const passes = demos.flatMap(({ plan }) => plan.passes);
      const worst = passes.reduce((most, pass) => Math.max(most, sweptErrorMm(pass, LASER.kerfMm)), 0);
      const unit = `mm, ${passes.length} passes of the demo designs`;
      return { value: rounded(worst), unit, ok: passes.length > 0 && worst <= KERF_ERROR_MM };
    },
  },
  {
    name: 'heat',
    wanted: 'less than the shortest way leaves, for at most 4 % more of it',
    async measure() {
      const [usual, short, most] = [await demoSheets(), await plannedSheets(0), await plannedSheets(0.5)];
      const hot = (plans: readonly Planned[]) => excessOf(plans) / excessOf(short);
      const longer = (plans: readonly Planned[]) => (waysMm(plans) / waysMm(short) - 1) * 100;
      const half = `${rounded(hot(most))} for ${rounded(longer(most))} % more where half as much again is allowed`;
      const unit = `of the heat over the limit for ${rounded(longer(usual))} % more way (${half})`;
      return { value: rounded(hot(usual)), unit, ok: hot(usual) < 1 && longer(usual) <= 4 };
    },
  },
];

function tourOverOptimum(): Measured {
  const folder = tsplibFolder();
  if (!folder) return { value: 'skipped', unit: '(no TSPLIB on this machine)', ok: true };
  const found = OPTIMA.map(([name, optimum]) => {
    const groups = readInstance(folder, name).map((p) => ({ points: [p] }));
    return { name, over: (findTour(groups, { distance: roundedDistance }).lengthMm / optimum - 1) * 100 };
  });
  const worst = Math.max(...found.map((f) => f.over));
  const least = Math.min(...found.map((f) => f.over));
  const all = found.map((f) => `${f.name} ${rounded(f.over)}`).join(', ');
  return { value: rounded(worst), unit: `% (${all})`, ok: worst <= 2 && least >= 0 };
}

interface Planned {
  readonly title: string;
  readonly sheet: NestedSheet;
  readonly plans: ReadonlyMap<string, CutPlan>;
  readonly plan: SheetPlan;
}

/** A sheet of every demo design: eight plates of its large and four of its half size. */
export const demoSheets = once(() => plannedSheets());

/** One large and one half plate of each: copies would be looked at in vain. */
const demoPairs = once(() =>
  plannedSheets(undefined, (sheet) => ({ ...sheet, plates: [sheet.plates[0]!, sheet.plates.at(-1)!] })),
);

async function plannedSheets(
  extraForHeat?: number,
  taken: (sheet: NestedSheet) => NestedSheet = (sheet) => sheet,
): Promise<Planned[]> {
  const demos = await demoPlates();
  return [...new Set(demos.map((d) => d.design))].map((design) => {
    const own = demos.filter((d) => d.design === design);
    const plans = new Map(own.map((d) => [d.plate.plateId, d.plan]));
    const [large, half] = own.map((d) => ({ id: d.plate.plateId, diameterMm: d.plate.diameterMm }));
    const sheet = taken(demoSheet(large!, half!));
    const wishes = extraForHeat === undefined ? {} : { extraForHeat };
    return { title: design.title, sheet, plans, plan: planSheet(sheet, plans, LASER, wishes) };
  });
}

/** How far the hottest spots are above what is hot, added up. */
function excess(plan: SheetPlan): number {
  return mapHeat(plan, LASER).passes.reduce((sum, { heat }) => sum + Math.max(0, heat - HOT), 0);
}

function excessOf(plans: readonly Planned[]): number {
  return plans.reduce((sum, p) => sum + excess(p.plan), 0);
}

function waysMm(plans: readonly Planned[]): number {
  return plans.reduce((sum, p) => sum + p.plan.rapidMm, 0);
}

const seededPool = once(async (): Promise<PoolPlate[]> => {
  const pool: PoolPlate[] = [];
  for (let seed = 1; seed <= POOL_SEEDS; seed++) {
    const design = randomDesign(seed);
    const { faces } = await loadFaces(design);
    const plate = makePlate(design, 'plate', faces, createStore(), BUILT_IN);
    const plan = planCuts(plate);
    if (plan.pierces <= POOL_OPENINGS) pool.push({ id: `seed-${seed}`, diameterMm: plate.diameterMm, plan });
  }
  return pool;
});
