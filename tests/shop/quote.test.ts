import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STARTING_SHOP } from '../../geometry/shop/built-in-shop.ts';
import { type Quote, computeQuote, type QuoteAsked, type QuotePlates } from '../../geometry/shop/quote.ts';
import type { ShopBook } from '../../geometry/shop/shop-book.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { anyOrder, anyShop, cameOutAs, linesAddUp, WORKED } from './worked-quotes.ts';

const STOCK = { material: 'stainless-304', process: 'fibre-laser', thicknessMm: 1.5, use: 'paint' } as const;

function priced(shop: ShopBook, asked: QuoteAsked): Quote {
  const quote = computeQuote(shop, asked, BUILT_IN);
  if ('problem' in quote) throw new Error(quote.problem);
  return quote;
}

function plates(quantity: number, parts: Partial<QuotePlates> = {}): QuotePlates {
  return { name: 'large', diameterMm: 500, quantity, cuttingMm: 10_000, openings: 10, ...parts };
}

function problemOf(shop: ShopBook, asked: Partial<QuoteAsked>): string {
  const quote = computeQuote(shop, { stock: STOCK, plates: [plates(1)], ...asked }, BUILT_IN);
  return 'problem' in quote ? quote.problem : '';
}

describe('the price of an order', () => {
  it.each(WORKED.map((example) => [example.what, example] as const))('%s', (_, example) => {
    expect(cameOutAs(computeQuote(example.shop, example.asked, BUILT_IN))).toEqual(cameOutAs(example));
  });

  it('is made of lines that add up, whatever the shop and the order', () => {
    fc.assert(
      fc.property(anyShop(), anyOrder(), (shop, plates) => {
        const quote = computeQuote(shop, { stock: STOCK, plates }, BUILT_IN);
        if (!('problem' in quote)) expect(linesAddUp(quote)).toBe(true);
      }),
      { numRuns: 2000, seed: 11 },
    );
  });

  it.each([
    [1, 0],
    [4, 0],
    [5, 5],
    [11, 5],
    [12, 10],
    [49, 10],
    [50, 15],
    [500, 15],
  ])('of %i plates has %i per cent off the work', (quantity, off) => {
    const { lines, steps } = priced(STARTING_SHOP, { stock: STOCK, plates: [plates(quantity)] });
    expect(lines.find((l) => l.code === 'quantity')?.count ?? 0).toBe(off);
    expect(steps.map((s) => s.from)).toEqual([5, 12, 50]);
  });

  it('counts all plates of the order for a step, and leaves out those that are not wanted', () => {
    const order = [plates(3), plates(2, { name: 'small', diameterMm: 300 }), plates(0, { name: 'none' })];
    const { lines } = priced(STARTING_SHOP, { stock: STOCK, plates: order });
    expect(lines.find((l) => l.code === 'quantity')?.count).toBe(5);
    expect(lines.some((l) => l.plate === 'none')).toBe(false);
  });

  it('is never less than the least order', () => {
    const shop: ShopBook = { ...STARTING_SHOP, prices: { ...STARTING_SHOP.prices!, leastOrder: { amount: 500 } } };
    const quote = priced(shop, { stock: STOCK, plates: [plates(1)] });
    expect(quote.netMinor).toBe(50_000);
    expect(quote.lines.at(-1)?.code).toBe('least-order');
    expect(linesAddUp(quote)).toBe(true);
  });

  // 20 plates a day: the first day is in the lead time, each further one comes on top
  it.each([
    [1, 3, 6],
    [20, 3, 6],
    [21, 4, 7],
    [40, 4, 7],
    [41, 5, 8],
  ])('of %i plates takes %i to %i working days', (quantity, least, most) => {
    const { lead, validDays } = priced(STARTING_SHOP, { stock: STOCK, plates: [plates(quantity)] });
    expect({ lead, validDays }).toEqual({ lead: { least, most }, validDays: 30 });
  });

  it('takes a diameter that is a limit as within it, and the next table row just above', () => {
    const eachAt = (diameterMm: number) =>
      priced(STARTING_SHOP, { stock: STOCK, plates: [plates(1, { diameterMm })] }).lines[0]?.each;
    expect([eachAt(400), eachAt(400.00005), eachAt(400.01), eachAt(1000)]).toEqual([38, 38, 58, 150]);
  });
});

describe('where no list price fits there is a sentence and no number', () => {
  it.each<[string, Partial<QuoteAsked>, RegExp]>([
    [
      'a material',
      { stock: { ...STOCK, material: 'pvc', process: 'router' } },
      /^For plates of PVC.*, 1.5 mm, by .*on request. Ask Example Plate Works/,
    ],
    [
      'a thickness',
      { stock: { ...STOCK, thicknessMm: 5 } },
      /^For plates of 304 stainless steel, 5 mm, by .*on request/,
    ],
    [
      'a process',
      { stock: { ...STOCK, process: 'scissors' } },
      /^For cutting 304 stainless steel of 1.5 mm by scissors/,
    ],
    ['a size', { plates: [plates(1, { diameterMm: 1200 })] }, /up to a diameter of 1000 mm; “large” has 1200 mm/],
    [
      'a ring that masks',
      { plates: [plates(1), plates(1, { name: 'ring', masks: true })] },
      /^For rings that mask, such as “ring”, .*on request/,
    ],
    ['nothing', { plates: [plates(0)] }, /^No plate is wanted yet/],
    ['more than can be counted', { plates: [plates(1e9)] }, /larger than a list price is meant for/],
  ])('%s', (_, asked, sentence) => {
    expect(problemOf(STARTING_SHOP, asked)).toMatch(sentence);
  });

  it('no prices at all, or none for rolling', () => {
    const { prices, ...bare } = STARTING_SHOP;
    expect(problemOf(bare, {})).toMatch(/^Example Plate Works has no list prices here/);
    const { rolling: _, ...flat } = prices!;
    expect(problemOf({ ...STARTING_SHOP, prices: flat }, { plates: [plates(1, { rolled: true })] })).toMatch(
      /^For rolling “large”/,
    );
  });

  it('none for a ring that masks of which none is wanted', () => {
    const order = [plates(1), plates(0, { name: 'ring', masks: true })];
    expect(priced(STARTING_SHOP, { stock: STOCK, plates: order }).lines[0]?.plate).toBe('large');
  });

  it('and plates that are none are a mistake of the program', () => {
    for (const wrong of [
      { quantity: 1.5 },
      { quantity: -1 },
      { diameterMm: NaN },
      { cuttingMm: Infinity },
      { openings: 0.5 },
    ]) {
      expect(() => computeQuote(STARTING_SHOP, { stock: STOCK, plates: [plates(1, wrong)] }, BUILT_IN)).toThrow(
        RangeError,
      );
    }
  });
});
