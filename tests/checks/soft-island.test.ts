import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Hang, Island } from '../../geometry/bridges/types.ts';
import { surfaceOf } from '../../geometry/barrel/surface-of.ts';
import type { CheckInput } from '../../geometry/checks/input.ts';
import { checkSoftIsland } from '../../geometry/checks/soft-island.ts';
import { emptyDesign, newLineText } from '../../geometry/design/defaults.ts';
import type { Design, Stock } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';

const STEEL: Stock = { material: 'stainless-304', process: 'fibre-laser', thicknessMm: 1.5, use: 'paint' };
const STIFF: Hang = { touchMm: 0.2, softAt: { x: 3, y: 4 }, sagMm: 0.01, rootMPa: 60 };

function check(hangs: readonly Partial<Hang>[], stock = STEEL) {
  const design: Design = { ...emptyDesign(), stock, elements: [{ ...newLineText('name', 'cinzel-700'), text: 'BOB' }] };
  const islands = hangs.map((hang, i): Island => ({
    id: `i${i}`,
    elementIds: ['name'],
    at: { x: i, y: 0 },
    areaMm2: 100 * Math.PI,
    bridgeIds: [],
    small: false,
    hang: { ...STIFF, softAt: { x: i, y: 1 }, ...hang },
  }));
  const input: CheckInput = {
    design,
    plate: design.plates[0]!,
    diameterMm: 500,
    lying: surfaceOf(design, 500, design.stock.thicknessMm),
    rules: stockRules(stock, 'auto', BUILT_IN).rules,
    book: BUILT_IN,
    layout: { shapes: [], extents: [], findings: [] },
    openings: [],
    bridges: [],
    islands,
    unbridged: [],
  };
  return checkSoftIsland(input);
}

describe('a soft island', () => {
  it.each<[string, Partial<Hang>, string[]]>([
    ['stiff', {}, []],
    ['just within every limit', { touchMm: 1.5, sagMm: 0.3, rootMPa: 230 }, []],
    ['touched too far', { touchMm: 1.51 }, ['look']],
    ['touched four times too far', { touchMm: 6.01 }, ['stop']],
    ['sagging', { sagMm: 0.31 }, ['look']],
    ['sagging four times too far', { sagMm: 1.21 }, ['stop']],
    ['on bars that yield at the skin', { rootMPa: 231 }, ['look']],
    ['on bars that bend over: 1.5 times, the shape factor of a rectangle', { rootMPa: 346 }, ['stop']],
  ])('%s', (_, hang, severities) => {
    expect(check([hang]).map((f) => f.severity)).toEqual(severities);
  });

  it('says how far, how far it may, where and what to do', () => {
    const [finding] = check([{ touchMm: 2.4 }]);
    expect(finding).toMatchObject({
      code: 'soft-island',
      elementIds: ['name'],
      measuredMm: 2.4,
      limitMm: 1.5,
      place: { kind: 'point', at: { x: 0, y: 0 }, radiusMm: 11.5 },
    });
    expect(finding?.sentence).toBe(
      'An inner piece of “BOB” gives by 2.4 mm under a touch of 5 N; more than 1.5 mm lets paint creep under it. ' +
        'Choose thicker sheet or wider bridges, or make the letters smaller.',
    );
  });

  it('offers the next sheet that should do, if there is one that the process takes', () => {
    const mend = (hang: Partial<Hang>, stock?: Stock) => check([hang], stock)[0]?.mend?.change;
    expect(mend({ touchMm: 1.6 })).toEqual({ kind: 'set-stock', thicknessMm: 1.5875 });
    expect(mend({ touchMm: 3 })).toEqual({ kind: 'set-stock', thicknessMm: 1.984375 });
    expect(mend({ touchMm: 9 })).toEqual({ kind: 'set-stock', thicknessMm: 3 });
    expect(mend({ touchMm: 9 }, { ...STEEL, thicknessMm: 3.175 })).toBeUndefined();
  });

  it('thin sheet may give by its thickness only', () => {
    expect(check([{ touchMm: 0.9 }], { ...STEEL, thicknessMm: 0.8 })[0]).toMatchObject({ limitMm: 0.8 });
    expect(check([{ touchMm: 0.79 }], { ...STEEL, thicknessMm: 0.8 })).toEqual([]);
  });

  it('plastic springs back: it may give three times as far, and is never stopped', () => {
    const plastic: Stock = { material: 'polycarbonate', process: 'router', thicknessMm: 1, use: 'paint' };
    expect(check([{ touchMm: 2.9, rootMPa: 500 }], plastic)).toEqual([]);
    expect(check([{ touchMm: 30 }], plastic).map((f) => f.severity)).toEqual(['look']);
  });

  it('two parts of one island are one finding, and the softest come first', () => {
    const same = { softAt: { x: 9, y: 9 }, touchMm: 2 };
    expect(check([same, same])).toHaveLength(1);
    expect(check([2, 5, 3].map((touchMm) => ({ touchMm }))).map((f) => f.measuredMm)).toEqual([5, 3, 2]);
  });
});

describe('plates made', () => {
  async function made(stock: Stock, capHeight: number) {
    const design: Design = {
      ...emptyDesign(),
      head: { source: { kind: 'measured', alongMm: 560, acrossMm: 560 }, clearanceMm: 6, crownMm: 0 },
      stock,
      elements: [{ ...newLineText('name', 'alfa-slab-one-400'), text: 'O', x: 0, y: 0, capHeight }],
    };
    const { faces } = await loadFaces(design);
    return makePlate(design, design.plates[0]!.id, faces, createStore(), BUILT_IN);
  }
  const soft = (plate: Awaited<ReturnType<typeof made>>) => plate.findings.filter((f) => f.code === 'soft-island');

  it('a great O is stiffened in 1 mm steel, and said to be soft in 0.5 mm', async () => {
    const thin = await made({ ...STEEL, thicknessMm: 1 }, 0.5);
    expect(soft(thin)).toEqual([]);
    expect(thin.bridges.some((b) => b.widthMm > thin.rules.leastBridgeMm)).toBe(true);
    const foil = await made({ ...STEEL, thicknessMm: 0.5 }, 0.9);
    const [finding] = soft(foil);
    expect(finding?.measuredMm).toBeGreaterThan(0.5);
    expect(foil.verdict).not.toBe('ready');
    const change = finding?.mend?.change;
    if (change?.kind !== 'set-stock') throw new Error('no mend');
    const better = await made({ ...STEEL, thicknessMm: change.thicknessMm! }, 0.9);
    expect(soft(better)).toEqual([]);
  });

  it('film is not judged: it lies on the wood', async () => {
    const plate = await made({ material: 'pet-film', process: 'co2-laser', thicknessMm: 0.25, use: 'paint' }, 0.5);
    expect(plate.islands).toHaveLength(1);
    expect(soft(plate)).toEqual([]);
  });
});
