import { expect, it } from 'vitest';
import { motifById } from '../../../geometry/motifs/catalogue.ts';
import { emptyDesign } from '../../../geometry/design/defaults.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { watchStore } from '../../../web/worker/watched-store.ts';
import type { Design } from '../../../geometry/design/schema.ts';

it('a watched store tells of each element at each stage, and makes the same plate', () => {
  const ring = { kind: 'border', style: 'ring', inner: 0.8, outer: 0.86, repeat: 1 };
  const design = {
    ...emptyDesign(),
    elements: [
      { ...ring, id: 'outside' },
      { ...ring, id: 'inside', inner: 0.5, outer: 0.55 },
    ],
  } as unknown as Design;
  const plateId = design.plates[0]?.id ?? '';
  const told: (string | undefined)[] = [];
  const watched = watchStore(createStore(), (id) => told.push(id));
  const made = makePlate(design, plateId, { get: () => undefined, motif: motifById }, watched, BUILT_IN);
  const counted = (id: string): number => told.filter((t) => t === id).length;
  // laid out, flattened, bridged, proved
  expect(counted('outside')).toBeGreaterThanOrEqual(4);
  expect(counted('inside')).toBeGreaterThanOrEqual(4);
  expect(told.indexOf('outside')).toBeLessThan(told.indexOf('inside'));
  expect(made.bridges).toEqual(
    makePlate(design, plateId, { get: () => undefined, motif: motifById }, createStore(), BUILT_IN).bridges,
  );
});
