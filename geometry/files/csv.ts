import { fileNumber } from './numbers.ts';
import { oneLine } from './plain-text.ts';

/** Text or a number of a table. */
export type Cell = string | number;

/** So that spreadsheets read accents right. */
export const CSV_BEGIN = '\uFEFF';

/**
 * One record as RFC 4180 has it. Text that a spreadsheet would take for a formula gets an apostrophe before it (OWASP,
 * CSV Injection): what customers type ends up in these tables. Numbers have a decimal point.
 */
export function csvLine(cells: readonly Cell[]): string {
  return `${cells.map(cellText).join(',')}\r\n`;
}

function cellText(cell: Cell): string {
  if (typeof cell === 'number') return fileNumber(cell, 'cell');
  const text = oneLine(cell, 4000).replace(/^(?=[=+\-@])/, "'");
  return /[",;]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}
