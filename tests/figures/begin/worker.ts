import { runAnswers, type AnswerCase, type AnswerOutcome } from './answered.ts';

// One of the processes of run-answers.ts: gets a batch, gives what came of each case in it.

process.on('message', (batch: readonly AnswerCase[]) => void answer(batch));

async function answer(batch: readonly AnswerCase[]): Promise<void> {
  const outcomes: AnswerOutcome[] = [];
  for (const one of batch) outcomes.push(await runAnswers(one));
  process.send?.(outcomes);
}
