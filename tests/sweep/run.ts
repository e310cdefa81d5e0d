import { parseArgs } from 'node:util';
import type { Manner } from '../../geometry/design/schema.ts';
import { allCases } from './case.ts';
import { caseName, partOf, runCases, sampleCases } from './run-cases.ts';

// `npm run -s sweep -- [--share 0.02] [--seed 1] [--jobs 2] [--manner hidden]
// [--part 3/8]`: every face x character x cap height x stock, or a seeded share of them, or one part of eight, judged by
// JTS. Status 1 when a letter fails and nobody says so. `--told` lists what failed and was told, too.

const { values } = parseArgs({
  options: {
    share: { type: 'string', default: '1' },
    seed: { type: 'string', default: '1' },
    jobs: { type: 'string', default: '2' },
    manner: { type: 'string', default: 'hidden' },
    part: { type: 'string', default: '1/1' },
    told: { type: 'boolean', default: false },
  },
});
const share = Number(values.share);
const [seed, jobs] = [Number(values.seed), Number(values.jobs)];
const [part, parts] = values.part.split('/').map(Number) as [number, number | undefined];
const MANNERS: readonly string[] = ['hidden', 'upright', 'band'] satisfies Manner[];
if (!(share > 0 && share <= 1) || !Number.isInteger(seed) || !(jobs >= 1) || !MANNERS.includes(values.manner)) {
  console.error(
    '--share is above 0 and at most 1, --seed a whole number, --jobs at least 1, --manner hidden, upright or band.',
  );
  process.exit(1);
}

if (!parts || !Number.isInteger(parts) || !Number.isInteger(part) || part < 1 || part > parts) {
  console.error('--part is like 3/8: the third of eight parts.');
  process.exit(1);
}

const all = await allCases();
const cases = partOf(share < 1 ? await sampleCases(Math.ceil(share * all.length), seed) : all, part, parts);
const counts = { held: 0, told: 0, silent: 0 };
const start = performance.now();
let done = 0;
let shown = 0;
await runCases(cases, jobs, values.manner as Manner, (batch) => {
  for (const { one, outcome, fault } of batch) {
    done++;
    counts[outcome]++;
    if (outcome === 'silent' || (outcome === 'told' && values.told)) {
      console.log(`${outcome}: ${caseName(one, values.manner as Manner)}: ${fault?.why ?? ''}`);
    }
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
