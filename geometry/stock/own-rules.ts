import type { BridgeWishes, Stock } from '../design/schema.ts';
import type { StockRules } from './rules.ts';
import type { StockBook } from './stock-book.ts';
import { stockRules } from './stock-rules.ts';

/**
 * The rules that a shop's own numbers give a design's stock, where they are others than the numbers that ship give:
 * a plate's maker takes nothing else from the book that could change what is cut. undefined where they are the same,
 * whatever else the shop changed. The fingerprint counts them, or an approval would outlive another cut.
 */
export function ownRules(
  { stock, bridges }: { readonly stock: Stock; readonly bridges: Pick<BridgeWishes, 'width'> },
  book: StockBook,
): StockRules | undefined {
  if (!book.shipped) return undefined;
  const { rules } = stockRules(stock, bridges.width, book);
  const { rules: shipped } = stockRules(stock, bridges.width, book.shipped);
  return JSON.stringify(rules) === JSON.stringify(shipped) ? undefined : rules;
}
