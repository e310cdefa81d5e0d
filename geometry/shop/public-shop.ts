import type { StockFile } from '../stock/stock-schema.ts';
import type { ShopFile } from './shop-schema.ts';

/** What anybody may read: the files without the shop's inner costs and notes. */
export interface PublicShop {
  readonly shop: ShopFile;
  readonly stock?: StockFile;
}

/**
 * Left out of the shop file: `private` lines and the source of every price. Left out of a stock file, inside it or beside
 * it: all that only says what an order costs the shop (work by hand, rates and set-up of machines, prices of material and
 * sheet). Nothing that a plate's rules follow from, so fingerprints stay.
 */
export function publicShop(file: ShopFile, stock?: StockFile): PublicShop {
  const { private: _, prices, stock: inside, ...rest } = file;
  return {
    shop: {
      ...rest,
      ...(prices && { prices: withoutSources(prices) }),
      ...(inside && { stock: withoutCosts(inside) }),
    },
    ...(stock && { stock: withoutCosts(stock) }),
  };
}

function withoutCosts({ work: _, ...file }: StockFile): StockFile {
  return {
    ...file,
    materials: file.materials.map(({ pricePerKg: __, ...material }) => material),
    processes: file.processes.map(({ machine: { setUpMin: __, ratePerHour: ___, ...machine }, ...process }) => ({
      ...process,
      machine,
    })),
    sheets: file.sheets.map(({ prices: __, ...sheet }) => sheet),
  };
}

type Prices = NonNullable<ShopFile['prices']>;

function withoutSources(prices: Prices): Prices {
  const { finishing, rolling, design, packing, leastOrder } = prices;
  return {
    ...prices,
    plates: prices.plates.map(bare),
    ...(prices.cutting && { cutting: prices.cutting.map(bare) }),
    ...(finishing && { finishing: bare(finishing) }),
    ...(rolling && { rolling: bare(rolling) }),
    ...(design && { design: bare(design) }),
    ...(packing && { packing: bare(packing) }),
    ...(leastOrder && { leastOrder: bare(leastOrder) }),
  };
}

function bare<Row extends { readonly source?: string | undefined }>({ source: _, ...row }: Row): Omit<Row, 'source'> {
  return row;
}
