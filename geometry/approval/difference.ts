import { APPROVAL_EN } from '../sentences/approval-en.ts';
import type { KeyOf } from '../sentences/make-say.ts';
import type { Amount, Wording, WordValues } from '../sentences/wording.ts';

/** What a difference is about: what changed stands together by it, in this order. */
export const DIFFERENCE_GROUPS = ['lettering', 'drawings', 'bridges', 'plates', 'stock', 'barrel'] as const;
export type DifferenceGroup = (typeof DIFFERENCE_GROUPS)[number];

/** One thing that is cut otherwise. */
export interface Difference {
  readonly group: DifferenceGroup;
  /** Key of the sentence. */
  readonly code: DifferenceKey;
  /** Id in the design after, or before for what was taken out. */
  readonly elementId?: string;
  readonly plateId?: string;
  /** Plain English. */
  readonly sentence: string;
  /** The same for other languages. */
  readonly words: Wording;
}

export type DifferenceKey = Extract<KeyOf<typeof APPROVAL_EN>, `differences.${string}`>;

export function difference(
  group: DifferenceGroup,
  code: DifferenceKey,
  values: WordValues = {},
  about: Pick<Difference, 'elementId' | 'plateId'> = {},
): Difference {
  return { group, code, ...about, ...APPROVAL_EN.said(code, values) };
}

/** A number with as many decimals as show that it is none: a change that is small is not said to be 0. */
export function shownAmount(value: number, decimals = 1): Amount {
  const needed = value === 0 ? 0 : Math.ceil(-Math.log10(Math.abs(value)));
  return { amount: value, decimals: Math.min(Math.max(decimals, needed), 20) };
}

/** Two numbers with as many decimals as tell them apart. */
export function apart(before: number, after: number, unit?: 'mm'): { readonly before: Amount; readonly after: Amount } {
  const { decimals } = shownAmount(after - before, unit === 'mm' ? 2 : 1);
  const written = (amount: number): Amount => ({ amount, decimals, ...(unit && { unit }) });
  return { before: written(before), after: written(after) };
}

export function asUsual(): Wording {
  return APPROVAL_EN.say('kinds.asUsual');
}
