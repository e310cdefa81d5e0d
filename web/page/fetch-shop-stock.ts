import { bookOf, type StockBook } from '../../geometry/stock/stock-book.ts';
import { stockMark } from '../../geometry/stock/stock-mark.ts';
import type { StockFile } from '../../geometry/stock/stock-schema.ts';
import { sayRefusal } from '../words/say/say-refusal.ts';
import { t } from '../words/t.ts';

/** Beside the page, where the shop edits it. */
const ADDRESS = './stock.json';
const PATIENCE_MS = 5000;

export interface ShopStock {
  readonly book: StockBook;
  /** Why the shop's own numbers could not be taken; the built-in ones serve. */
  readonly trouble?: () => Promise<string> | string;
}

/** What the shop can cut: the stock file beside the page, or what ships where there is none or it cannot be read. */
export async function fetchShopStock(): Promise<ShopStock> {
  try {
    const answer = await fetch(ADDRESS, { signal: AbortSignal.timeout(PATIENCE_MS) });
    if (answer.status === 404) return await builtIn();
    if (!answer.ok) return await builtIn(() => t('trouble.stockFetch'));
    return await stockOfText(await answer.text());
  } catch {
    return builtIn(() => t('trouble.stockFetch'));
  }
}

async function stockOfText(text: string): Promise<ShopStock> {
  const shipped = shippedIn(text);
  if (shipped) return { book: bookOf(shipped, undefined) };
  // With the schema it is large, and most visitors never need it.
  const { readStock } = await import('../../geometry/stock/read-stock.ts');
  const read = readStock(text);
  if ('book' in read) return { book: read.book };
  return builtIn(async () => t('trouble.stock', { problem: await sayRefusal(read) }));
}

/** Where the file beside the page serves, a second copy of it need not come. */
async function builtIn(trouble?: ShopStock['trouble']): Promise<ShopStock> {
  const { BUILT_IN } = await import('../../geometry/stock/built-in-stock.ts');
  return { book: BUILT_IN, ...(trouble && { trouble }) };
}

/** The file if it is the one that ships (web/serve/shop-stock.ts gave its mark): a test has read it with the schema. */
function shippedIn(text: string): StockFile | undefined {
  try {
    const file = JSON.parse(text) as StockFile;
    return stockMark(file) === import.meta.env.SHIPPED_STOCK ? file : undefined;
  } catch {
    return undefined;
  }
}
