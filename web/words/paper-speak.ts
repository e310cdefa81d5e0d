import { speakEnglish, speakFrom, type Speak } from '../../geometry/sentences/speak-from.ts';
import { wordsOf } from './groups.ts';
import type { Language } from './languages.ts';

/** How a paper speaks a language: its own words, and those of findings and records. Rejects when they cannot be had. */
export async function paperSpeak(language: Language): Promise<Speak> {
  if (language === 'en') return speakEnglish;
  const [kernel, paper] = await Promise.all([wordsOf(language, 'kernel'), wordsOf(language, 'paper')]);
  return speakFrom({ ...kernel, ...paper }, language);
}
