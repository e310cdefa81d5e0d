import { fillGaps, type Voice } from './fill.ts';
import type { Wording } from './wording.ts';
import { type Tongue, writtenNumber } from './written-number.ts';

/** Says a wording in one language, as its table has it: a sentence of a finding is yet to begin with a capital. */
export type Speak = (words: Wording) => string;

/** English, as the kernel has it. */
export const speakEnglish: Speak = (words) => words.english;

/**
 * Another language from its book of words (part, name, template; parts may lie deeper, as `materials.mild-steel.name`).
 * What the book lacks is said in English. The same words give the same text on every machine.
 */
export function speakFrom(book: object, language: Tongue): Speak {
  const voice: Voice = {
    words: ({ key, values, english }) => {
      const template = templateOf(book, key);
      return template === undefined ? english : fillGaps(template, values, voice);
    },
    number: (value, decimals) => writtenNumber(value, decimals, language),
    length: (mm, decimals) => `${writtenNumber(mm, decimals, language)} mm`,
  };
  return voice.words;
}

function templateOf(book: object, key: string): string | undefined {
  let at: unknown = book;
  for (const name of key.split('.')) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, name)) return undefined;
    at = (at as Record<string, unknown>)[name];
  }
  return typeof at === 'string' ? at : undefined;
}
