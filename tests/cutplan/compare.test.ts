import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { compareProcesses } from '../../geometry/cutplan/cost/compare.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { demoDesigns } from '../figures/main/demo-plates.ts';

const [design] = demoDesigns();
if (!design) throw new Error('no demo');
const { faces } = await loadFaces(design);
const plate = makePlate(design, 'half', faces, createStore(), BUILT_IN);
const { plate: own, rows } = compareProcesses(plate, planCuts(plate), design.stock, BUILT_IN);
const row = (id: string) => rows.find((r) => r.process === id)!;

describe('the processes side by side, for a demo plate in stainless steel', () => {
  it('has a row for each, with what it asks of this sheet', () => {
    expect(rows.map((r) => r.process)).toEqual(BUILT_IN.processes.map((p) => p.id));
    for (const { process, least } of rows) {
      const { rules } = stockRules({ ...design.stock, process }, 'auto', BUILT_IN);
      expect(least).toEqual({
        openingMm: rules.leastOpeningMm,
        webMm: rules.leastWebMm,
        bridgeMm: rules.leastBridgeMm,
      });
    }
    expect(own.bridgeMm).toBe(plate.measures.leastBridgeMm);
  });

  it('says what may not cut it, and why', () => {
    expect(row('router')).toMatchObject({ isAllowed: false, fit: { grade: 'never', why: 'steelRouter' } });
    expect(row('router').time).toHaveProperty('problem');
    expect(row('router').price).toBeUndefined();
    expect(row('fibre-laser').isAllowed).toBe(true);
  });

  it('loses no letter under the laser it was made for, and the more the coarser the cut', () => {
    const lost = ['fibre-laser', 'water-jet', 'plasma'].map((id) => row(id).lostLetters);
    expect(lost[0]).toBe(0);
    expect(lost[2]).toBeGreaterThan(0);
    expect([...lost].sort((a, b) => a - b)).toEqual(lost);
  });

  it('takes longer than cutting at full feed, and a water jet longer than a laser; each price adds up', () => {
    const seconds = (id: string): number => {
      const { time } = row(id);
      return 'seconds' in time ? time.seconds : NaN;
    };
    expect(seconds('fibre-laser')).toBeGreaterThan((planCuts(plate).cuttingLengthMm / 12_000) * 60);
    expect(seconds('water-jet')).toBeGreaterThan(2 * seconds('fibre-laser'));
    for (const { price } of rows) {
      if (price) expect(price.totalMinor).toBe(price.lines.reduce((sum, l) => sum + l.minor, 0));
    }
  });
});
