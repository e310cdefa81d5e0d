import { SURFACES } from '../../hostile/fuzz/surfaces.ts';
import { type Ended, watchChild } from '../../hostile/fuzz/watch-child.ts';
import { HOSTILE_INPUTS } from '../../hostile/inputs.ts';
import type { Claim } from '../claim.ts';

const MOST_MS = 2000;
const MOST_MB = 512;
const LEAST_INPUTS = 400;
const MUTANTS = 20_000;
const SEED = 20_261_201;

/** Bad input at every way in, each read in a process of its own that may hang or end. */
export const READER_CLAIMS: readonly Claim[] = [
  {
    name: 'inputs',
    wanted: `at least ${LEAST_INPUTS} told; silent, crash, hang, longer than 2 s of work, above 512 MB: 0`,
    async measure() {
      const ended = await watchChild(['inputs']);
      const long = ended.filter(({ ms }) => ms > MOST_MS).length;
      const large = ended.filter(({ mb }) => mb > MOST_MB).length;
      const told = ended.filter(({ trouble }) => trouble === undefined).length;
      const bad = ended.filter((e) => e.trouble !== undefined || e.ms > MOST_MS || e.mb > MOST_MB);
      return {
        value: `${told} of ${HOSTILE_INPUTS.length} told, ${troubles(ended)}, longer than 2 s ${long}, above 512 MB ${large}`,
        unit: bad.length > 0 ? `(${bad.slice(0, 5).map(({ at }) => HOSTILE_INPUTS[at]?.name).join('; ')})` : '',
        ok: told === HOSTILE_INPUTS.length && told >= LEAST_INPUTS && bad.length === 0,
      }; // prettier-ignore
    },
  },
  {
    name: 'fuzz',
    wanted: `${MUTANTS} seeded mutants of every format: crash, hang, silent, taken for another design: 0`,
    async measure() {
      const all: Ended[] = [];
      const places: string[] = [];
      for (const { name, share } of SURFACES) {
        const count = Math.round((MUTANTS * share) / 1000);
        const ended = await watchChild(['mutants', name, String(SEED), String(count)]);
        all.push(...ended);
        places.push(...ended.filter((e) => e.trouble).map((e) => `${name} ${e.at}: ${e.trouble?.kind}`));
      }
      return {
        value: `${all.length} mutants, ${troubles(all)}`,
        unit: places.length > 0 ? `(${places.slice(0, 8).join('; ')})` : '',
        ok: all.length >= MUTANTS && places.length === 0,
      };
    },
  },
];

function troubles(ended: readonly Ended[]): string {
  const count = (kind: string): number => ended.filter(({ trouble }) => trouble?.kind === kind).length;
  return ['silent', 'crash', 'hang', 'another'].map((kind) => `${kind} ${count(kind)}`).join(', ');
}
