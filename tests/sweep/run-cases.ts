import { type ChildProcess, fork } from 'node:child_process';
import type { Manner } from '../../geometry/design/schema.ts';
import { seeded } from '../judge/seeded.ts';
import { letterName } from '../viewer/cases.ts';
import { allCases, CAP_HEIGHTS_MM, STOCKS, type SweepCase } from './case.ts';
import type { Batch, Outcome } from './worker.ts';

/** All heights and stocks of one letter, which is then drawn once; small enough that the processes end together. */
const BATCH = CAP_HEIGHTS_MM.length * STOCKS.length;
/** A sweep makes heaps of short-lived points: room for the young among them, MB. */
const YOUNG_MB = 64;

/** A seeded choice of so many of the cases, without repeats; all of them when fewer. */
export async function sampleCases(count: number, seed: number): Promise<SweepCase[]> {
  const cases = await allCases();
  const random = seeded(seed);
  const taken = Math.min(count, cases.length);
  for (let i = 0; i < taken; i++) {
    const j = random.whole(i, cases.length - 1);
    [cases[i], cases[j]] = [cases[j]!, cases[i]!];
  }
  return cases.slice(0, taken);
}

/** The part-th of so many parts, whole letters each: cases that are drawn alike stay together. */
export function partOf(cases: readonly SweepCase[], part: number, parts: number): SweepCase[] {
  return cases.filter((_, i) => Math.floor(i / BATCH) % parts === part - 1);
}

/** Runs cases in so many processes; `tell` hears of each batch as it is done. */
export async function runCases(
  cases: readonly SweepCase[],
  jobs: number,
  manner: Manner,
  tell: (batch: readonly Outcome[]) => void,
): Promise<void> {
  let next = 0;
  const size = Math.min(BATCH, Math.ceil(cases.length / (4 * jobs)));
  const workers = Array.from({ length: Math.max(1, jobs) }, async () => {
    const worker = fork(new URL('./worker.ts', import.meta.url), {
      execArgv: [`--max-semi-space-size=${YOUNG_MB}`, '--import', new URL('./plain-ts.mjs', import.meta.url).href],
    });
    try {
      while (next < cases.length) {
        const batch: Batch = { cases: cases.slice(next, (next += size)), manner };
        tell(await answered(worker, batch));
      }
    } finally {
      worker.kill();
    }
  });
  await Promise.all(workers);
}

function answered(worker: ChildProcess, batch: Batch): Promise<Outcome[]> {
  return new Promise((resolve, reject) => {
    const failed = (code: number | null) => reject(new Error(`a process of the sweep ended with status ${code}`));
    worker.once('exit', failed);
    worker.once('message', (outcomes) => {
      worker.off('exit', failed);
      resolve(outcomes as Outcome[]);
    });
    worker.send(batch);
  });
}

/** What a case is, and its address in the viewer (`npm run viewer`). */
export function caseName({ face, char, capMm, stock }: SweepCase, manner: Manner = 'hidden'): string {
  const address = `?case=${encodeURIComponent(letterName(face, char, capMm, stock, manner))}`;
  return `${face} ${char} ${capMm} mm, ${stock.material} ${stock.thicknessMm} mm ${stock.process} (${address})`;
}
