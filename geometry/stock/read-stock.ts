import type { core } from 'zod/mini';
import { STOCK_EN } from '../sentences/stock-en.ts';
import type { Refused } from '../sentences/wording.ts';
import { BUILT_IN } from './built-in-stock.ts';
import { bookOf, type StockBook } from './stock-book.ts';
import { contradictionIn } from './contradictions.ts';
import { atLine, schemaFault, valueOfJson } from './file-faults.ts';
import { LONGEST_STOCK_TEXT, STOCK_FORMAT, STOCK_VERSION } from './stock-limits.ts';
import { type StockFile, stockFileSchema } from './stock-schema.ts';

/**
 * Reads a shop's stock file. Takes its whole text; gives the book, and the file as it was read, or one sentence that
 * says what is wrong, where, and what to do. Nothing is repaired in silence, and the file itself is never touched.
 */
export function readStock(text: string): { book: StockBook; file: StockFile } | Refused {
  if (text.length > LONGEST_STOCK_TEXT) return STOCK_EN.refused('stockFile.large');
  const raw = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (raw.trim() === '') return STOCK_EN.refused('stockFile.empty');
  const read = valueOfJson(raw);
  if ('problem' in read) return read;
  const { value } = read;
  const { format, version } = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>;
  if (format !== STOCK_FORMAT) return STOCK_EN.refused('stockFile.notStock', { format: STOCK_FORMAT });
  if (typeof version === 'number' && version > STOCK_VERSION) {
    return STOCK_EN.refused('stockFile.newer', { version, newest: STOCK_VERSION });
  }
  const parsed = stockFileSchema.safeParse(value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return issue ? faultSentence(issue, value, raw) : STOCK_EN.refused('stockFile.incomplete');
  }
  const fault = contradictionIn(parsed.data);
  return fault ? atLine(raw, fault) : { book: bookOf(parsed.data, BUILT_IN), file: parsed.data };
}

function faultSentence(issue: core.$ZodIssue, value: unknown, text: string): Refused {
  const { path, where, complaint } = schemaFault(issue, value);
  const refused =
    where === ''
      ? STOCK_EN.refused('stockFile.wrong', { complaint })
      : STOCK_EN.refused('stockFile.wrongAt', { where, complaint });
  return atLine(text, { path, refused });
}
