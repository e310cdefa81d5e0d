import { expect, test } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { doWithin, spend } from '../../geometry/measure/counted-work.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

function wreaths(count: number): Design {
  const around = { count };
  const wreath = { kind: 'motif', id: 'w', motif: 'wreath', x: 0, y: 0.6, size: 0.5, turnDeg: 0, around } as const;
  return { ...emptyDesign(), elements: [wreath] };
}

test.each([36, 72])(
  'a wreath %i times round, over each other, ends with a sentence that says what to do',
  async (n) => {
    const design = wreaths(n);
    const { faces } = await loadFaces(design);
    const made = makePlate(design, design.plates[0]!.id, faces, createStore(), BUILT_IN);
    expect(made.verdict).toBe('stop');
    expect(made.findings.find((f) => f.code === 'too-intricate')?.sentence).toMatch(/Repeat it less often/);
    expect(made.openings).toEqual([]);
  },
  60_000,
);

test('counted work ends where its steps do, and work around it goes on', () => {
  const twice = doWithin(100, () => {
    const inner = doWithin(10, () => {
      for (;;) spend(1);
    });
    spend(50);
    return [inner, 'done'];
  });
  expect(twice).toEqual([undefined, 'done']);
  expect(doWithin(100, () => doWithin(1000, () => spend(101)))).toBeUndefined();
  expect(() => spend(1e9)).not.toThrow();
  expect(() =>
    doWithin(10, () => {
      throw new RangeError('a mistake');
    }),
  ).toThrow(RangeError);
});
