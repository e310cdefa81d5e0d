import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { mapHeat } from '../../geometry/cutplan/cost/heat-map.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { planSheet } from '../../geometry/cutplan/sheet/plan-sheet.ts';
import { planSheets } from '../../geometry/cutplan/sheet/plan-sheets.ts';
import type { CutPass, SheetPlan } from '../../geometry/cutplan/sheet-plan.ts';
import { suggestRemedies, countMovesSaved } from '../../geometry/cutplan/sheet/slug-remedies.ts';
import { placeWitness } from '../../geometry/cutplan/drift/witness.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import type { NestedSheet, PlacedPlate } from '../../geometry/sheet/sheets.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { LASER } from '../figures/cut/demo-sheet.ts';
import { judgeSheetPlan } from '../judge/judge-sheet-plan.ts';
import { type PoolPlate, ringPlate } from '../judge/random-sheet.ts';

let small: PoolPlate;
let sheet: NestedSheet;
let plans: Map<string, PoolPlate['plan']>;
let plan: SheetPlan;

/** Two plates of a demo design at half size, and a ring that masks with a third in its waste. */
beforeAll(async () => {
  const read = readDesign(readFileSync(new URL('../../web/demo/name-over-motif.json', import.meta.url), 'utf8'));
  if ('problem' in read) throw new Error(read.problem);
  const { faces } = await loadFaces(read.design);
  const plate = makePlate(read.design, 'half', faces, createStore(), BUILT_IN);
  small = { id: 'half', diameterMm: plate.diameterMm, plan: planCuts(plate) };
  const ring = ringPlate('ring', small.diameterMm + 80, small.diameterMm + 24);
  plans = new Map([small, ring].map((p) => [p.id, p.plan]));
  const place = (id: string, of: PoolPlate, x: number, y: number, more: Partial<PlacedPlate> = {}): PlacedPlate => {
    return { id, wish: of.id, diameterMm: of.diameterMm, x, y, turnDeg: 0, locked: false, ...more };
  };
  const plates = [
    place('half#1', small, 150, 150),
    place('half#2', small, 150, 150 + small.diameterMm + 6, { turnDeg: 30 }),
    place('ring#1', ring, 500, 250),
    place('half#3', small, 500, 250, { inside: 'ring#1' }),
  ];
  sheet = { kind: 'test', number: 1, widthMm: 700, heightMm: 580, gone: [], plates, usedShare: 0 };
  plan = planSheet(sheet, plans, LASER);
});

describe('a sheet', () => {
  it('has no fault that the judge finds', () => expect(judgeSheetPlan(plan, sheet, LASER)).toEqual([]));

  it('cuts every contour of every plate once', () => {
    const wanted = sheet.plates.flatMap((p) => plans.get(p.wish)!.contours.map((c) => `${p.id}/${c.id}`));
    expect(plan.passes.map((p) => p.id).sort()).toEqual(wanted.sort());
  });

  it('cuts a plate in the waste of another before that waste falls', () => {
    const at = (id: string) => plan.passes.findIndex((p) => p.id === id);
    expect(at('half#3/rim')).toBeLessThan(at('ring#1/middle'));
    expect(at('ring#1/middle')).toBeLessThan(at('ring#1/rim'));
  });

  it('is the same every time', () => expect(planSheet(sheet, plans, LASER)).toEqual(plan));

  it('tells what is too narrow for a wide kerf', () => {
    const wide = planSheet(sheet, plans, { ...LASER, kerfMm: 4 });
    expect(wide.notes.some((n) => n.kind !== 'tight' && n.sentence.includes('narrower than the kerf'))).toBe(true);
    const cut = new Set(wide.passes.map((p) => p.id));
    const lost = new Set(wide.notes.filter((n) => n.kind === 'lost').map((n) => `${n.plate}/${n.contour}`));
    for (const { id } of plan.passes) expect(cut.has(id) || lost.has(id)).toBe(true);
  });

  it('has witness marks put in, and its ways lead past them', () => {
    const { marks } = placeWitness(sheet, { kerfMm: 0.2, leastWebMm: 2, leastOpeningMm: 1, leadInMm: 3, edgeMm: 5 });
    expect(marks.length).toBeGreaterThan(0);
    const marked = planSheet(sheet, plans, LASER, { marks });
    expect(marked.passes.filter((p) => p.kind === 'witness')).toHaveLength(2 * marks.length);
    expect(judgeSheetPlan(marked, sheet, LASER)).toEqual([]);
  });

  it('is planned once for equal sheets, whose plates only have other names', () => {
    const other = {
      ...sheet,
      number: 2,
      plates: sheet.plates.map((p) => ({ ...p, id: `${p.id}0`, ...(p.inside && { inside: `${p.inside}0` }) })),
    };
    const [first, second] = [...planSheets([sheet, other], plans, LASER)];
    expect(first).toEqual(plan);
    expect(second).toEqual(planSheet(other, plans, LASER));
  });
});

describe('the judge', () => {
  const changed = (id: string, change: (pass: CutPass) => CutPass): SheetPlan => ({
    ...plan,
    passes: plan.passes.map((p) => (p.id === id ? change(p) : p)),
  });
  const opening = () => plan.passes.find((p) => p.kind === 'opening' && p.plate === 'half#1')!;
  const faults = (of: SheetPlan) => judgeSheetPlan(of, sheet, LASER).join('\n');

  it('finds a rim that is cut too early', () => {
    const rim = plan.passes.find((p) => p.id === 'half#1/rim')!;
    const rest = plan.passes.filter((p) => p !== rim);
    expect(faults({ ...plan, passes: [rim, ...rest] })).toContain('is cut after half#1/rim around it');
  });
  it('finds a path on the wrong side', () => {
    expect(faults(changed(opening().id, (p) => ({ ...p, path: p.net })))).toContain('cuts into what stays');
  });
  it('finds a lead-in through metal', () => {
    const pass = opening();
    const pierce = { x: 150 + small.diameterMm / 2 - 1, y: 150 };
    const leadIn = [
      { ...pierce, bulge: 0 },
      { ...pass.path[0]!, bulge: 0 },
    ];
    expect(faults(changed(pass.id, (p) => ({ ...p, pierce, leadIn })))).toContain('is led in through half#1');
  });
  it('finds a way over a piece that may stand', () => {
    const straight = plan.rapids.map((r) => ({ ...r, raised: false, way: [r.way[0]!, r.way.at(-1)!] }));
    const risky = plan.slugs.map((s) => ({ ...s, tips: s.pass.endsWith('/rim') ? 0 : 1 }));
    expect(faults({ ...plan, rapids: straight, slugs: risky })).toContain('passes over the piece of');
  });
});

describe('heat and pieces', () => {
  it('is hottest where cuts follow each other closely, and less when everything cools at once', () => {
    const sum = (coolS: number) => mapHeat(plan, { ...LASER, coolS }).passes.reduce((s, p) => s + p.heat, 0);
    expect(sum(10)).toBeGreaterThan(sum(1));
    expect(sum(1e-6)).toBeCloseTo(0, 9);
  });

  it('offers turns that lower the number of pieces that tip, as planned again they do', () => {
    const mends = suggestRemedies(plan, sheet, plans, LASER);
    const turn = mends.find((m) => m.kind === 'turn');
    expect(turn).toBeDefined();
    if (turn?.kind !== 'turn') return;
    const plates = sheet.plates.map((p) => (p.id === turn.plate ? { ...p, turnDeg: turn.turnDeg } : p));
    const again = planSheet({ ...sheet, plates }, plans, LASER);
    const tips = again.slugs.filter((s) => s.plate === turn.plate).reduce((s, p) => s + p.tips, 0);
    expect(tips).toBeCloseTo(turn.after, 6);
    expect(tips).toBeLessThan(turn.before);
  });

  it('cuts a spot at the moment that the plan says, corners counted', () => {
    // A lazy head takes longer over the same lines, so each spot has cooled more before its neighbour comes.
    const sum = (accelerationMmS2: number) =>
      mapHeat(plan, { ...LASER, accelerationMmS2 }).passes.reduce((s, p) => s + p.heat, 0);
    expect(sum(200)).toBeLessThan(0.95 * sum(20_000));
  });

  it('holds by tabs the pieces that are named, and no others', () => {
    const [one, two] = plan.slugs.filter((s) => !s.pass.endsWith('/rim'));
    const held = new Set([two!.pass, 'half#1/rim']);
    const again = planSheet(sheet, plans, LASER, { held });
    expect(again.slugs.filter((s) => s.isTabbed).map((s) => s.pass)).toEqual([two!.pass]);
    expect(again.passes.filter((p) => p.tabsMm).map((p) => p.id)).toEqual([two!.pass]);
    expect(again.slugs.find((s) => s.pass === one!.pass)!.isTabbed).toBe(false);
  });

  it('cuts the words last that are named, and as many ways fewer pass their pieces as was said', () => {
    const risky = new Set(plan.slugs.filter((s) => s.tips > 0.05).map((s) => s.pass));
    const of = (p: SheetPlan) => p.passes.filter((pass) => pass.plate === 'half#1' && pass.kind === 'opening');
    const words = [...new Set(of(plan).map((p) => p.word))].filter((w) =>
      of(plan).some((p) => p.word === w && risky.has(p.id)),
    );
    const word = words.find((w) => countMovesSaved(plan, 'half#1', new Set([w]), risky) > 0)!;
    const last = new Set([word]);
    const again = planSheet(sheet, plans, LASER, { last });
    expect(judgeSheetPlan(again, sheet, LASER)).toEqual([]);
    const after = of(again).map((p) => p.word);
    expect(after.slice(after.indexOf(word)).every((w) => w === word)).toBe(true);
    expect(countMovesSaved(again, 'half#1', last, risky)).toBe(0);
    expect([...of(again)].map((p) => p.id).sort()).toEqual(
      of(plan)
        .map((p) => p.id)
        .sort(),
    );
  });

  it('plans alike sheets apart where something is wished of one', () => {
    const other = {
      ...sheet,
      number: 2,
      plates: sheet.plates.map((p) => ({ ...p, id: `${p.id}0`, ...(p.inside && { inside: `${p.inside}0` }) })),
    };
    const held = new Set([plan.slugs.find((s) => s.plate === 'half#1' && !s.pass.endsWith('/rim'))!.pass]);
    const [first, second] = [...planSheets([sheet, other], plans, LASER, { held })];
    expect(first!.slugs.filter((s) => s.isTabbed)).toHaveLength(1);
    expect(second!.slugs.filter((s) => s.isTabbed)).toHaveLength(0);
  });

  it('holds pieces above the limit by tabs where that is wished', () => {
    const held = planSheet(sheet, plans, LASER, { tabs: true });
    const tabbed = held.slugs.filter((s) => s.isTabbed);
    expect(tabbed.length).toBeGreaterThan(0);
    for (const { pass } of tabbed) expect(held.passes.find((p) => p.id === pass)!.tabsMm).toHaveLength(2);
  });
});
