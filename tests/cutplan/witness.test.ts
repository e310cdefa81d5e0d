import { describe, expect, it } from 'vitest';
import { findCheckDimensions, listCuts } from '../../geometry/cutplan/plate/check-dimensions.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { planSheet } from '../../geometry/cutplan/sheet/plan-sheet.ts';
import { placeWitness } from '../../geometry/cutplan/drift/witness.ts';
import { contourPart } from '../../geometry/measure/contour-part.ts';
import { LASER } from '../figures/cut/demo-sheet.ts';
import { handPlate } from '../files/hand-plate.ts';
import { marksOf, sheetOfThree, WISHES } from './drift-set-up.ts';

const sheet = sheetOfThree();

describe('witness marks', () => {
  it.each([1, 3])('are two a stage of every plate, far apart, for %d stages', (stages) => {
    const { marks, findings } = placeWitness(sheet, { ...WISHES, stages });
    expect(findings).toEqual([]);
    expect(marks.length).toBe(sheet.plates.length * 2 * stages);
    for (const plate of sheet.plates) {
      const [a, b] = marks.filter((m) => m.plate === plate.id && m.stage === stages);
      expect(Math.hypot(a!.at.x - b!.at.x, a!.at.y - b!.at.y)).toBeGreaterThan(0.8 * plate.diameterMm);
    }
  });
  it('keep a web from rims, edges, lost parts and each other', () => {
    const marks = marksOf(3);
    for (const [i, { at, outerMm }] of marks.entries()) {
      const r = outerMm / 2;
      for (const p of sheet.plates) {
        expect(Math.hypot(p.x - at.x, p.y - at.y) - p.diameterMm / 2 - r).toBeGreaterThanOrEqual(WISHES.leastWebMm);
      }
      for (const g of sheet.gone) {
        expect(Math.hypot(g.x - at.x, g.y - at.y) - g.radiusMm - r).toBeGreaterThanOrEqual(WISHES.leastWebMm);
      }
      expect(Math.min(at.x, at.y, sheet.widthMm - at.x, sheet.heightMm - at.y) - r).toBeGreaterThanOrEqual(10);
      for (const other of marks.slice(i + 1)) {
        const gap = Math.hypot(other.at.x - at.x, other.at.y - at.y) - r - other.outerMm / 2;
        expect(gap).toBeGreaterThanOrEqual(WISHES.leastWebMm - 1e-9);
      }
    }
  });
  it('say so where there is no room', () => {
    const tight = { ...sheet, widthMm: 520, heightMm: 520, gone: [] };
    const plates = [{ ...sheet.plates[0]!, x: 260, y: 260, diameterMm: 516 }];
    const { findings } = placeWitness({ ...tight, plates }, { ...WISHES, edgeMm: 75 });
    expect(findings.map((f) => f.code)).toEqual(['no-room-for-witness']);
  });
  it('are cut first and last of their plate', () => {
    const marks = marksOf(2);
    const plans = new Map([
      ['a#1', planCuts(handPlate(508))],
      ['a#2', planCuts(handPlate(508))],
      ['b#1', planCuts(handPlate(254))],
    ]);
    const { passes } = planSheet(sheet, plans, LASER, { marks });
    const at = new Map(passes.map((p, i) => [p.id, i]));
    for (const mark of marks) {
      const own = passes.filter((p) => p.plate === mark.plate && p.kind !== 'witness').map((p) => at.get(p.id)!);
      expect(at.get(`${mark.id}/small`)).toBeLessThan(Math.min(...own));
      if (mark.stage === 2) expect(at.get(`${mark.id}/large`)).toBeGreaterThan(Math.max(...own));
      else expect(at.get(`${mark.id}/large`)).toBeLessThan(Math.max(...own));
    }
    // A calliper finds the ring whole on its four sides: pierce, lead-in and tabs lie between them.
    for (const pass of passes.filter((p) => p.kind === 'witness')) {
      const mark = marks.find(({ id }) => pass.id.startsWith(`${id}/`))!;
      const tabs = (pass.tabsMm ?? []).flatMap(({ fromMm, toMm }) =>
        contourPart(pass.path, (fromMm + toMm) / 2, toMm).slice(0, 1),
      );
      for (const p of [...pass.leadIn, ...tabs]) {
        const [dx, dy] = [Math.abs(p.x - mark.at.x), Math.abs(p.y - mark.at.y)];
        expect(Math.abs(dx - dy)).toBeLessThan(0.05);
      }
    }
    for (const pass of passes) for (const id of pass.after) expect(at.get(id)).toBeLessThan(at.get(pass.id)!);
  });
});

describe('check dimensions', () => {
  it('run from early cuts to late ones, across the plate', () => {
    const plan = planCuts(handPlate(508));
    const dimensions = findCheckDimensions(listCuts(plan));
    expect(dimensions.map((d) => d.label)).toEqual(['A', 'B', 'C']);
    const order = plan.contours.map((c) => c.id);
    for (const d of dimensions) {
      expect(order.indexOf(d.early)).toBeLessThan(order.length / 3);
      expect(order.indexOf(d.late)).toBeGreaterThan((order.length * 2) / 3 - 2);
      expect(d.mm).toBeCloseTo(Math.hypot(d.to.x - d.from.x, d.to.y - d.from.y), 9);
    }
    // Beads of 0.03 R stand at 0.88 R: the farthest edges lie at 0.91 R, and to the rim there is that and the radius.
    expect(dimensions[0]!.mm).toBeGreaterThan(254);
    expect(dimensions[2]!.mm).toBeCloseTo(254 * 1.91, 1);
  });
});
