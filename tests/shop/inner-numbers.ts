import { STARTING_SHOP_FILE } from '../../geometry/shop/built-in-shop.ts';
import { publicShop } from '../../geometry/shop/public-shop.ts';
import type { ShopFile } from '../../geometry/shop/shop-schema.ts';
import { STARTING_FILE } from '../../geometry/stock/built-in-stock.ts';
import type { StockFile } from '../../geometry/stock/stock-schema.ts';

type Json = Record<string, unknown>;

/** Files in which every inner number and word is one that stands nowhere else, and the list of those. */
export interface MarkedFiles {
  readonly shop: ShopFile;
  readonly stock: StockFile;
  readonly marks: readonly string[];
}

/** By hand, apart from what publishes: the parts of the two files that are nobody's business. */
export function markedFiles(): MarkedFiles {
  const marks: string[] = [];
  const number = (): number => {
    const mark = Number((7.123457 + marks.length * 0.000013).toFixed(6));
    marks.push(String(mark));
    return mark;
  };
  const word = (): string => {
    const mark = `inner-word-${marks.length}`;
    marks.push(mark);
    return mark;
  };
  const inner = (): Json => ({ value: number(), source: word() });
  const stock = structuredClone(STARTING_FILE) as unknown as {
    work: Json;
    materials: Json[];
    processes: { machine: Json }[];
    sheets: Json[];
  };
  stock.work = Object.fromEntries(
    Object.keys(stock.work)
      .filter((name) => !name.startsWith('quantitySteps'))
      .map((name) => [name, inner()]),
  );
  stock.work['quantitySteps'] = [{ from: 1, percentOff: number() }];
  stock.work['quantityStepsSource'] = word();
  for (const material of stock.materials) material['pricePerKg'] = inner();
  for (const { machine } of stock.processes) {
    machine['ratePerHour'] = inner();
    machine['setUpMin'] = inner();
  }
  for (const sheet of stock.sheets) sheet['prices'] = [{ material: 'hdpe', thicknessMm: 2, price: inner() }];
  const shop = structuredClone(STARTING_SHOP_FILE) as unknown as {
    prices: Record<string, Json | Json[]>;
    private: string[];
  };
  for (const rows of Object.values(shop.prices)) {
    for (const row of Array.isArray(rows) ? rows : [rows]) if ('source' in row) row['source'] = word();
  }
  shop.private = [word(), word()];
  return { shop: shop as unknown as ShopFile, stock: stock as unknown as StockFile, marks };
}

/** Inner numbers and words that are still in what is published: the two files apart, and the one inside the other. */
export function marksLeft(): { readonly of: number; readonly left: readonly string[] } {
  const { shop, stock, marks } = markedFiles();
  const apart = publicShop(shop, stock);
  const inside = publicShop({ ...shop, stock });
  const text = JSON.stringify([apart, inside]);
  return { of: marks.length, left: marks.filter((mark) => text.includes(mark)) };
}
