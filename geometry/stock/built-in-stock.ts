import starting from './starting-stock.json' with { type: 'json' };
import { bookOf, type StockBook } from './stock-book.ts';
import type { StockFile } from './stock-schema.ts';

/** The file that ships; a test reads it as any shop's file is read, which is what makes the cast true. */
export const STARTING_FILE = starting as unknown as StockFile;

/** The numbers to begin with, until a shop puts in its own. */
export const BUILT_IN: StockBook = bookOf(STARTING_FILE, undefined);
