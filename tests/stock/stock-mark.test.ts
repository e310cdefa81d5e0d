import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { STARTING_FILE } from '../../geometry/stock/built-in-stock.ts';
import { fnv1a, stockMark } from '../../geometry/stock/stock-mark.ts';
import type { StockFile } from '../../geometry/stock/stock-schema.ts';

describe('the mark of a stock file', () => {
  // test vectors of FNV-1a, 32 bits: draft-eastlake-fnv, appendix C
  it.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('is counted as published for “%s”', (text, hash) => {
    expect(fnv1a(text)).toBe(hash);
  });

  it('is the same however the file is spaced, and another for every single edit', () => {
    const text = readFileSync(new URL('../../geometry/stock/starting-stock.json', import.meta.url), 'utf8');
    const shipped = stockMark(STARTING_FILE);
    expect(stockMark(JSON.parse(text.replaceAll('\n', '\r\n  ')) as StockFile)).toBe(shipped);
    const compact = JSON.stringify(STARTING_FILE);
    const marks = new Set([shipped]);
    let edits = 0;
    for (const { index } of compact.matchAll(/\d/g)) {
      const digit = compact[index] === '7' ? '8' : '7';
      marks.add(stockMark(JSON.parse(compact.slice(0, index) + digit + compact.slice(index + 1)) as StockFile));
      edits++;
    }
    expect(edits).toBeGreaterThan(500);
    expect(marks.size).toBe(edits + 1);
  });
});
