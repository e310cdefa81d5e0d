import type { Manner } from '../../geometry/design/schema.ts';
import { runCase, type Fault, type SweepCase, type SweepResult } from './case.ts';

// One of the processes of run-cases.ts: gets a batch, gives what came of each case in it.

export interface Batch {
  readonly cases: readonly SweepCase[];
  readonly manner: Manner;
}

export interface Outcome {
  readonly one: SweepCase;
  readonly outcome: SweepResult['outcome'];
  readonly fault: Fault | undefined;
}

process.on('message', (batch: Batch) => void answer(batch));

async function answer({ cases, manner }: Batch): Promise<void> {
  const outcomes: Outcome[] = [];
  for (const one of cases) {
    const { outcome, fault } = await runCase(one, manner);
    outcomes.push({ one, outcome, fault });
  }
  process.send?.(outcomes);
}
