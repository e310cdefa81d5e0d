import { join } from 'node:path';
import { Host } from '../../mutants/ask-host.ts';
import { CACHE } from '../../mutants/reach.ts';
import { SEED, trySample } from '../../mutants/try-sample.ts';
import type { Claim } from '../claim.ts';

const SAMPLE = 60;
const LEAST_SHARE = 0.85;

/** Small changes of the kernel that the tests notice; `npm run mutants -- 60` lists the ones they do not. */
export const MUTANT_CLAIMS: readonly Claim[] = [
  {
    name: 'mutants',
    wanted: `at least ${LEAST_SHARE * 100} % of a seeded sample of ${SAMPLE} noticed`,
    async measure() {
      const host = new Host(join(CACHE, `reached-${process.pid}.json`));
      try {
        const { tried, noticed, outOfWork, harmless } = await trySample(host, SAMPLE, SEED, { tell: () => undefined });
        const also = `${outOfWork} of these as work without end, ${harmless} more change nothing`;
        return {
          value: `${noticed} of ${tried} noticed, ${also}`,
          unit: '',
          ok: noticed >= LEAST_SHARE * tried && tried + harmless === SAMPLE,
        };
      } finally {
        host.end();
      }
    },
  },
];
