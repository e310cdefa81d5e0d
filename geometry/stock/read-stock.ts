import { faultOf } from '../design/say-where.ts';
import type { core } from 'zod/mini';
import { visible } from '../design/visible.ts';
import { refusedStock, sayOfStock } from '../words/say-stock.ts';
import type { Refused } from '../words/wording.ts';
import { bookOf, type StockBook } from './stock-book.ts';
import { contradictionIn } from './contradictions.ts';
import { LONGEST_STOCK_TEXT, STOCK_FORMAT, STOCK_VERSION } from './stock-limits.ts';
import { type StockFile, stockFileSchema } from './stock-schema.ts';

/**
 * Reads a shop's stock file. Takes its whole text; gives the book, and the file as it was read, or one sentence that
 * says what is wrong, where, and what to do. Nothing is repaired in silence, and the file itself is never touched.
 */
export function readStock(text: string): { book: StockBook; file: StockFile } | Refused {
  if (text.length > LONGEST_STOCK_TEXT) return refusedStock('stockFile.large');
  const raw = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (raw.trim() === '') return refusedStock('stockFile.empty');
  let value: unknown;
  try {
    value = JSON.parse(raw);
  } catch (error) {
    const line = error instanceof Error ? lineOf(error.message, raw) : undefined;
    return line === undefined ? refusedStock('stockFile.notJson') : refusedStock('stockFile.notJsonAt', { line });
  }
  const { format, version } = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>;
  if (format !== STOCK_FORMAT) return refusedStock('stockFile.notStock', { format: STOCK_FORMAT });
  if (typeof version === 'number' && version > STOCK_VERSION) {
    return refusedStock('stockFile.newer', { version, newest: STOCK_VERSION });
  }
  const parsed = stockFileSchema.safeParse(value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return issue ? faultSentence(issue, value) : refusedStock('stockFile.incomplete');
  }
  return contradictionIn(parsed.data) ?? { book: bookOf(parsed.data), file: parsed.data };
}

/** Says the path as it stands in the file, since a person looks for it there: `processes[3] ("plasma") kerfMm value`. */
function faultSentence(issue: core.$ZodIssue, raw: unknown): Refused {
  const { path, complaint: usual } = faultOf(issue, raw);
  let where = '';
  let value: unknown = raw;
  for (const key of path) {
    value = typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined;
    where += typeof key === 'number' ? `[${key + 1}]${idOf(value)}` : ` ${visible(String(key))}`;
  }
  const complaint =
    issue.code === 'unrecognized_keys'
      ? sayOfStock('stockFile.strangeParts', { names: issue.keys.map(quoted).join(', ') })
      : usual;
  return where === ''
    ? refusedStock('stockFile.wrong', { complaint })
    : refusedStock('stockFile.wrongAt', { where: where.trim(), complaint });
}

function idOf(member: unknown): string {
  const id = typeof member === 'object' && member !== null ? (member as Record<string, unknown>)['id'] : undefined;
  return typeof id === 'string' ? ` (${quoted(id)})` : '';
}

/** By the position or the line that the engine names. */
function lineOf(message: string, raw: string): number | undefined {
  const line = /\bline (\d+)/.exec(message)?.[1];
  if (line !== undefined) return Number(line);
  const position = /position (\d+)/.exec(message)?.[1];
  return position === undefined ? undefined : raw.slice(0, Number(position)).split('\n').length;
}

function quoted(id: string): string {
  return `"${visible(id)}"`;
}
