import { join } from 'node:path';
import { Host } from './ask-host.ts';
import { CACHE } from './reach.ts';
import { SEED, trySample } from './try-sample.ts';

// `npm run mutants -- SHARE [SEED]`: small changes of geometry/ and fonts/, a seeded sample of them, each put to the
// tests that run its function until one fails. SHARE up to 1 is a share of all, above 1 a number. Survivors are listed.
// `--in=bridges/mirror` changes these files only, `--by=tests/bridges` asks these tests only: for mending tests. The first
// run maps which test reaches what and takes as long as all tests; all that is known is kept in .cache/mutants.
// Stryker was tried: 10.1 starts only on Node 22 (here from 20), and 9 runs every test that imports the file first.

const [share = '0.01', seed] = process.argv.slice(2).filter((arg) => !arg.startsWith('--'));
if (!(Number(share) > 0) || (seed !== undefined && !Number.isInteger(Number(seed)))) {
  console.error('Say how many: npm run mutants -- SHARE [SEED]. SHARE is 0.01 for one in a hundred, or 60 for sixty.');
  process.exit(1);
}
const host = new Host(join(CACHE, `reached-${process.pid}.json`));
const found = await trySample(host, Number(share), seed === undefined ? SEED : Number(seed), {
  tell: console.log,
  within: flag('in'),
  by: flag('by'),
});
host.end();
for (const { mutant, why } of found.survivors) {
  const { file, line, column, was, becomes } = mutant;
  console.log(`${file}:${line}:${column} ${was} -> ${becomes}${why === undefined ? '' : ` (changes nothing: ${why})`}`);
}
console.log(
  `${found.noticed} of ${found.tried} noticed, ${found.outOfWork} of these as work without end; ` +
    `${found.harmless} more change nothing`,
);

function flag(name: string): string {
  return process.argv.find((arg) => arg.startsWith(`--${name}=`))?.slice(name.length + 3) ?? '';
}
