import type { Wording, WordValue } from './wording.ts';
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
  const say = (words: Wording): string => {
    const template = templateOf(book, words.key);
    if (template === undefined) return words.english;
    return template.replace(/\{\{(\w+)\}\}/g, (whole, name: string) => {
      const value = words.values[name];
      return value === undefined ? whole : valueText(value, say, language);
    });
  };
  return say;
}

function templateOf(book: object, key: string): string | undefined {
  let at: unknown = book;
  for (const name of key.split('.')) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, name)) return undefined;
    at = (at as Record<string, unknown>)[name];
  }
  return typeof at === 'string' ? at : undefined;
}

function valueText(value: WordValue, say: Speak, language: Tongue): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return writtenNumber(value, 3, language);
  if ('key' in value) return say(value);
  if (!('amount' in value)) return value.map(say).join(', ');
  const number = writtenNumber(value.amount, value.decimals, language);
  return value.unit === undefined ? number : `${number} ${value.unit}`;
}
