import { mkdirSync, writeFileSync } from 'node:fs';
import { mutantsOf } from './run-mutants.ts';
import { SURFACES } from './surfaces.ts';
import { watchChild } from './watch-child.ts';

// `npm run fuzz -- MINUTES [SEED]`: harmed files at every reader until the time is over. What crashes, hangs, says nothing or
// is taken for something else is written to tests/hostile/found/, where a test keeps it as a case. Status 1 when there was any.

const [minutes = '1', first = '1'] = process.argv.slice(2);
const [time, seed0] = [Number(minutes), Number(first)];
if (!(time > 0) || !Number.isInteger(seed0)) {
  console.error('Say for how many minutes. Use: npm run fuzz -- MINUTES [SEED]');
  process.exit(1);
}
const until = Date.now() + time * 60_000;
const FOUND = 'tests/hostile/found';
let [seed, read, bad] = [seed0, 0, 0];
for (; Date.now() < until; seed++) {
  for (const surface of SURFACES) {
    if (Date.now() >= until) break;
    const count = surface.share;
    const ended = await watchChild(['mutants', surface.name, String(seed), String(count)]);
    read += ended.length;
    for (const { at, trouble } of ended) {
      if (!trouble) continue;
      bad++;
      mkdirSync(FOUND, { recursive: true });
      const file = `${FOUND}/${surface.name}.${seed}-${at}.bin`;
      writeFileSync(file, mutantsOf(surface, seed, count)[at]!.bytes);
      console.log(`${trouble.kind}: ${file}\n  ${trouble.why.split('\n').slice(0, 3).join('\n  ')}`);
    }
  }
}
console.log(`${read} mutants from seed ${seed0} on: ${bad} went wrong.`);
process.exit(bad > 0 ? 1 : 0);
