import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { csvLine } from '../../geometry/files/csv.ts';

/** What a spreadsheet takes for a formula: OWASP, "CSV Injection"; full-width signs by the same page. */
const FORMULAS = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\uff1d1', '\uff0b1', '\uff0d1', '\uff201'];
const STARTS = ['', ' ', '"', '""', "'", '“', ' " ', 'x;', 'x\t', 'x,', 'x;;', '";"', 'x; "', 'x",'];

describe.each([[','], [';'], ['\t']])('read with cells parted by %j', (delimiter) => {
  test('no cell is a formula, also behind a space or quote', () => {
    for (const start of STARTS)
      for (const formula of FORMULAS) {
        const line = csvLine(['name', start + formula, 3]);
        const cells = Papa.parse<string[]>(line, { delimiter }).data.flat();
        const raw = line.split(delimiter);
        for (const cell of [...cells, ...raw])
          expect(
            cell.replace(/^[\s"'“]*/, (lead) => (lead.includes("'") ? "'" : '')),
            JSON.stringify(line),
          ).not.toMatch(/^[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/);
      }
  });
});

test('plain text and numbers stay as they are', () => {
  expect(csvLine(['Marrow Lane, 3-5', 'a+b=c', -4.5, "O'Hara", 'mail@x'])).toBe(
    `"Marrow Lane, 3-5",a+b=c,-4.5,O'Hara,mail@x\r\n`,
  );
});
