import { describe, expect, it } from 'vitest';
import { estimateShare, computePrice, findSheetPrice, computeSheetShares } from '../../geometry/cutplan/cost/price.ts';
import { gapsFor, settingsFor } from '../../geometry/cutplan/cost/settings-for.ts';
import type { Stock } from '../../geometry/design/schema.ts';
import type { NestedSheet, PlacedPlate } from '../../geometry/sheet/sheets.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { minorDigits, toMinor } from '../../geometry/stock/money.ts';
import { processIn, type StockBook } from '../../geometry/stock/stock-book.ts';

const STEEL: Stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' };

describe('money', () => {
  // ISO 4217 as the engine's own tables have it, for currencies whose cash and code agree.
  it.each(['EUR', 'USD', 'GBP', 'CHF', 'SEK', 'JPY', 'KRW', 'CLP', 'VND', 'BHD', 'KWD', 'TND'])('%s', (currency) => {
    const { maximumFractionDigits } = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions();
    expect(minorDigits(currency)).toBe(maximumFractionDigits);
  });

  it.each([
    [1.005, 'EUR', 101],
    [-1.005, 'EUR', -101],
    [0.285, 'EUR', 29],
    [2.675, 'USD', 268],
    [0.5, 'JPY', 1],
    [-0.5, 'JPY', -1],
    [0.0005, 'KWD', 1],
    [0.004, 'EUR', 0],
    [-0.004, 'EUR', 0],
  ])('%f %s is %i', (amount, currency, minor) => expect(toMinor(amount, currency)).toBe(minor));
});

describe('how the machine cuts a stock', () => {
  const feed = (thicknessMm: number, more: Partial<Stock> = {}) => {
    const settings = settingsFor(BUILT_IN, { ...STEEL, thicknessMm, ...more });
    if ('problem' in settings) throw new Error(settings.problem);
    return settings.feedMmMin;
  };

  it('takes the row of the thickness, and the line between two rows', () => {
    expect(feed(1.5)).toBe(12_000);
    expect(feed(1.75)).toBe(10_000);
    expect(feed(0.3)).toBe(feed(0.5));
  });

  it('says why it cannot be said', () => {
    const problem = (more: Partial<Stock>) => {
      const settings = settingsFor(BUILT_IN, { ...STEEL, ...more });
      return 'problem' in settings ? settings.problem : '';
    };
    expect(problem({ thicknessMm: 20 })).toMatch(/up to 12 mm, not for 20 mm/);
    expect(problem({ process: 'router' })).toMatch(/no speed for 304 stainless steel by Router/);
    expect(problem({ process: 'teeth' })).toMatch(/Nobody here knows the process “teeth”/);
    expect(problem({ material: 'gold' })).toMatch(/no speed for “gold”/);
  });

  it('keeps a web and the kerfs on both of its sides between two rims', () => {
    expect(gapsFor(processIn(BUILT_IN, 'fibre-laser')!)).toEqual({ betweenMm: 4.4, edgeMm: 10.2 });
  });
});

describe('the price of an order', () => {
  const asked = {
    plates: [
      { diameterMm: 508, quantity: 4, cuttingMm: 12_000 },
      { diameterMm: 254, quantity: 2, cuttingMm: 6000 },
    ],
    sheets: [{ kind: '1250x2500', share: 0.4, price: 155.53 }],
    machineS: 600,
    setUps: 1,
  };
  const price = computePrice(BUILT_IN, STEEL, asked)!;
  const minor = Object.fromEntries(price.lines.map((l) => [l.code, l.minor]));

  it('is what one works out by hand', () => {
    // 95 an hour for the machine, 48 for hands; 6 plates are in the step of 3 per cent.
    expect(minor).toEqual({
      sheet: 6221, // 0.4 x 155.53 = 62.212
      preparing: 800, // 10 min
      'set-up': 950, // 6 min
      machine: 1583, // 10 min at 95 / 60 = 15.8333
      finishing: 3360, // 6 x 3 min + 60 m x 0.4 min = 42 min
      packing: 1360, // 5 + 6 x 2 = 17 min
      package: 1500, // 6 + 6 x 1.50
      quantity: -287, // 3 % of 95.53 = 2.8659
    });
    expect(price.totalMinor).toBe(6221 + 800 + 950 + 1583 + 3360 + 1360 + 1500 - 287);
    expect(price.currency).toBe('EUR');
  });

  it('adds up to its lines, and each line is its count at its rate, in every currency', () => {
    for (const currency of ['EUR', 'JPY', 'KWD']) {
      const book: StockBook = { ...BUILT_IN, currency };
      for (let quantity = 1; quantity < 200; quantity += 7) {
        const plates = [{ diameterMm: 300, quantity, cuttingMm: 7777 }];
        const { lines, totalMinor } = computePrice(book, STEEL, { ...asked, plates, machineS: 61.7 * quantity })!;
        expect(totalMinor).toBe(lines.reduce((sum, l) => sum + l.minor, 0));
        for (const line of lines) {
          expect(Number.isInteger(line.minor)).toBe(true);
          expect(line.minor).toBe(toMinor(line.count * line.each, currency));
        }
      }
    }
  });

  it('shares a set-up over the plates: each grows cheaper by the number', () => {
    const each = [1, 4, 5, 12, 50].map((quantity) => {
      const plates = [{ diameterMm: 300, quantity, cuttingMm: 7777 }];
      const sheets = [{ kind: 'x', share: 0.03 * quantity, price: 155 }];
      return (
        computePrice(BUILT_IN, STEEL, { plates, sheets, machineS: 90 * quantity, setUps: 1 })!.totalMinor / quantity
      );
    });
    expect([...each].sort((a, b) => b - a)).toEqual(each);
  });

  it('needs a process that the shop has', () => {
    expect(computePrice(BUILT_IN, { ...STEEL, process: 'teeth' }, asked)).toBeUndefined();
  });
});

describe('the share of a sheet', () => {
  const plate = (wish: string, diameterMm: number): PlacedPlate => ({
    id: `${wish}#1`,
    wish,
    diameterMm,
    x: 300,
    y: 300,
    turnDeg: 0,
    locked: false,
  });
  const sheet: NestedSheet = {
    kind: '1250x2500',
    number: 1,
    widthMm: 2500,
    heightMm: 1250,
    gone: [],
    plates: [plate('a', 400), plate('b', 200)],
    usedShare: 0,
  };
  const rest = (widthMm: number) => ({
    sheets: [sheet],
    rest: { sheet: 0, x: 2500 - widthMm, y: 0, kind: { id: 'rest', widthMm, heightMm: 1250 } },
  });

  it('takes the skeleton too, shared by area, less what goes back on the rack', () => {
    const share = (nest: Parameters<typeof computeSheetShares>[2]) =>
      computeSheetShares(BUILT_IN, STEEL, nest, (w) => w === 'a')!;
    expect(share({ sheets: [sheet] })[0]?.share).toBeCloseTo(0.8, 12);
    expect(share(rest(1500))[0]?.share).toBeCloseTo(0.8 * 0.4, 12);
    // Too narrow to keep: 200 of 250 mm.
    expect(share(rest(200))[0]?.share).toBeCloseTo(0.8, 12);
    expect(computeSheetShares(BUILT_IN, STEEL, rest(1500), () => false)).toEqual([]);
    const both = computeSheetShares(BUILT_IN, STEEL, rest(1500), () => true)!;
    expect(both[0]?.share).toBeCloseTo(0.4, 12);
  });

  it('of a kind with a price of its own costs that, else its weight', () => {
    // 2.5 m x 1.25 m x 1.5 mm x 7900 kg/m3 = 37.03 kg at 4.20.
    expect(findSheetPrice(BUILT_IN, STEEL, sheet)).toBeCloseTo(37.03125 * 4.2, 9);
    const prices = [{ material: 'stainless-304', thicknessMm: 1.5, price: { value: 140, source: 'a merchant' } }];
    const book: StockBook = { ...BUILT_IN, sheets: BUILT_IN.sheets.map((s) => ({ ...s, prices })) };
    expect(findSheetPrice(book, STEEL, sheet)).toBe(140);
    expect(findSheetPrice(book, { ...STEEL, thicknessMm: 2 }, sheet)).toBeCloseTo((37.03125 * 4.2 * 2) / 1.5, 9);
  });

  it('before a sheet is laid out is the square around the plate, and none where no sheet is so large', () => {
    expect(estimateShare(BUILT_IN, STEEL, 496, 4)?.share).toBeCloseTo((500 * 500) / (2500 * 1250), 12);
    expect(estimateShare(BUILT_IN, STEEL, 1499, 4)).toBeUndefined();
  });

  it('is not known, and so no price, where the book does not say what things cost', () => {
    const { work: _, ...others } = BUILT_IN;
    const bare: StockBook = { ...others, materials: others.materials.map(({ pricePerKg: __, ...m }) => m) };
    const one = { diameterMm: 496, quantity: 1, cuttingMm: 1000 };
    expect(estimateShare(bare, STEEL, 496, 4)).toBeUndefined();
    expect(computeSheetShares(bare, STEEL, { sheets: [sheet] }, () => true)).toBeUndefined();
    expect(computePrice(bare, STEEL, { plates: [one], sheets: [], machineS: 60, setUps: 1 })).toBeUndefined();
    const noRate: StockBook = {
      ...BUILT_IN,
      processes: BUILT_IN.processes.map(({ machine: { ratePerHour: ___, ...machine }, ...p }) => ({ ...p, machine })),
    };
    expect(computePrice(noRate, STEEL, { plates: [one], sheets: [], machineS: 60, setUps: 1 })).toBeUndefined();
  });
});
