import { fileNumber } from './numbers.ts';
import { oneLine } from './plain-text.ts';

/** Text or a number of a table. */
export type Cell = string | number;

/** So that spreadsheets read accents right. */
export const CSV_BEGIN = '\uFEFF';

/**
 * One record as RFC 4180 has it. What customers type ends up in these tables, and a spreadsheet may take a comma, semicolon
 * or tab for the end of a cell. So wherever a cell could begin, a sign that begins a formula gets an apostrophe before it
 * (OWASP, CSV Injection: = + - @, tab, carriage return; full-width forms too). Numbers have a decimal point.
 */
export function csvLine(cells: readonly Cell[]): string {
  return `${cells.map(cellText).join(',')}\r\n`;
}

/** At the start of a text, or behind what some spreadsheet parts cells by; spaces and quotes may stand between. */
const FORMULA = /(^|[,;\t|])([\s"'\u2018-\u201f]*)(?=[=+\-@\uff1d\uff0b\uff0d\uff20])/g;

function cellText(cell: Cell): string {
  if (typeof cell === 'number') return fileNumber(cell, 'cell');
  const text = oneLine(cell, 4000).replace(FORMULA, "$1$2'");
  return /[",;]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}
