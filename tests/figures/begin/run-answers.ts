import { type ChildProcess, fork } from 'node:child_process';
import { partOf, type Part } from '../part.ts';
import type { AnswerCase, AnswerOutcome } from './answered.ts';
import { keptOutcomes } from './kept-outcomes.ts';

const JOBS = 2;
/** A row of the alphabet: pairs that begin alike share what was bridged. */
const BATCH = 26;

/** Runs cases, or one part of them, in two processes; a part in one. What the same sources gave before is taken. */
export async function runAllAnswers(all: readonly AnswerCase[], part?: Part): Promise<AnswerOutcome[]> {
  const cases = partOf(all, part);
  const kept = keptOutcomes();
  const open = cases.filter((one) => kept.get(one) === undefined);
  let next = 0;
  const jobs = part ? 1 : Math.min(JOBS, Math.ceil(open.length / BATCH));
  const workers = Array.from({ length: jobs }, async () => {
    const worker = fork(new URL('./worker.ts', import.meta.url), { execArgv: ['--import', 'tsx'] });
    try {
      while (next < open.length) kept.add(await answered(worker, open.slice(next, (next += BATCH))));
    } finally {
      worker.kill();
    }
  });
  await Promise.all(workers);
  return cases.map((one) => kept.get(one)!);
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
