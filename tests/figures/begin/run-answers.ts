import { type ChildProcess, fork } from 'node:child_process';
import type { AnswerCase, AnswerOutcome } from './answered.ts';

const JOBS = 2;
/** A row of the alphabet: pairs that begin alike share what was bridged. */
const BATCH = 26;

/** Runs cases in two processes, in their order. */
export async function runAllAnswers(cases: readonly AnswerCase[]): Promise<AnswerOutcome[]> {
  const outcomes: AnswerOutcome[] = [];
  let next = 0;
  const workers = Array.from({ length: JOBS }, async () => {
    const worker = fork(new URL('./worker.ts', import.meta.url), { execArgv: ['--import', 'tsx'] });
    try {
      while (next < cases.length) outcomes.push(...(await answered(worker, cases.slice(next, (next += BATCH)))));
    } finally {
      worker.kill();
    }
  });
  await Promise.all(workers);
  return outcomes;
}

function answered(worker: ChildProcess, batch: readonly AnswerCase[]): Promise<AnswerOutcome[]> {
  return new Promise((resolve, reject) => {
    const failed = (code: number | null) => reject(new Error(`a process ended with status ${code}`));
    worker.once('exit', failed);
    worker.once('message', (outcomes) => {
      worker.off('exit', failed);
      resolve(outcomes as AnswerOutcome[]);
    });
    worker.send(batch);
  });
}
