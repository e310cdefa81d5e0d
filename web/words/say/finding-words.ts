import type { Finding } from '../../../geometry/findings.ts';
import { capitalised } from '../../../geometry/sentences/say.ts';
import type { Refused, Wording, WordValue } from '../../../geometry/sentences/wording.ts';
import type { Unit } from '../preferences.ts';
import { recordWord } from '../t.ts';
import { formatNumber, lengthWords } from './format-number.ts';

/** What a finding says, in the language spoken, lengths in the person's unit. */
export function findingWords({ words, sentence }: Pick<Finding, 'words' | 'sentence'>, unit: Unit): string {
  return words === undefined ? sentence : capitalised(wordingText(words, unit));
}

/** Why a file, a font or a link could not be taken, in the language spoken. */
export function refusalWords({ words }: Refused): string {
  return capitalised(wordingText(words, 'mm'));
}

/** What a mend's button says. */
export function mendWords({ words, label }: NonNullable<Finding['mend']>, unit: Unit): string {
  return words === undefined ? label : wordingText(words, unit);
}

/** Something the kernel said, in the language spoken. */
export function wordingText({ key, values, english }: Wording, unit: Unit): string {
  const texts = Object.entries(values).map(([name, value]) => [name, valueText(value, unit)] as const);
  return recordWord(key, english, Object.fromEntries(texts));
}

function valueText(value: WordValue, unit: Unit): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return formatNumber(value, 3);
  if ('key' in value) return wordingText(value, unit);
  if (!('amount' in value)) return value.map((v) => wordingText(v, unit)).join(', ');
  const { amount, decimals } = value;
  if (value.unit === undefined) return formatNumber(amount, decimals);
  return lengthWords(amount, unit, unit === 'mm' ? decimals : decimals + 1);
}
