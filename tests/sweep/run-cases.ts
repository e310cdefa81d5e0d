import { type ChildProcess, fork } from 'node:child_process';
import type { Manner } from '../../geometry/design/schema.ts';
import { seeded } from '../judge/seeded.ts';
import { allCases, type SweepCase } from './case.ts';
import type { Batch, Outcome } from './worker.ts';

/** Small enough that the processes end together. */
const BATCH = 8;

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

/** Runs cases in so many processes; `tell` hears of each batch as it is done. Only where TypeScript is loaded by tsx. */
export async function runCases(
  cases: readonly SweepCase[],
  jobs: number,
  manner: Manner,
  tell: (batch: readonly Outcome[]) => void,
): Promise<void> {
  let next = 0;
  const workers = Array.from({ length: Math.max(1, jobs) }, async () => {
    const worker = fork(new URL('./worker.ts', import.meta.url));
    try {
      while (next < cases.length) {
        const batch: Batch = { cases: cases.slice(next, (next += BATCH)), manner };
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

export function caseName({ face, char, capMm, stock }: SweepCase): string {
  return `${face} ${char} ${capMm} mm, ${stock.material} ${stock.thicknessMm} mm ${stock.process}`;
}
