import { PAPER_SAID_EN } from './paper-said-en.ts';
import { PROOF_SAID_EN } from './proof-said-en.ts';
import { sayFrom, type KeyOf } from './say.ts';
import { SHEET_SAID_EN } from './sheet-said-en.ts';
import type { Wording, WordValues } from './wording.ts';

export type PaperKey = KeyOf<typeof PAPER_SAID_EN>;
export type ProofKey = KeyOf<typeof PROOF_SAID_EN>;
export type SheetKey = KeyOf<typeof SHEET_SAID_EN>;

/** All that papers say. */
const ALL = { ...PAPER_SAID_EN, ...PROOF_SAID_EN, ...SHEET_SAID_EN };

/** A sentence, label or name on a paper. */
export function sayOnPaper(key: PaperKey | ProofKey | SheetKey, values: WordValues = {}): Wording {
  return sayFrom(ALL, key, values);
}
