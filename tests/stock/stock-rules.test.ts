import { describe, expect, it } from 'vitest';
import type { Stock } from '../../geometry/design/schema.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { materialIn, processFit, processIn } from '../../geometry/stock/stock-book.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';

const { materials: MATERIALS, processes: PROCESSES } = BUILT_IN;
const usual: Stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' };
const codes = (stock: Stock) => stockRules(stock, 'auto', BUILT_IN).findings.map((f) => `${f.severity} ${f.code}`);

/** The stock after its first mend. */
function mended(stock: Stock): Stock {
  const change = stockRules(stock, 'auto', BUILT_IN).findings[0]?.mend?.change;
  if (change?.kind !== 'set-stock') throw new Error('no mend of the stock');
  const { kind: _, ...parts } = change;
  return { ...stock, ...parts };
}

describe('the tables', () => {
  it('hold the stock of the trade, each id once', () => {
    expect(MATERIALS.map((m) => m.id)).toEqual([
      'stainless-304',
      'stainless-316',
      'stainless-430',
      'aluminium-5052',
      'aluminium-6061',
      'mild-steel',
      'polycarbonate',
      'pet-film',
      'hdpe',
      'birch-plywood',
      'pvc',
    ]);
    expect(PROCESSES.map((p) => p.id)).toEqual(['fibre-laser', 'co2-laser', 'water-jet', 'router', 'plasma']);
    expect(materialIn(BUILT_IN, 'constructor')).toBeUndefined();
    expect(processIn(BUILT_IN, '')).toBeUndefined();
  });

  it('judge every pair, with a reason unless it is usual, and never say yes without a rule for it', () => {
    for (const material of MATERIALS) {
      expect(Object.keys(material.fits).sort()).toEqual(PROCESSES.map((p) => p.id).sort());
      for (const process of PROCESSES) {
        const fit = processFit(material, process.id);
        expect(fit.reason === '', `${material.id} by ${process.id}`).toBe(fit.grade === 'yes');
        if (fit.grade !== 'never') {
          expect(process.families[material.family]?.bridge, `${material.id} by ${process.id}`).toBeDefined();
          expect(process.families[material.family]?.thicknessMm, `${material.id} by ${process.id}`).toBeDefined();
        }
      }
      expect(material.thicknesses.map((s) => s.mm)).toEqual(
        material.thicknesses.map((s) => s.mm).sort((a, b) => a - b),
      );
      expect(material.densityKgM3.source).not.toBe('');
    }
  });
});

describe('rules of 1.5 mm stainless under a fibre laser', () => {
  it('for paint and for the torch', () => {
    const paint = stockRules(usual, 'auto', BUILT_IN).rules;
    expect(paint).toEqual({
      kerfMm: 0.2,
      leastBridgeMm: 1.5,
      leastWebMm: 1.5,
      leastOpeningMm: expect.closeTo(0.6, 12) as number,
      leastInsideRadiusMm: 0.1,
      rimMarginMm: 5,
      longestSpanMm: 150,
      thicknessMm: 1.5,
      stiffness: {
        youngMPa: 200_000,
        shearMPa: expect.closeTo(76_923, 0) as number,
        yieldMPa: 230,
        densityKgM3: 7900,
        touchLimitMm: 1.5,
        sagLimitMm: 0.3,
        touchN: 5,
      },
    });
    expect(stockRules({ ...usual, use: 'torch' }, 'auto', BUILT_IN).rules.leastBridgeMm).toBe(2.25);
    expect(codes(usual)).toEqual([]);
  });

  it('a wish below the rule is raised and said, a wish above is kept in silence', () => {
    const raised = stockRules(usual, { mm: 0.8 }, BUILT_IN);
    expect(raised.rules.leastBridgeMm).toBe(1.5);
    expect(raised.findings).toHaveLength(1);
    expect(raised.findings[0]).toMatchObject({ code: 'bridge-width-raised', measuredMm: 0.8, limitMm: 1.5 });
    expect(raised.findings[0]?.sentence).toContain('0.8 mm');
    expect(stockRules(usual, { mm: 4 }, BUILT_IN)).toMatchObject({
      rules: { leastBridgeMm: 4, leastWebMm: 1.5 },
      findings: [],
    });
  });
});

describe('rules of any stock', () => {
  const all = MATERIALS.flatMap((m) =>
    PROCESSES.flatMap((p) =>
      [0.1, 0.5, 1, 1.5, 3, 6, 12].map((thicknessMm) => ({ material: m.id, process: p.id, thicknessMm })),
    ),
  );

  it('keep their order: web at most bridge, opening at least kerf, torch at least paint, thicker never less', () => {
    for (const pair of all) {
      const paint = stockRules({ ...pair, use: 'paint' }, 'auto', BUILT_IN).rules;
      const torch = stockRules({ ...pair, use: 'torch' }, 'auto', BUILT_IN).rules;
      const thicker = stockRules(
        { ...pair, thicknessMm: pair.thicknessMm * 1.3, use: 'paint' },
        'auto',
        BUILT_IN,
      ).rules;
      expect(paint.leastWebMm).toBeLessThanOrEqual(paint.leastBridgeMm);
      expect(paint.leastBridgeMm).toBeGreaterThanOrEqual(pair.thicknessMm);
      expect(paint.leastOpeningMm).toBeGreaterThanOrEqual(paint.kerfMm);
      expect(paint.rimMarginMm).toBeGreaterThan(paint.leastBridgeMm);
      expect(torch.leastBridgeMm).toBeGreaterThan(paint.leastBridgeMm);
      for (const key of ['leastBridgeMm', 'leastWebMm', 'leastOpeningMm', 'rimMarginMm', 'longestSpanMm'] as const) {
        expect(thicker[key]).toBeGreaterThanOrEqual(paint[key]);
      }
    }
  });

  it('a bit of 1/8 in cuts no slot below itself and no sharper inside corner than its half', () => {
    const { rules } = stockRules({ ...usual, material: 'aluminium-5052', process: 'router' }, 'auto', BUILT_IN);
    expect(rules.leastOpeningMm).toBe(3.175);
    expect(rules.leastInsideRadiusMm).toBe(1.5875);
  });
});

describe('what must not meet', () => {
  it.each<[string, Partial<Stock>, string]>([
    ['PVC and a laser', { material: 'pvc', process: 'co2-laser' }, 'stop material-unfit-for-process'],
    [
      'polycarbonate and a CO2 laser',
      { material: 'polycarbonate', process: 'co2-laser' },
      'stop material-unfit-for-process',
    ],
    ['stainless and a small router', { process: 'router' }, 'stop material-unfit-for-process'],
    [
      'plywood and plasma',
      { material: 'birch-plywood', process: 'plasma', thicknessMm: 3 },
      'stop material-unfit-for-process',
    ],
    [
      'aluminium and a CO2 laser',
      { material: 'aluminium-6061', process: 'co2-laser' },
      'look material-poor-for-process',
    ],
    ['thin sheet and plasma', { process: 'plasma', thicknessMm: 0.8 }, 'stop thickness-unfit-for-process'],
    ['thick sheet and a fibre laser', { thicknessMm: 40 }, 'stop thickness-unfit-for-process'],
    [
      'plywood and a torch',
      { material: 'birch-plywood', process: 'router', thicknessMm: 3, use: 'torch' },
      'stop material-unfit-for-torch',
    ],
    [
      'HDPE and a torch',
      { material: 'hdpe', process: 'router', thicknessMm: 3, use: 'torch' },
      'stop material-unfit-for-torch',
    ],
    ['aluminium and a torch', { material: 'aluminium-5052', use: 'torch' }, 'look material-poor-for-torch'],
    ['an unknown material', { material: 'unobtainium' }, 'stop unknown-material'],
    ['an unknown process', { process: 'teeth' }, 'stop unknown-process'],
  ])('%s: one finding, and its mend is clean', (_, parts, expected) => {
    const stock = { ...usual, ...parts };
    expect(codes(stock)).toEqual([expected]);
    expect(codes(mended(stock))).toEqual([]);
  });

  it('unknown names still give rules that can be drawn with', () => {
    expect(stockRules({ ...usual, material: 'x', process: 'y' }, 'auto', BUILT_IN).rules).toEqual(
      stockRules(usual, 'auto', BUILT_IN).rules,
    );
  });

  it('every mend of every pair leads to a process that is not forbidden', () => {
    for (const m of MATERIALS) {
      for (const p of PROCESSES) {
        for (const sheet of m.thicknesses) {
          const stock: Stock = { material: m.id, process: p.id, thicknessMm: sheet.mm, use: 'paint' };
          const change = stockRules(stock, 'auto', BUILT_IN).findings[0]?.mend?.change;
          if (change?.kind !== 'set-stock') continue;
          expect(codes(mended(stock)), JSON.stringify(stock)).not.toContain('stop material-unfit-for-process');
        }
      }
    }
  });
});
