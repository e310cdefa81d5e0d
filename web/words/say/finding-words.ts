import type { Finding } from '../../../geometry/findings.ts';
import { valueText, type Voice } from '../../../geometry/sentences/fill.ts';
import { capitalised } from '../../../geometry/sentences/make-say.ts';
import type { Refused, Wording } from '../../../geometry/sentences/wording.ts';
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
  const voice: Voice = {
    words: (words) => wordingText(words, unit),
    number: formatNumber,
    length: (mm, decimals) => lengthWords(mm, unit, unit === 'mm' ? decimals : decimals + 1),
  };
  const texts = Object.entries(values).map(([name, value]) => [name, valueText(value, voice)] as const);
  return recordWord(key, english, Object.fromEntries(texts));
}
