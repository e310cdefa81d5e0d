import type { Mutant } from './changes.ts';

/** What the host is asked: the tests of one mutant until one fails, or with `reach` one test and what it reaches. */
export interface Ask {
  readonly mutant?: Mutant;
  readonly reach?: true;
  /** In order; each with the work it may cost, in ms of the processor. */
  readonly tests: readonly { readonly path: string; readonly mostMs: number }[];
}

export interface Answer {
  readonly failed?: string;
  readonly message?: string;
  /** ms of the processor that all asked took. */
  readonly costMs: number;
}

/** The status with which the host ends when a test took more work than it may. */
export const OUT_OF_WORK = 97;
