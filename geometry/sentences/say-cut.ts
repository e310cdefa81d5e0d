import { CUT_SAID_EN } from './cut-said-en.ts';
import { refusedAs, saidAs, sayFrom, type KeyOf } from './say.ts';
import type { Refused, Wording, WordValues } from './wording.ts';

export type CutKey = KeyOf<typeof CUT_SAID_EN>;

/** A part of what is said about a sheet and its cutting. */
export function sayOfCut(key: CutKey, values: WordValues = {}): Wording {
  return sayFrom(CUT_SAID_EN, key, values);
}

/** A sentence for a finding about it. */
export function saidOfCut(key: CutKey, values: WordValues = {}): ReturnType<typeof saidAs> {
  return saidAs(sayOfCut(key, values));
}

/** Why a table, a price or a sheet's files cannot be had. */
export function refusedCut(key: CutKey, values: WordValues = {}): Refused {
  return refusedAs(sayOfCut(key, values));
}
