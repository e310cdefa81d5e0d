import { beforeAll, describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { provePlan } from '../../geometry/pipeline/prove-plan.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { measureGaps } from '../../geometry/checks/measure-gaps.ts';
import { verifyPlate } from '../../geometry/checks/verify-plate.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { randomDesign } from '../judge/random-design.ts';

const SEEDS = [2, 11, 17, 31];

describe('the proof unit by unit and the proof of the whole plate', () => {
  const plates: PlateResult[] = [];
  beforeAll(async () => {
    for (const seed of SEEDS) {
      const design = randomDesign(seed);
      const { faces } = await loadFaces(design);
      plates.push(makePlate(design, 'plate', faces, createStore(), BUILT_IN));
    }
  });

  it.each(SEEDS.map((seed, i) => [seed, i] as const))('agree on seeded design %d', (_seed, i) => {
    const plate = plates[i]!;
    const regions = plate.openings.map((o) => o.region);
    const whole = verifyPlate(plate.diameterMm, regions, plate.rules.leastBridgeMm);
    expect(whole.onePiece).toBe(!plate.findings.some((f) => f.code === 'not-one-piece'));
    const limit = 2 * Math.max(plate.rules.leastBridgeMm, plate.rules.leastWebMm);
    const { webs, slots } = measureGaps(whole.graph, limit, 2 * plate.rules.leastOpeningMm);
    const narrowest = Math.min(plate.measures.leastBridgeMm ?? Infinity, plate.measures.leastWebMm ?? Infinity);
    expect(webs[0]?.mm ?? Infinity).toBeCloseTo(narrowest, 2);
    expect(slots[0]?.mm ?? Infinity).toBeCloseTo(plate.measures.leastOpeningMm ?? Infinity, 2);
  });

  it('a plan that lost a bridge is refused, whatever the plate says of itself', () => {
    const plate = plates.find((p) => p.islands.length > 0 && p.verdict !== 'stop') ?? plates[0]!;
    const island = plate.islands[0]!;
    const element = island.elementIds[0]!;
    const unbridged = plate.unbridged.filter((r) => r.holes.length > 0);
    expect(unbridged.length).toBeGreaterThan(0);
    const lost = {
      ...plate,
      openings: unbridged.map((region, i) => ({ ...plate.openings[0]!, id: `${element}.${i}`, region })),
    };
    const proved = provePlan({ ...lost, findings: [], verdict: 'ready' }, planCuts(lost));
    expect(proved.verdict).toBe('stop');
    expect(proved.findings.map((f) => f.code)).toContain('not-one-piece');
  });
});
