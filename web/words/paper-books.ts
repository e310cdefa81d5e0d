import type { Speak } from '../../geometry/sentences/speak-from.ts';
import { speakEnglish, speakFrom } from '../../geometry/sentences/speak-from.ts';
import { BOOKS } from './groups.ts';
import type { Language } from './languages.ts';

/**
 * What stands on papers (geometry/sentences/{paper,proof,sheet}-en.ts), by language. No group of the page: it is never
 * on the screen. In English the kernel has it.
 */
export const PAPER_BOOKS: Readonly<Record<Language, () => Promise<object>>> = {
  en: () => Promise.resolve({}),
  de: async () => (await import('./de/kernel/paper-said.json')).default,
  fr: async () => (await import('./fr/kernel/paper-said.json')).default,
  es: async () => (await import('./es/kernel/paper-said.json')).default,
};

/** How a paper speaks a language: its own words, and those of findings and records. Rejects when they cannot be had. */
export async function paperSpeak(language: Language): Promise<Speak> {
  if (language === 'en') return speakEnglish;
  const [work, paper] = await Promise.all([BOOKS[language].work(), PAPER_BOOKS[language]()]);
  return speakFrom({ ...work, ...paper }, language);
}
