import { refusedAs, sayFrom, type KeyOf } from './say.ts';
import { SHOP_SAID_EN } from './shop-said-en.ts';
import type { Refused, Wording, WordValues } from './wording.ts';

export type ShopKey = KeyOf<typeof SHOP_SAID_EN>;

/** A part of what is said about a shop file. */
export function sayOfShop(key: ShopKey, values: WordValues = {}): Wording {
  return sayFrom(SHOP_SAID_EN, key, values);
}

/** Why a shop file cannot be taken, or gives no price. */
export function refusedByShop(key: ShopKey, values: WordValues = {}): Refused {
  return refusedAs(sayOfShop(key, values));
}
