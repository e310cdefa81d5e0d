import { readFileSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { type Cache } from '../../geometry/cache.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore, type SolveStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

/** A store that counts what it had to have made. */
function countingStore() {
  const made = { layouts: 0, units: 0, proofs: 0 };
  const count = <V>(cache: Cache<V>, what: keyof typeof made): Cache<V> => ({
    ...cache,
    set(key, value) {
      made[what]++;
      cache.set(key, value);
    },
    getOrMake: (key, make, fits) =>
      cache.getOrMake(
        key,
        () => {
          made[what]++;
          return make();
        },
        fits,
      ),
  });
  const store = createStore();
  const counted: SolveStore = {
    ...store,
    layouts: count(store.layouts, 'layouts'),
    units: count(store.units, 'units'),
    proofs: count(store.proofs, 'proofs'),
  };
  return { store: counted, made };
}

function demo(): Design {
  const read = readDesign(readFileSync('web/demo/makers-head.json', 'utf8'));
  if ('problem' in read) throw new Error('the demo cannot be read');
  return read.design;
}

function typed(design: Design, letter: string): Design {
  const at = design.elements.findIndex((e) => 'text' in e);
  // As a worker is handed it: nothing of it is an object that was there before.
  return structuredClone({
    ...design,
    elements: design.elements.map((e, i) =>
      i === at && 'text' in e ? { ...e, text: e.text.slice(0, -1) + letter } : e,
    ),
  });
}

// The first in its file: patterns are built once, at the first plate.
it('texts in Western letters are read without a pattern of all letters of the world', async () => {
  const design = demo();
  const { faces } = await loadFaces(design);
  const built: string[] = [];
  const Plain = globalThis.RegExp;
  vi.stubGlobal(
    'RegExp',
    new Proxy(Plain, {
      construct(target, [source, flags]: [string, string?]) {
        built.push(`${source}/${flags ?? ''}`);
        return new target(source, flags);
      },
    }),
  );
  try {
    makePlate(typed(design, 'B'), design.plates[0]!.id, faces, createStore(), BUILT_IN);
  } finally {
    vi.unstubAllGlobals();
  }
  expect(built.length).toBeGreaterThan(10);
  expect(built.filter((pattern) => pattern.includes('\\p{'))).toEqual([]);
});

it('one changed letter is one unit solved, one proof, one text laid out; all else stands as the same objects', async () => {
  const design = demo();
  const plateId = design.plates[0]!.id;
  const { faces } = await loadFaces(design);
  const { store, made } = countingStore();
  const before = makePlate(design, plateId, faces, store, BUILT_IN);
  const changed = design.elements.find((e) => 'text' in e)!.id;
  // Every text of this head takes the room that the others leave: each is asked anew whether it still has it.
  expect(design.elements.filter((e) => 'room' in e).length).toBeGreaterThan(3);
  const shapes = new Set(before.layout.shapes);
  const openings = new Set(before.openings);
  for (const letter of ['B', 'Q']) {
    Object.assign(made, { layouts: 0, units: 0, proofs: 0 });
    const after = makePlate(typed(design, letter), plateId, faces, store, BUILT_IN);
    expect(made.units).toBe(1);
    expect(made.proofs).toBe(1);
    // The text itself, as asked and in its room, and for each text that stands beside it that it may stay.
    expect(made.layouts).toBeLessThanOrEqual(1 + design.elements.length);
    for (const shape of after.layout.shapes) expect(shape.elementId === changed || shapes.has(shape)).toBe(true);
    for (const opening of after.openings)
      expect(opening.elementIds.includes(changed) || openings.has(opening)).toBe(true);
  }
});
