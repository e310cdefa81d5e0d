import { BUILT_IN, STARTING_FILE } from '../../geometry/stock/built-in-stock.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { sayRefusal } from '../ui/say-refusal.ts';
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
    if (answer.status === 404) return { book: BUILT_IN };
    if (!answer.ok) return { book: BUILT_IN, trouble: () => t('trouble.stockFetch') };
    return await bookOfText(await answer.text());
  } catch {
    return { book: BUILT_IN, trouble: () => t('trouble.stockFetch') };
  }
}

async function bookOfText(text: string): Promise<ShopStock> {
  if (isShipped(text)) return { book: BUILT_IN };
  // With the schema it is large, and most visitors never need it.
  const { readStock } = await import('../../geometry/stock/read-stock.ts');
  const read = readStock(text);
  if ('book' in read) return { book: read.book };
  return { book: BUILT_IN, trouble: async () => t('trouble.stock', { problem: await sayRefusal(read) }) };
}

function isShipped(text: string): boolean {
  try {
    return JSON.stringify(JSON.parse(text)) === JSON.stringify(STARTING_FILE);
  } catch {
    return false;
  }
}
