import { describe, expect, it } from 'vitest';
import { settingsFor } from '../../geometry/cutplan/cost/settings-for.ts';
import { closeRun, runLengthMm, sampleRun } from '../../geometry/cutplan/contour-walk.ts';
import { runsOf } from '../../geometry/cutplan/pass-runs.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { planSheet } from '../../geometry/cutplan/sheet/plan-sheet.ts';
import { tabRuleFor } from '../../geometry/cutplan/tab-rule.ts';
import type { CutPass, CutSettings } from '../../geometry/cutplan/sheet-plan.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { contourPart } from '../../geometry/measure/contour-part.ts';
import type { Point } from '../../geometry/shapes.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { LASER } from '../figures/cut/demo-sheet.ts';
import { handPlate } from '../files/hand-plate.ts';
import { marksOf, sheetOfThree } from './drift-set-up.ts';

const SHEET = sheetOfThree();
const PLANS = new Map(SHEET.plates.map((p) => [p.wish, planCuts(handPlate(p.diameterMm))]));
const OPENINGS = SHEET.plates.flatMap((p) =>
  PLANS.get(p.wish)!.contours.flatMap((c) => (c.kind === 'opening' ? [`${p.id}/${c.id}`] : [])),
);

/** Every opening of the sheet held, and its witness marks. */
function held(settings: CutSettings) {
  const plan = planSheet(SHEET, PLANS, settings, { marks: marksOf(1), held: new Set(OPENINGS) });
  return { plan, tabbed: plan.passes.filter((p) => (p.tabsMm?.length ?? 0) > 0) };
}

function beamOf(pass: CutPass): Point[] {
  return runsOf(pass).flatMap(({ leadIn, cut, closed }) => [
    ...sampleRun(leadIn, 0.05),
    ...sampleRun(closed ? closeRun(cut) : cut, 0.05),
  ]);
}

const MACHINES = [
  ['a laser', { ...LASER, tab: tabRuleFor(0.2, 1.5) }],
  ['a plasma torch', { ...LASER, kerfMm: 2, leadInMm: 5, tab: tabRuleFor(2, 3) }],
] as const;

describe('small tabs', () => {
  it.each(MACHINES)('of %s: every run is pierced in the waste and led in', (_, settings) => {
    const { tabbed } = held(settings);
    expect(tabbed.some((p) => p.kind === 'opening')).toBe(true);
    expect(tabbed.some((p) => p.kind === 'witness')).toBe(true);
    for (const pass of tabbed) {
      const runs = runsOf(pass);
      expect(runs).toHaveLength(pass.tabsMm!.length + 1);
      for (const { leadIn, cut } of runs) {
        // a witness ring is only so wide; its first run is led in no longer
        const leastMm = pass.kind === 'witness' ? runLengthMm(pass.leadIn) - 1e-6 : 0.5 * settings.kerfMm;
        expect(runLengthMm(leadIn)).toBeGreaterThan(leastMm);
        const [end, begin] = [leadIn.at(-1)!, cut[0]!];
        expect(Math.hypot(end.x - begin.x, end.y - begin.y)).toBeLessThan(1e-6);
      }
    }
  });
  it.each(MACHINES)('of %s: stay as wide as was said, and no lead-in cuts one off', (_, settings) => {
    const { tabbed } = held(settings);
    for (const pass of tabbed) {
      const beam = beamOf(pass);
      for (const { fromMm, toMm } of pass.tabsMm!) {
        const half = settings.kerfMm / 2;
        expect(toMm - fromMm - settings.kerfMm).toBeCloseTo(settings.tab.widthMm, 6);
        // across the whole kerf, from the plate to the piece
        const [a, b] = [contourPart(pass.path, fromMm + half, toMm - half)].map((run) => [run[0]!, run.at(-1)!])[0]!;
        const long = Math.hypot(b!.x - a!.x, b!.y - a!.y);
        const left = { x: -(b!.y - a!.y) / long, y: (b!.x - a!.x) / long };
        for (const mm of [-half, 0, half]) {
          const middle = { x: (a!.x + b!.x) / 2 + left.x * mm, y: (a!.y + b!.y) / 2 + left.y * mm };
          const nearest = Math.min(...beam.map((p) => Math.hypot(p.x - middle.x, p.y - middle.y)));
          expect(nearest).toBeGreaterThan(half + 0.3 * settings.tab.widthMm);
        }
      }
    }
  });
  it('are as wide as kerf and thickness ask for, and as many as the piece is long', () => {
    // common practice, no source: half the thickness, three quarters of the kerf, 0.4 mm at the least
    expect([tabRuleFor(0.1, 0.5), tabRuleFor(0.2, 3), tabRuleFor(2, 3)].map((r) => r.widthMm)).toEqual([0.4, 1.5, 1.5]);
    const count = (settings: CutSettings) =>
      Math.max(...held(settings).tabbed.flatMap((p) => (p.kind === 'opening' ? [p.tabsMm!.length] : [])));
    const usual = { ...LASER, tab: { widthMm: 0.5, everyMm: 250 } };
    expect(count({ ...usual, tab: { widthMm: 0.5, everyMm: 40 } })).toBeGreaterThan(count(usual));
    expect(count({ ...usual, tab: { ...usual.tab, count: 3 } })).toBe(3);
  });
  it('that find no room hold nothing, and their piece counts as loose', () => {
    const { plan, tabbed } = held({ ...LASER, tab: { widthMm: 600, everyMm: 250 } });
    expect(tabbed.filter((p) => p.kind === 'opening')).toEqual([]);
    expect(plan.slugs.some((s) => s.isTabbed)).toBe(false);
  });
  it('can be said by the shop', () => {
    const { stock } = emptyDesign();
    const usual = settingsFor(BUILT_IN, stock);
    const processes = BUILT_IN.processes.map((p) => ({
      ...p,
      machine: { ...p.machine, tabMm: { value: 2.2, source: 'ours' }, tabEveryMm: { value: 90, source: 'ours' } },
    }));
    if ('problem' in usual) throw new Error(usual.problem);
    expect(usual.tab!.widthMm).toBeGreaterThanOrEqual(0.4);
    expect(settingsFor({ ...BUILT_IN, processes }, stock)).toMatchObject({ tab: { widthMm: 2.2, everyMm: 90 } });
  });
});
