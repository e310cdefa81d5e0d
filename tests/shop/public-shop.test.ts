import { describe, expect, it } from 'vitest';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { publicShop } from '../../geometry/shop/public-shop.ts';
import { computeQuote } from '../../geometry/shop/quote.ts';
import { readShop } from '../../geometry/shop/read-shop.ts';
import { bookOfShop } from '../../geometry/shop/shop-book.ts';
import { STARTING_SHOP, STARTING_SHOP_FILE } from '../../geometry/shop/built-in-shop.ts';
import { BUILT_IN, STARTING_FILE } from '../../geometry/stock/built-in-stock.ts';
import { ownRules } from '../../geometry/stock/own-rules.ts';
import { readStock } from '../../geometry/stock/read-stock.ts';
import { bookOf, type StockBook } from '../../geometry/stock/stock-book.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { demoDesigns } from '../figures/main/demo-plates.ts';
import { markedFiles, marksLeft } from './inner-numbers.ts';

describe('what a shop publishes', () => {
  it('holds none of the inner numbers and words, which its own files do hold', () => {
    const { shop, stock, marks } = markedFiles();
    const own = JSON.stringify([shop, stock]);
    expect(marks.filter((mark) => !own.includes(mark))).toEqual([]);
    expect(marks.length).toBeGreaterThan(80);
    expect(marksLeft().left).toEqual([]);
  });

  it('names no part that only says what an order costs the shop', () => {
    const text = JSON.stringify(publicShop({ ...STARTING_SHOP_FILE, stock: STARTING_FILE }, STARTING_FILE));
    for (const word of [
      'pricePerKg',
      'ratePerHour',
      'setUpMin',
      '"work"',
      '"private"',
      'preparingMin',
      'leastRemnant',
    ]) {
      expect(text).not.toContain(word);
    }
    expect(JSON.stringify(publicShop(STARTING_SHOP_FILE))).not.toContain('source');
  });

  it('reads as any file does, and asks a customer for the same', () => {
    const { shop, stock } = publicShop({ ...STARTING_SHOP_FILE, stock: STARTING_FILE }, STARTING_FILE);
    const read = readShop(JSON.stringify(shop));
    expect('problem' in read && read.problem).toBe(false);
    const alone = readStock(JSON.stringify(stock));
    expect('problem' in alone && alone.problem).toBe(false);
    const asked = {
      stock: { material: 'mild-steel', process: 'plasma', thicknessMm: 2, use: 'paint' },
      plates: [{ name: 'a', diameterMm: 333, quantity: 14, cuttingMm: 9876, openings: 31 }],
    } as const;
    expect(computeQuote(bookOfShop(shop), asked, BUILT_IN)).toEqual(computeQuote(STARTING_SHOP, asked, BUILT_IN));
  });

  it('changes no rule and no fingerprint', () => {
    const published = publicShop(STARTING_SHOP_FILE, STARTING_FILE).stock!;
    const book: StockBook = bookOf(published, BUILT_IN);
    for (const design of demoDesigns()) {
      expect(ownRules(design, book)).toBeUndefined();
      expect(fingerprintOf(design, ownRules(design, book))).toBe(fingerprintOf(design));
    }
    for (const material of BUILT_IN.materials) {
      for (const process of BUILT_IN.processes) {
        for (const use of ['paint', 'torch'] as const) {
          const stock = { material: material.id, process: process.id, thicknessMm: material.thicknesses[0]!.mm, use };
          expect(stockRules(stock, 'auto', book)).toEqual(stockRules(stock, 'auto', BUILT_IN));
        }
      }
    }
  });
});
