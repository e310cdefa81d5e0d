import { BUILT_IN } from '../stock/built-in-stock.ts';
import { bookOf, type StockBook } from '../stock/stock-book.ts';
import { SHOP_PAGES, type ShopPage } from './shop-limits.ts';
import type { ShopFile } from './shop-schema.ts';

export type ShopPrices = Readonly<NonNullable<ShopFile['prices']>>;

/** Who the shop is and what it asks of a customer: a shop file, ready to be asked. Plain data. */
export interface ShopBook extends Readonly<
  Pick<ShopFile, 'name' | 'logo' | 'currency' | 'tax' | 'prices' | 'offer' | 'leadTime'>
> {
  /** Lines as on a letter; may be none. */
  readonly address: readonly string[];
  readonly contact: Readonly<NonNullable<ShopFile['contact']>>;
  /** Lines for proof and spec sheet; may be none. */
  readonly legal: readonly string[];
  readonly orderKey?: string;
  /** Never empty, in the order in which they are offered. */
  readonly pages: readonly ShopPage[];
  readonly pageSize: 'a4' | 'letter';
  /** The stock that came in the same file, in place of the one beside it. */
  readonly stock?: StockBook;
}

export function bookOfShop(file: ShopFile): ShopBook {
  const { name, logo, currency, tax, prices, offer, leadTime, stock, pages = SHOP_PAGES } = file;
  return {
    name,
    address: file.address ?? [],
    contact: file.contact ?? {},
    ...(logo && { logo }),
    currency,
    ...(tax && { tax }),
    ...(prices && { prices }),
    ...(offer && { offer }),
    ...(leadTime && { leadTime }),
    legal: file.legal ?? [],
    ...(file.orderKey !== undefined && { orderKey: file.orderKey }),
    pages: SHOP_PAGES.filter((page) => pages.includes(page)),
    pageSize: file.pageSize ?? 'a4',
    ...(stock && { stock: bookOf(stock, BUILT_IN) }),
  };
}
