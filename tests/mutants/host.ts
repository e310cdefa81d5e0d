import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { createVitest } from 'vitest/node';
import { type Answer, type Ask, OUT_OF_WORK } from './ask.ts';
import { applyMutant, weaveReach } from './changes.ts';
import { isMutated, ROOT } from './sources.ts';

// The process that runs tests for `run.ts`, one test file after another in one vitest. A test that does not end takes
// the whole process with it, which is why it is one of its own: `run.ts` starts another.

/** Where `note-reach.ts` leaves what a test reached. */
const REACH_FILE = process.argv[2]!;

let asked: Ask = { tests: [] };
const vitest = await createVitest(
  'test',
  {
    config: `${ROOT}/tests/vitest.config.ts`,
    watch: false,
    maxWorkers: 1,
    fileParallelism: false,
    bail: 1,
    reporters: [{}],
    setupFiles: ['tests/words-at-hand.ts', 'tests/mutants/note-reach.ts'],
  },
  {
    plugins: [
      {
        name: 'mutants',
        enforce: 'pre',
        transform(_: string, id: string) {
          const file = relative(ROOT, id.split('?')[0]!);
          if (!isMutated(file)) return undefined;
          const text = readFileSync(`${ROOT}/${file}`, 'utf8');
          if (asked.reach) return { code: weaveReach(file, text), map: null };
          return asked.mutant?.file === file ? { code: applyMutant(text, asked.mutant), map: null } : undefined;
        },
      },
    ],
  },
);
await vitest.standalone();

process.on('message', (ask: Ask) => {
  void answer(ask).then((said) => process.send?.(said));
});
process.on('disconnect', () => process.exit(0));
process.send?.({ ready: true });

async function answer(ask: Ask): Promise<Answer> {
  const before = asked.mutant?.file;
  asked = ask;
  for (const file of [before, ask.mutant?.file]) if (file !== undefined) vitest.invalidateFile(`${ROOT}/${file}`);
  let costMs = 0;
  for (const { path, mostMs } of ask.tests) {
    process.env['REACH_FILE'] = asked.reach ? REACH_FILE : '';
    const [start, endsAfter] = [worked(), mostMs];
    const watch = setInterval(() => {
      if (worked() - start > endsAfter) process.exit(OUT_OF_WORK);
    }, 250);
    vitest.state.filesMap.clear();
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications(
      await vitest.globTestSpecifications([`${ROOT}/${path}`]),
    );
    clearInterval(watch);
    costMs += worked() - start;
    const bad = testModules.find((module) => !module.ok());
    if (bad || unhandledErrors.length > 0 || testModules.length === 0) {
      const test = bad && [...bad.children.allTests('failed')][0];
      const error = test?.result().errors?.[0] ?? bad?.errors()[0];
      return { failed: path, message: `${test?.fullName ?? ''}: ${error?.message ?? ''}`.slice(0, 300), costMs };
    }
  }
  return { costMs };
}

/** Work of this process and its threads so far, in ms: a busy machine makes nothing longer. */
function worked(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
