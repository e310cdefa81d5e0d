import { describe, expect, it } from 'vitest';
import { gaugeInches, gaugeMm, type GaugeSystem } from '../../geometry/stock/gauges.ts';
import { sheetMassKg } from '../../geometry/stock/mass.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { materialIn } from '../../geometry/stock/stock-book.ts';

/** What charts print, inches: stainless exactly, the two others rounded to four places. */
const CHART: readonly [number, number, number, number][] = [
  [10, 0.140625, 0.1345, 0.1019],
  [11, 0.125, 0.1196, 0.0907],
  [12, 0.109375, 0.1046, 0.0808],
  [14, 0.078125, 0.0747, 0.0641],
  [16, 0.0625, 0.0598, 0.0508],
  [18, 0.05, 0.0478, 0.0403],
  [20, 0.0375, 0.0359, 0.032],
  [22, 0.03125, 0.0299, 0.0253],
  [24, 0.025, 0.0239, 0.0201],
  [26, 0.01875, 0.0179, 0.0159],
];

describe('sheet gauges', () => {
  // 15 U.S.C. 206 (US Standard Gauge), read down to 20 gauge; thinner rows follow its ounce rule, from memory.
  it.each(CHART)('%i gauge stainless', (gauge, stainless) => {
    expect(gaugeInches('stainless', gauge)).toBe(stainless);
  });

  // Manufacturers' Standard Gauge, 41.82 lb per square foot and inch; a trade gauge chart.
  it.each(CHART)('%i gauge carbon steel', (gauge, _, carbon) => {
    expect(Math.abs((gaugeInches('carbon', gauge) ?? 0) - carbon)).toBeLessThanOrEqual(0.00006);
  });

  // Brown & Sharpe / American Wire Gauge, ASTM B258: 36 = 0.005 in, 0000 = 0.46 in, 39 steps; a trade gauge chart.
  it.each(CHART)('%i gauge aluminium', (gauge, _, __, aluminium) => {
    expect(Math.abs((gaugeInches('aluminium', gauge) ?? 0) - aluminium)).toBeLessThanOrEqual(0.00006);
  });

  it('16 gauge is three different sheets, 1.5875 mm only in stainless (15 U.S.C. 206)', () => {
    const systems: GaugeSystem[] = ['stainless', 'carbon', 'aluminium'];
    expect(gaugeMm('stainless', 16)).toBe(1.5875);
    expect(new Set(systems.map((s) => gaugeInches(s, 16)?.toFixed(4))).size).toBe(3);
    expect(gaugeInches('stainless', 9)).toBeUndefined();
  });
});

describe('sheet mass', () => {
  // A maker's published data sheet for birch plywood, 1220 x 2440 mm: mass of a sheet by thickness and density.
  it.each([
    [12, 695, 24.8],
    [9, 710, 19.0],
    [6.5, 670, 13.0],
  ])('birch plywood of %f mm at %f kg/m3 weighs %f kg', (t, density, kg) => {
    expect(Math.abs(sheetMassKg(1220 * 2440, t, density) - kg)).toBeLessThanOrEqual(0.1);
  });

  // EN 10088-1 gives 7900 kg/m3 for 304, US data sheets 8000: either within 1.5 %.
  it.each([7900, 8000])('304 stainless lies within 1.5 %% of %f kg/m3', (published) => {
    const own = materialIn(BUILT_IN, 'stainless-304')?.densityKgM3.value ?? 0;
    expect(Math.abs(own / published - 1)).toBeLessThanOrEqual(0.015);
  });

  // Aluminum Association: 0.097 and 0.098 lb/in3. 1 lb/in3 = 27679.9 kg/m3 (international pound and inch).
  it.each([
    ['aluminium-5052', 0.097],
    ['aluminium-6061', 0.098],
  ])('%s weighs %f lb/in3', (id, lbPerIn3) => {
    const own = materialIn(BUILT_IN, id)?.densityKgM3.value ?? 0;
    expect(Math.abs(own / ((lbPerIn3 * 0.45359237) / 0.0254 ** 3) - 1)).toBeLessThanOrEqual(0.006);
  });

  // 15 U.S.C. 206: 16 gauge is 2.5 lb per square foot of iron at 480 lb per cubic foot.
  it('16 gauge at the density of the law is 2.5 lb per square foot', () => {
    const kg = sheetMassKg(304.8 * 304.8, gaugeMm('stainless', 16) ?? 0, (480 * 0.45359237) / 0.3048 ** 3);
    expect(kg / 0.45359237).toBeCloseTo(2.5, 9);
  });
});
