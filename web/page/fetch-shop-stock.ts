import { bookOf, type StockBook } from '../../geometry/stock/stock-book.ts';
import { stockMark } from '../../geometry/stock/stock-mark.ts';
import type { StockFile } from '../../geometry/stock/stock-schema.ts';
import { sayRefusal } from '../words/say/say-refusal.ts';
import type { NumbersFound } from './stock-memory.ts';

/** Beside the page, where the shop edits it. */
const ADDRESS = './stock.json';
const PATIENCE_MS = 5000;

export interface ShopStock {
  readonly book: StockBook;
  /** Whether these are the shop's own numbers; where they could not be taken, the built-in ones serve. */
  readonly found: NumbersFound;
}

/** What the shop can cut: the stock file beside the page, or what ships where there is none or it cannot be read. */
export async function fetchShopStock(): Promise<ShopStock> {
  try {
    const answer = await fetch(ADDRESS, { signal: AbortSignal.timeout(PATIENCE_MS) });
    if (answer.status === 404) return await builtIn('none');
    if (!answer.ok) return await builtIn({ why: 'late' });
    return await stockOfText(await answer.text());
  } catch {
    return builtIn({ why: 'late' });
  }
}

async function stockOfText(text: string): Promise<ShopStock> {
  const shipped = shippedIn(text);
  if (shipped) return { book: bookOf(shipped, undefined), found: 'none' };
  // With the schema it is large, and most visitors never need it.
  const { readStock } = await import('../../geometry/stock/read-stock.ts');
  const read = readStock(text);
  if ('book' in read) return { book: read.book, found: { own: stockMark(read.file) } };
  return builtIn({ why: 'unreadable', problem: () => sayRefusal(read) });
}

/** Where the file beside the page serves, a second copy of it need not come. */
async function builtIn(found: NumbersFound): Promise<ShopStock> {
  const { BUILT_IN } = await import('../../geometry/stock/built-in-stock.ts');
  return { book: BUILT_IN, found };
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
