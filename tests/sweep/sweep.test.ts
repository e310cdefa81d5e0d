import { describe, expect, it } from 'vitest';
import { runCase } from './case.ts';
import { caseName, sampleCases } from './run-cases.ts';

/** A sample here; `npm run figures -- bridges` judges ten times as many, `npm run -s sweep` all. */
const CASES = 150;
const SEED = 2027;

describe('letters of any face at any height from any stock, judged by JTS', () => {
  it(`${CASES} seeded ones hold, or it is told why not`, async () => {
    const silent: string[] = [];
    let held = 0;
    for (const one of await sampleCases(CASES, SEED)) {
      const { outcome, fault } = await runCase(one);
      if (outcome === 'silent') silent.push(`${caseName(one)}: ${fault?.why ?? ''}`);
      if (outcome === 'held') held++;
    }
    expect(silent).toEqual([]);
    // A maker that tells of everything would never be silent.
    expect(held).toBeGreaterThan(CASES / 2);
  });
});
