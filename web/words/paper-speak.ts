import { speakEnglish, speakFrom, type Speak } from '../../geometry/sentences/speak-from.ts';
import { gatherParts, type Words } from './gather.ts';
import type { Language } from './languages.ts';

/** What stands on papers is never on the screen, and papers need no word of the page. */
const FILES = import.meta.glob<Words>(['./*/kernel/*.json', './*/paper/*.json'], { import: 'default' });

/** How a paper speaks a language: its own words, and those of findings and records. Rejects when they cannot be had. */
export async function paperSpeak(language: Language): Promise<Speak> {
  return language === 'en' ? speakEnglish : speakFrom(await paperWordsOf(language), language);
}

/** The words that papers have in a language other than English. */
export async function paperWordsOf(language: Language): Promise<Words> {
  const [kernel, paper] = await Promise.all(
    ['kernel', 'paper'].map((group) => gatherParts(FILES, `./${language}/${group}/`)),
  );
  return { ...kernel, ...paper };
}
