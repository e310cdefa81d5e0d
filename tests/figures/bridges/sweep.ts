import { caseName, runCases, sampleCases } from '../../sweep/run-cases.ts';
import type { Claim } from '../claim.ts';

const CASES = 1500;
const SEED = 2086;
const MOST_NAMED = 12;

/** A seeded share of the full sweep, which `npm run -s sweep` does. */
export const SWEEP_CLAIMS: readonly Claim[] = [
  {
    name: 'sweep-failing-in-silence',
    wanted: '0: each letter holds by the judgement of JTS, or it is told why not',
    async measure() {
      const counts = { held: 0, told: 0, silent: 0 };
      const silent: string[] = [];
      const cases = await sampleCases(CASES, SEED);
      await runCases(cases, 2, 'hidden', (batch) => {
        for (const { one, outcome, fault } of batch) {
          counts[outcome]++;
          if (outcome === 'silent') silent.push(`${caseName(one)}: ${fault?.why ?? ''}`);
        }
      });
      const named = silent.slice(0, MOST_NAMED).join('; ');
      return {
        value: counts.silent,
        unit: `of ${cases.length} letters, ${counts.held} held, ${counts.told} told${named ? `: ${named}` : ''}`,
        // A maker that tells of everything would never be silent.
        ok: counts.silent === 0 && counts.held > cases.length / 2,
      };
    },
  },
];
