import { faultOf } from '../design/say-where.ts';
import type { core } from 'zod/mini';
import { visible } from '../design/visible.ts';
import { bookOf, type StockBook } from './stock-book.ts';
import { contradictionIn } from './contradictions.ts';
import { LONGEST_STOCK_TEXT, STOCK_FORMAT, STOCK_VERSION } from './stock-limits.ts';
import { type StockFile, stockFileSchema } from './stock-schema.ts';

/**
 * Reads a shop's stock file. Takes its whole text; gives the book, and the file as it was read, or one sentence that
 * says what is wrong, where, and what to do. Nothing is repaired in silence, and the file itself is never touched.
 */
export function readStock(text: string): { book: StockBook; file: StockFile } | { problem: string } {
  if (text.length > LONGEST_STOCK_TEXT)
    return { problem: 'This stock file is larger than 4 MB. Take out what is not stock.' };
  const raw = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (raw.trim() === '') return { problem: 'This stock file is empty. Begin with the one that ships.' };
  let value: unknown;
  try {
    value = JSON.parse(raw);
  } catch (error) {
    const line = error instanceof Error ? lineOf(error.message, raw) : undefined;
    const where = line === undefined ? '' : ` about line ${line}`;
    return {
      problem: `This stock file is not sound JSON: something is wrong${where}. Look for a comma or a bracket too few or too many.`,
    };
  }
  const { format, version } = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>;
  if (format !== STOCK_FORMAT) {
    return { problem: `This is not a stock file: its part "format" should be "${STOCK_FORMAT}".` };
  }
  if (typeof version === 'number' && version > STOCK_VERSION) {
    return {
      problem: `This stock file is of version ${version}, and this Bridgehead reads up to version ${STOCK_VERSION}. Use a newer Bridgehead.`,
    };
  }
  const parsed = stockFileSchema.safeParse(value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return { problem: issue ? faultSentence(issue, value) : 'This stock file is not complete.' };
  }
  const problem = contradictionIn(parsed.data);
  return problem === undefined
    ? { book: bookOf(parsed.data), file: parsed.data }
    : { problem: `In this stock file, ${problem}` };
}

/** Says the path as it stands in the file, since a person looks for it there: `processes[3] ("plasma") kerfMm value`. */
function faultSentence(issue: core.$ZodIssue, raw: unknown): string {
  const { path, complaint } = faultOf(issue, raw);
  let where = '';
  let value: unknown = raw;
  for (const key of path) {
    value = typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined;
    where += typeof key === 'number' ? `[${key + 1}]${idOf(value)}` : ` ${visible(String(key))}`;
  }
  const what =
    issue.code === 'unrecognized_keys'
      ? `holds ${issue.keys.map(quoted).join(', ')}, which no stock file has`
      : complaint.english;
  return `In this stock file,${where === '' ? ' the whole' : where} ${what}. Correct it and try again.`;
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
