import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { writeDxf } from '../../geometry/files/dxf/dxf.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { judgeDxf } from './judge-dxf.ts';
import { randomDesign } from './random-design.ts';

/** A sample here; `npm run figures -- main` judges sixty. */
const SEEDS = [1, 4, 7, 9, 12, 19, 26, 33, 40, 52];
const DEMOS = ['makers-head', 'golden-wedding', 'cask-series'];

async function judged(design: Design, plateId: string) {
  const { faces } = await loadFaces(design);
  const plate = makePlate(design, plateId, faces, createStore(), BUILT_IN);
  const verdict = judgeDxf(writeDxf(design, plate, planCuts(plate)), plate.rules.leastBridgeMm);
  return { plate, ...verdict };
}

describe('the written cut file, read by dxf-parser and judged by JTS', () => {
  it.each(DEMOS.flatMap((name) => ['large', 'half'].map((plate) => [name, plate] as const)))(
    '%s, %s plate: one piece of metal, also when shrunk',
    async (name, plateId) => {
      const read = readDesign(readFileSync(new URL(`../../web/demo/${name}.json`, import.meta.url), 'utf8'));
      if ('problem' in read) throw new Error(read.problem);
      const { plate, pieces, shrunkPieces, rimDiameterMm, contours, metalAreaMm2 } = await judged(read.design, plateId);
      expect({ pieces, shrunkPieces }).toEqual({ pieces: 1, shrunkPieces: 1 });
      expect(Math.abs(rimDiameterMm - plate.diameterMm)).toBeLessThan(0.001);
      expect(contours).toBe(plate.openings.length);
      expect(Math.abs(metalAreaMm2 / plate.measures.metalAreaMm2 - 1)).toBeLessThan(0.001);
    },
  );

  it.each(SEEDS)('seeded design %d: sound, or a finding says why not', async (seed) => {
    const { plate, pieces, shrunkPieces } = await judged(randomDesign(seed), 'plate');
    const refused = plate.findings.some((f) => f.severity === 'stop');
    if (!refused) expect({ pieces, shrunkPieces }).toEqual({ pieces: 1, shrunkPieces: 1 });
    // The tool's own proof and the judge agree, whatever else may be wrong with the design.
    const ownProof = !plate.findings.some((f) => f.code === 'not-one-piece' || f.code === 'metal-in-pieces');
    expect(pieces === 1 && shrunkPieces === 1).toBe(ownProof);
  });
});
