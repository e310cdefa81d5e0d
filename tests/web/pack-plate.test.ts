import { expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { packPlate, unpackPlate } from '../../web/worker/pack-plate.ts';
import { randomDesign } from '../judge/random-design.ts';

async function somePlate(seed: number): Promise<PlateResult> {
  const design = randomDesign(seed);
  const { faces } = await loadFaces(design);
  return makePlate(design, 'plate', faces, createStore(), BUILT_IN);
}

it.each([2, 11, 17])('a plate is the same to the last digit after the way to the page (seed %d)', async (seed) => {
  const plate = await somePlate(seed);
  expect(plate.openings.length).toBeGreaterThan(0);
  const packed = packPlate(plate);
  const arrived = structuredClone(packed, { transfer: [packed.xy.buffer] });
  expect(packed.xy.length).toBe(0);
  expect(JSON.stringify(unpackPlate(arrived))).toBe(JSON.stringify(plate));
});

it('leaves the worker its own plate as it was', async () => {
  const plate = await somePlate(2);
  const before = JSON.stringify(plate);
  packPlate(plate);
  expect(JSON.stringify(plate)).toBe(before);
});
