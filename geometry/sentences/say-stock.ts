import { refusedAs, sayFrom, type KeyOf } from './say.ts';
import { STOCK_SAID_EN } from './stock-said-en.ts';
import type { Refused, Wording, WordValues } from './wording.ts';

type StockKey = KeyOf<typeof STOCK_SAID_EN>;

/** A part of what is said about a stock file. */
export function sayOfStock(key: StockKey, values: WordValues = {}): Wording {
  return sayFrom(STOCK_SAID_EN, key, values);
}

/** Why a stock file cannot be taken. */
export function refusedStock(key: StockKey, values: WordValues = {}): Refused {
  return refusedAs(sayOfStock(key, values));
}
