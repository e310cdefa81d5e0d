import { describe, expect, it } from 'vitest';
import { leastGapsFor, gapsFor } from '../../geometry/cutplan/cost/settings-for.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { findBites } from '../../geometry/cutplan/sheet/find-bites.ts';
import { planSheet } from '../../geometry/cutplan/sheet/plan-sheet.ts';
import type { NestedSheet } from '../../geometry/sheet/sheets.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { processIn } from '../../geometry/stock/stock-book.ts';
import { LASER } from '../figures/cut/demo-sheet.ts';
import { handPlate } from '../files/hand-plate.ts';

const PLANS = new Map([['a', planCuts(handPlate(300))]]);

/** Four plates of 300 mm in a square, so far apart and so far from the edge. */
function fourPlates(betweenMm: number, edgeMm: number): NestedSheet {
  const at = [edgeMm + 150, edgeMm + 450 + betweenMm];
  const plates = at.flatMap((y) => at.map((x) => ({ x, y })));
  return {
    kind: 'rack',
    number: 1,
    widthMm: 2 * edgeMm + 600 + betweenMm,
    heightMm: 2 * edgeMm + 600 + betweenMm,
    gone: [],
    plates: plates.map((p, i) => ({
      id: `a#${i + 1}`,
      wish: 'a',
      diameterMm: 300,
      ...p,
      turnDeg: 20 * i,
      locked: false,
    })),
    usedShare: 0,
  };
}

function bitesAt(betweenMm: number, edgeMm: number, kerfMm: number, leadInMm = 3) {
  const sheet = fourPlates(betweenMm, edgeMm);
  return findBites(sheet, planSheet(sheet, PLANS, { ...LASER, kerfMm, leadInMm }), kerfMm);
}

describe('cuts that run into a plate', () => {
  it('are found where plates touch, with the plate, the place and how deep', () => {
    const bites = bitesAt(0, 10, 0.2);
    expect(new Set(bites.map((b) => b.plate))).toEqual(new Set(['a#1', 'a#2', 'a#3', 'a#4']));
    // a kerf beside the neighbour's rim reaches a whole kerf into the plate that touches it
    for (const { deepMm } of bites) expect(deepMm).toBeCloseTo(0.2, 2);
    expect(bites[0]!.sentence).toMatch(/runs 0\.2\d? mm into/);
  });
  it('are found off the sheet', () => {
    const bites = bitesAt(10, 0.05, 0.2);
    expect(bites).toHaveLength(4);
    expect(bites.every((b) => b.plate === undefined)).toBe(true);
  });
  it.each([...BUILT_IN.processes.map(({ id }) => id)])('are none at the least gaps that %s asks for', (id) => {
    const process = processIn(BUILT_IN, id)!;
    for (const thicknessMm of [0.5, 3, 12]) {
      const least = leastGapsFor(process, thicknessMm);
      const usual = gapsFor(process);
      expect(least.betweenMm).toBeLessThanOrEqual(usual.betweenMm);
      expect(least.edgeMm).toBeLessThanOrEqual(usual.edgeMm);
      expect(least.betweenMm).toBeGreaterThan(2 * process.kerfMm.value);
    }
    const { betweenMm, edgeMm } = leastGapsFor(process, 0.1);
    expect(bitesAt(betweenMm, edgeMm, process.kerfMm.value, process.machine.leadInMm.value)).toEqual([]);
  });
});
