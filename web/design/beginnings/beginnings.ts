import type { Design } from '../../../geometry/design/schema.ts';
import type { Question } from './question.ts';
import { BEGINNING_IDS, type BeginningId } from '../../state/beginning-ids.ts';
import { QUESTIONS } from './questions.ts';

const FILES = import.meta.glob<Design>('../../demo/*.json', { import: 'default', eager: true });

/** A design to begin with, and what it asks. */
export interface Beginning {
  readonly id: BeginningId;
  readonly design: Design;
  readonly questions: readonly Question[];
}

/** The demo designs with their questions, in the order they are offered. Taken as they are: a test reads every one of them. */
export const READY_MADE: readonly Beginning[] = BEGINNING_IDS.flatMap((id) => {
  const design = FILES[`../../demo/${id}.json`];
  return design === undefined ? [] : [{ id, design, questions: QUESTIONS[id] }];
});

export const BEGINNINGS: readonly Design[] = READY_MADE.map(({ design }) => design);

export function beginningById(id: string | undefined): Beginning | undefined {
  return READY_MADE.find((b) => b.id === id);
}
