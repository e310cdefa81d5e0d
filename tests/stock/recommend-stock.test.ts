import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Stock } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { checkStock } from '../../geometry/stock/check-stock.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { sheetMassKg } from '../../geometry/stock/mass.ts';
import { materialIn } from '../../geometry/stock/stock-book.ts';
import { type DesignDetail, recommendStock, type StockAdvice } from '../../geometry/stock/recommend-stock.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { stockSources } from '../../geometry/stock/stock-sources.ts';
import { demoDesigns } from '../figures/main/demo-plates.ts';

const USES: readonly Stock['use'][] = ['paint', 'torch'];
const DIAMETERS = [60, 120, 219, 220, 258, 516, 649, 650, 780, 900, 1200];
const WIDTHS = [undefined, 0.2, 0.5, 0.6, 0.79, 0.8, 1, 1.2, 1.5, 2, 3];

function stockOf(advice: StockAdvice): Stock {
  if (!('stock' in advice)) throw new Error('nothing was recommended');
  return advice.stock;
}

describe('recommendStock', () => {
  it('never recommends what a check refuses, or rules the design cannot keep', () => {
    let recommended = 0;
    for (const use of USES)
      for (const diameterMm of DIAMETERS)
        for (const leastOpeningMm of WIDTHS)
          for (const leastWebMm of WIDTHS) {
            const detail: DesignDetail = { leastOpeningMm, leastWebMm };
            const advice = recommendStock(use, diameterMm, detail, BUILT_IN);
            if (!('stock' in advice)) {
              // the finest sheet of the tables, 1 mm, asks for openings of 0.6 mm and webs of 1 mm
              expect((leastOpeningMm ?? Infinity) < 0.59 || (leastWebMm ?? Infinity) < 0.99).toBe(true);
              continue;
            }
            recommended++;
            const { rules, findings } = stockRules(advice.stock, 'auto', BUILT_IN);
            expect(findings).toEqual([]);
            expect(checkStock(advice.stock, BUILT_IN)).toEqual([]);
            expect(advice.stock.use).toBe(use);
            expect(rules.leastOpeningMm).toBeLessThanOrEqual((leastOpeningMm ?? Infinity) + 0.01);
            expect(rules.leastWebMm).toBeLessThanOrEqual((leastWebMm ?? Infinity) + 0.01);
            expect(advice.reasons.length).toBeGreaterThan(1);
            for (const reason of advice.reasons) expect(reason.source).not.toBe('');
          }
    expect(recommended).toBeGreaterThan(500);
  });

  it('is 1.5 mm of 304 for a head of usual size, whatever the use', () => {
    for (const use of USES) {
      expect(stockOf(recommendStock(use, 516, {}, BUILT_IN))).toEqual({
        material: 'stainless-304',
        thicknessMm: 1.5,
        process: 'fibre-laser',
        use,
      });
    }
  });

  it('grows thinner for small plates and fine detail, and says so', () => {
    expect(stockOf(recommendStock('paint', 180, {}, BUILT_IN)).thicknessMm).toBe(1);
    const fine = recommendStock('paint', 516, { leastWebMm: 1.1 }, BUILT_IN);
    expect(stockOf(fine).thicknessMm).toBe(1);
    expect('reasons' in fine && fine.reasons.map((r) => r.code)).toContain('fine-detail');
  });

  it('takes aluminium for paint where steel is too heavy to hold, but never for the torch', () => {
    const advice = recommendStock('paint', 900, {}, BUILT_IN);
    const { material, thicknessMm } = stockOf(advice);
    expect(material).toBe('aluminium-5052');
    const kg = sheetMassKg(
      (Math.PI * 900 * 900) / 4,
      thicknessMm,
      materialIn(BUILT_IN, material)?.densityKgM3.value ?? 0,
    );
    expect(kg).toBeLessThanOrEqual(BUILT_IN.rules.heavyKg.value);
    expect(stockOf(recommendStock('torch', 900, {}, BUILT_IN)).material).toBe('stainless-304');
  });

  it('tells what 304 keeps of its stiffness at 500 °C as EN 10088-1 has it: 165 of 200 GPa', () => {
    const advice = recommendStock('torch', 516, {}, BUILT_IN);
    if (!('reasons' in advice)) throw new Error('no reasons');
    expect(advice.reasons[0]).toMatchObject({ code: 'stands-torch', atC: 500, keepsShare: 165 / 200 });
  });

  it('says when no stock is fine enough', () => {
    const advice = recommendStock('paint', 300, { leastOpeningMm: 0.1 }, BUILT_IN);
    if (!('tooFine' in advice)) throw new Error('recommended nevertheless');
    expect(advice.tooFine.detailMm).toBe(0.1);
    expect(advice.tooFine.needsMm).toBeCloseTo(0.6);
  });

  it.each(USES)('never turns a demo plate into one that is refused, for %s', async (use) => {
    for (const design of demoDesigns().slice(0, 3)) {
      const { faces } = await loadFaces(design);
      const stock = stockOf(recommendStock(use, 516, {}, BUILT_IN));
      const plate = makePlate({ ...design, stock }, 'large', faces, createStore(), BUILT_IN);
      expect(plate.findings.filter((f) => f.severity === 'stop')).toEqual([]);
    }
  });
});

describe('stockSources', () => {
  it('names a source for every number, and more of them for the torch', () => {
    const stock: Stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' };
    const paint = stockSources(stock, BUILT_IN);
    for (const { source } of paint) expect(source).not.toBe('');
    expect(stockSources({ ...stock, use: 'torch' }, BUILT_IN).map((s) => s.what)).toEqual(
      expect.arrayContaining([...paint.map((s) => s.what), 'torch-factor', 'hot-stiffness']),
    );
  });

  it('leaves out what nobody knows', () => {
    const stock: Stock = { material: 'cheese', thicknessMm: 1, process: 'teeth', use: 'paint' };
    expect(stockSources(stock, BUILT_IN).map((s) => s.what)).toEqual(['rim']);
  });
});
