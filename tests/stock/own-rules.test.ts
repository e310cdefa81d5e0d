/* eslint-disable @typescript-eslint/no-explicit-any, @typescript-eslint/no-unsafe-member-access -- each case spoils a file that is anything */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { ownRules } from '../../geometry/stock/own-rules.ts';
import { readStock } from '../../geometry/stock/read-stock.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { demoDesigns } from '../figures/main/demo-plates.ts';

const SHIPPED = readFileSync('geometry/stock/starting-stock.json', 'utf8');

function bookWith(change: (file: any) => void): StockBook {
  const file: unknown = JSON.parse(SHIPPED);
  change(file);
  const read = readStock(JSON.stringify(file));
  if ('problem' in read) throw new Error(read.problem);
  return read.book;
}

const [design] = demoDesigns();
if (!design) throw new Error('no demo');

describe('the fingerprint and a shop’s own numbers', () => {
  it('is that of before for the numbers that ship, and for the same numbers in a file of the shop’s own', () => {
    const again = readStock(SHIPPED);
    if ('problem' in again) throw new Error(again.problem);
    expect(ownRules(design, again.book)).toBeUndefined();
    expect(fingerprintOf(design, ownRules(design, again.book))).toBe(fingerprintOf(design));
  });

  it('stays the same when prices, names or the numbers of another process change', () => {
    for (const book of [
      bookWith((f) => (f.materials[0].name = 'Our good steel')),
      bookWith((f) => (f.currency = 'SEK')),
      bookWith((f) => (f.processes[3].kerfMm.value = 6)),
    ]) {
      expect(fingerprintOf(design, ownRules(design, book))).toBe(fingerprintOf(design));
    }
  });

  it('changes with every number of the used material and process that the cut follows', async () => {
    const { faces } = await loadFaces(design);
    const shipped = makePlate(design, 'large', faces, createStore(), BUILT_IN);
    expect(shipped.fingerprint).toBe(fingerprintOf(design));
    const prints = new Set([shipped.fingerprint]);
    const books = [
      bookWith((f) => (f.processes[0].families.metal.bridge.mm = 2.5)),
      bookWith((f) => (f.processes[0].kerfMm.value = 0.3)),
      bookWith((f) => (f.rules.rimMarginMm.value = 9)),
      bookWith((f) => (f.materials[0].elastic.youngMPa.value = 20_000)),
    ];
    const store = createStore();
    for (const book of books) prints.add(makePlate(design, 'large', faces, store, book).fingerprint);
    expect(prints.size).toBe(1 + books.length);
  });

  it('cuts other bridges with other numbers from the same store, and the shipped ones again after', async () => {
    const { faces } = await loadFaces(design);
    const store = createStore();
    const before = makePlate(design, 'large', faces, store, BUILT_IN);
    const wide = makePlate(
      design,
      'large',
      faces,
      store,
      bookWith((f) => (f.processes[0].families.metal.bridge.mm = 2.5)),
    );
    expect(wide.rules.leastBridgeMm).toBe(2.5 * (design.stock.use === 'torch' ? BUILT_IN.rules.torchFactor.value : 1));
    expect(wide.measures.leastBridgeMm).toBeGreaterThan(before.measures.leastBridgeMm! + 0.5);
    expect(makePlate(design, 'large', faces, store, BUILT_IN).openings).toEqual(before.openings);
  });
});
