import type { ShopBook } from '../../geometry/shop/shop-book.ts';
import { SHOP_FORMAT } from '../../geometry/shop/shop-limits.ts';
import { PAGES, type PageName } from '../state/ui-store.ts';
import { sayRefusal } from '../words/say/say-refusal.ts';
import { t } from '../words/t.ts';

/** Beside the page, where the shop edits it. */
const ADDRESS = './shop.json';
const PATIENCE_MS = 5000;

type Trouble = () => Promise<string> | string;

/** All that the shop's own file says. */
export interface WholeShop {
  readonly shop?: ShopBook;
  /** Why the file could not be taken: then nothing is said of the shop, and prices are on request. */
  readonly trouble?: Trouble;
}

/** What the page needs of the shop's own file at its start; the rest is read when it is asked for, once. */
export interface ShopAtHand extends WholeShop {
  readonly pages: readonly PageName[];
  whole(): Promise<WholeShop>;
}

/** The shop's own file beside the page; where there is none all pages are offered and nothing is said of the shop. */
export async function fetchShop(): Promise<ShopAtHand> {
  const none: WholeShop = {};
  const nothing = { pages: PAGES, whole: () => Promise.resolve(none) };
  try {
    const answer = await fetch(ADDRESS, { signal: AbortSignal.timeout(PATIENCE_MS) });
    if (answer.status === 404) return nothing;
    if (!answer.ok) return { ...nothing, trouble: () => t('trouble.shopFetch') };
    return await shopOfText(await answer.text());
  } catch {
    return { ...nothing, trouble: () => t('trouble.shopFetch') };
  }
}

async function shopOfText(text: string): Promise<ShopAtHand> {
  let read: Promise<WholeShop> | undefined;
  const whole = (): Promise<WholeShop> => (read ??= wholeShop(text));
  const pages = pagesAtAGlance(text);
  if (pages) return { pages, whole };
  const now = await whole();
  return { ...now, pages: now.shop?.pages ?? PAGES, whole };
}

/**
 * The pages of a file that the page can begin with before it is read with its schema, which is large. undefined for one
 * that brings a stock of its own, or that looks wrong: it is read at once.
 */
function pagesAtAGlance(text: string): readonly PageName[] | undefined {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return undefined;
    const { format, stock, pages = PAGES } = value as Record<string, unknown>;
    if (format !== SHOP_FORMAT || stock !== undefined || !Array.isArray(pages) || pages.length === 0) return undefined;
    return pages.every((page) => (PAGES as readonly unknown[]).includes(page))
      ? PAGES.filter((page) => pages.includes(page))
      : undefined;
  } catch {
    return undefined;
  }
}

async function wholeShop(text: string): Promise<WholeShop> {
  try {
    const { readShop } = await import('../../geometry/shop/read-shop.ts');
    const read = readShop(text);
    if ('shop' in read) return { shop: read.shop };
    return { trouble: async () => t('trouble.shop', { problem: await sayRefusal(read) }) };
  } catch {
    return { trouble: () => t('trouble.shopFetch') };
  }
}
