import { parseArgs } from 'node:util';
import type { Manner } from '../../geometry/design/schema.ts';
import { allCases } from './case.ts';
import { caseName, runCases, sampleCases } from './run-cases.ts';

// `npm run -s sweep -- [--share 0.02] [--seed 1] [--jobs 2] [--manner hidden]`: every face x character x cap height x
// stock, or a seeded share of them, judged by JTS. Status 1 when a letter fails and nobody says so.

const { values } = parseArgs({
  options: {
    share: { type: 'string', default: '1' },
    seed: { type: 'string', default: '1' },
    jobs: { type: 'string', default: '2' },
    manner: { type: 'string', default: 'hidden' },
  },
});
const share = Number(values.share);
const [seed, jobs] = [Number(values.seed), Number(values.jobs)];
const MANNERS: readonly string[] = ['hidden', 'upright', 'band'] satisfies Manner[];
if (!(share > 0 && share <= 1) || !Number.isInteger(seed) || !(jobs >= 1) || !MANNERS.includes(values.manner)) {
  console.error(
    '--share is above 0 and at most 1, --seed a whole number, --jobs at least 1, --manner hidden, upright or band.',
  );
  process.exit(1);
}

const all = await allCases();
const cases = share < 1 ? await sampleCases(Math.ceil(share * all.length), seed) : all;
const counts = { held: 0, told: 0, silent: 0 };
const start = performance.now();
let done = 0;
let shown = 0;
await runCases(cases, jobs, values.manner as Manner, (batch) => {
  for (const { one, outcome, fault } of batch) {
    done++;
    counts[outcome]++;
    if (outcome === 'silent') console.log(`silent: ${caseName(one)}: ${fault?.why ?? ''}`);
  }
  const seconds = (performance.now() - start) / 1000;
  if (seconds - shown < 10) return;
  shown = seconds;
  const left = Math.round(((seconds / done) * (cases.length - done)) / 60);
  console.error(`${done} of ${cases.length}, ${counts.silent} silent, about ${left} min left`);
});
console.log(
  `${cases.length} cases of ${all.length}: ${counts.held} held, ${counts.told} told, ${counts.silent} silent (${((performance.now() - start) / 60_000).toFixed(1)} min)`,
);
process.exit(counts.silent > 0 ? 1 : 0);
