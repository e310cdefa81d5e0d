import { APPROVAL_EN } from './approval-said-en.ts';
import { capitalised, refusedAs, sayFrom, type KeyOf } from './say.ts';
import type { Refused, Wording, WordValues } from './wording.ts';

export type ApprovalKey = KeyOf<typeof APPROVAL_EN>;

/** A part of what is said of approvals, revisions and differences. */
export function sayHere(key: ApprovalKey, values: WordValues = {}): Wording {
  return sayFrom(APPROVAL_EN, key, values);
}

/** A sentence of it, in English and as what other languages need. It begins with a capital. */
export function saidHere(
  key: ApprovalKey,
  values: WordValues = {},
): { readonly sentence: string; readonly words: Wording } {
  const words = sayHere(key, values);
  return { sentence: capitalised(words.english), words };
}

/** Why something cannot be approved or kept. */
export function refusedHere(key: ApprovalKey, values: WordValues = {}): Refused {
  return refusedAs(sayHere(key, values));
}
