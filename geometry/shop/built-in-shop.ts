import starting from './starting-shop.json' with { type: 'json' };
import { bookOfShop, type ShopBook } from './shop-book.ts';
import type { ShopFile } from './shop-schema.ts';

/** The file that ships; a test reads it as any shop's file is read, which is what makes the cast true. */
export const STARTING_SHOP_FILE = starting as unknown as ShopFile;

/** An invented shop with prices that are examples: for tests, and for the command where no file is named. */
export const STARTING_SHOP: ShopBook = bookOfShop(STARTING_SHOP_FILE);
