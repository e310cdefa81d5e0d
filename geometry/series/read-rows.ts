/**
 * Rows of a table as a spreadsheet exports it (RFC 4180 and what is made of it): separators comma, semicolon or tab,
 * found out by the first line; quotes; line ends of any kind, also within quotes.
 *
 * In: the bytes of the file. Out: columns and rows, or a sentence. Faults of one row stay with that row. Rows whose
 * cells are all empty are left out; blanks around a cell do not count.
 */
import Papa from 'papaparse';
import { visible } from '../design/visible.ts';
import { CUT_EN } from '../sentences/cut-en.ts';
import type { Refused } from '../sentences/wording.ts';
import { decodeText } from './decode-text.ts';

export interface Row {
  /** Line of the file in which the row begins, from 1, as a text editor counts. */
  readonly line: number;
  /** By column, in the order of the columns. */
  readonly cells: readonly string[];
  readonly fault?: Refused;
}

export interface Rows {
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
}

/** More would take a day to make, and is more likely the wrong file. */
export const MOST_ROWS = 10_000;
const MOST_MB = 20;

export function readRows(bytes: Uint8Array): Rows | Refused {
  if (bytes.length > MOST_MB * 1e6) return CUT_EN.refused('series.large', { most: MOST_MB });
  const decoded = decodeText(bytes);
  if (decoded === undefined) return CUT_EN.refused('series.notText');
  const told = /^sep=(.)\n/.exec(decoded.replace(/\r\n?/g, '\n').slice(0, 8));
  const text = decoded.replace(/\r\n?/g, '\n').slice(told?.[0].length ?? 0);
  if (text.trim() === '') return CUT_EN.refused('series.empty');
  const records = recordsOf(text, told?.[1] ?? separatorOf(text), told ? 2 : 1);
  if ('problem' in records) return records;
  const [head, ...body] = records;
  if (!head) return CUT_EN.refused('series.empty');
  const columns = columnsOf(head.cells);
  if ('problem' in columns) return columns;
  if (body.length === 0) return CUT_EN.refused('series.headOnly');
  if (body.length > MOST_ROWS) return CUT_EN.refused('series.manyRows', { most: MOST_ROWS });
  return { columns, rows: body.map((record) => rowOf(record, columns.length)) };
}

/** Every sign of a table once: what its rows will be lettered with. */
export function signsOf({ rows }: Rows): string {
  const signs = new Set<string>();
  for (const { cells } of rows) for (const cell of cells) for (const sign of cell.normalize('NFC')) signs.add(sign);
  return [...signs].join('');
}

/** Columns are the same when their names differ in case or in how an accent is written only. */
export function columnKey(name: string): string {
  return name.normalize('NFC').trim().toLowerCase();
}

interface TableRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Everything with something in it; the text has line feeds only, so lines can be counted. */
function recordsOf(text: string, separator: string, firstLine: number): TableRecord[] | Refused {
  const records: TableRecord[] = [];
  let [line, cursor] = [firstLine, 0];
  let open: number | undefined;
  Papa.parse<string[]>(text, {
    delimiter: separator,
    newline: '\n',
    step({ data, errors, meta }, parser) {
      const cells = data.map((cell) => cell.normalize('NFC').trim());
      if (cells.some((cell) => cell !== '')) records.push({ line, cells });
      if (errors.some((e) => e.code === 'MissingQuotes')) {
        open = line;
        parser.abort();
      }
      for (; cursor < meta.cursor; cursor++) if (text[cursor] === '\n') line++;
      // One more than allowed is enough to say so.
      if (records.length > MOST_ROWS + 1) parser.abort();
    },
  });
  return open === undefined ? records : CUT_EN.refused('series.quoteOpen', { line: open });
}

const SEPARATORS = ['\t', ';', ','];
/** Rows looked at to find the separator out. */
const TRIED = 50;

/** The separator that parts the first line, and with it most of the following rows into as many cells. */
function separatorOf(text: string): string {
  let best = ',';
  let most = 0;
  for (const separator of SEPARATORS) {
    const { data } = Papa.parse<string[]>(text, { delimiter: separator, newline: '\n', preview: TRIED });
    const wide = data[0]?.length ?? 0;
    const alike = data.filter((cells) => cells.length === wide).length;
    const worth = wide < 2 ? 0 : alike / data.length;
    if (worth > most) [best, most] = [separator, worth];
  }
  return best;
}

function columnsOf(cells: readonly string[]): string[] | Refused {
  // Spreadsheets write empty columns at the end where something once stood.
  const last = cells.findLastIndex((cell) => cell !== '');
  const columns = cells.slice(0, last + 1);
  const seen = new Set<string>();
  for (const [i, name] of columns.entries()) {
    if (name === '') return CUT_EN.refused('series.columnUnnamed', { number: i + 1 });
    if (seen.has(columnKey(name))) return CUT_EN.refused('series.columnTwice', { column: visible(name) });
    seen.add(columnKey(name));
  }
  return columns;
}

function rowOf({ line, cells }: TableRecord, columns: number): Row {
  const filled = cells.findLastIndex((cell) => cell !== '') + 1;
  const row = { line, cells: Array.from({ length: columns }, (_, i) => cells[i] ?? '') };
  return filled <= columns ? row : { ...row, fault: CUT_EN.refused('series.cellsMany', { cells: filled, columns }) };
}
