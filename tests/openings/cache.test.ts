import { expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { createCache, memoize } from '../../geometry/cache.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { randomDesign } from '../judge/random-design.ts';

it('keeps what is asked for again and again, and lets go of the rest', () => {
  const cache = createCache<string>(10);
  const made: string[] = [];
  const ask = (key: string) =>
    cache.getOrMake(key, () => {
      made.push(key);
      return key.toUpperCase();
    });
  for (let i = 0; i < 100; i++) {
    expect(ask('often')).toBe('OFTEN');
    ask(`once ${i}`);
  }
  expect(made.filter((key) => key === 'often')).toHaveLength(1);
  ask('once 0');
  expect(made.filter((key) => key === 'once 0')).toHaveLength(2);
});

it('makes anew what no longer fits', () => {
  const cache = createCache<{ face: string }>(10);
  cache.getOrMake('a', () => ({ face: 'old' }));
  const fits = (value: { face: string }) => value.face === 'new';
  expect(cache.getOrMake('a', () => ({ face: 'new' }), fits).face).toBe('new');
});

it('asks once for each thing', () => {
  let asked = 0;
  const size = memoize((list: readonly number[]) => {
    asked++;
    return list.length;
  });
  const list = [1, 2, 3];
  expect([size(list), size(list), asked]).toEqual([3, 3, 1]);
});

it('a plate from a store that made others before is the plate from an empty one', async () => {
  const design = randomDesign(11);
  const { faces } = await loadFaces(design);
  const text = design.elements.findIndex((e) => 'text' in e);
  const typed = (last: string) => ({
    ...design,
    elements: design.elements.map((e, i) => (i === text && 'text' in e ? { ...e, text: e.text + last } : e)),
  });
  const store = createStore();
  const first = makePlate(design, 'plate', faces, store, BUILT_IN);
  for (const last of ['O', 'g']) {
    const plate = makePlate(typed(last), 'plate', faces, store, BUILT_IN);
    expect(JSON.stringify(plate)).toBe(JSON.stringify(makePlate(typed(last), 'plate', faces, createStore(), BUILT_IN)));
  }
  const again = makePlate(structuredClone(design), 'plate', faces, store, BUILT_IN);
  expect(JSON.stringify(again)).toBe(JSON.stringify(first));
  // Unchanged openings are the very same objects: that is what makes a keystroke cheap.
  expect(again.openings.length).toBeGreaterThan(0);
  again.openings.forEach((opening, i) => expect(opening).toBe(first.openings[i]));
});

it('what the barrel asks of a layout is told apart from what was kept without it', async () => {
  const flat: Design = {
    ...randomDesign(11),
    head: { source: { kind: 'measured', alongMm: 310, acrossMm: 310 }, clearanceMm: 5, crownMm: 0 },
    plates: [{ id: 'plate', name: 'Plate', diameter: { mm: 300 }, quantity: 1 }],
  };
  const side = { kind: 'side', bilgeMm: 660, endMm: 580, lengthMm: 900, lines: 'along-hoops', spread: true } as const;
  const designs: Design[] = [
    flat,
    { ...flat, surface: side },
    { ...flat, surface: { ...side, lines: 'up-staves' } },
    { ...flat, surface: { ...side, bilgeMm: 700 } },
    { ...flat, lifting: { shape: 'holes', count: 2, firstDeg: 90, at: 0.8 } },
    { ...flat, lifting: { shape: 'slots', count: 2, firstDeg: 90, at: 0.8 } },
  ];
  const { faces } = await loadFaces(flat);
  const store = createStore();
  const afresh = designs.map((design) =>
    JSON.stringify(makePlate(design, 'plate', faces, createStore(), BUILT_IN).openings),
  );
  expect(new Set(afresh).size).toBe(designs.length);
  for (const _ of ['made', 'found again']) {
    designs.forEach((design, i) => {
      expect(JSON.stringify(makePlate(design, 'plate', faces, store, BUILT_IN).openings)).toBe(afresh[i]);
    });
  }
});
