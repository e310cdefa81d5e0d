import { createInstance } from 'i18next';
import { english } from './english.ts';
import type { Key } from './keys.ts';
import type { Language } from './languages.ts';

/** What is put into a sentence by name; `count` also chooses between one and many. */
export type Values = Readonly<Record<string, string | number>>;

/** Everything but English comes over the wire only when it is spoken. */
const BOOKS: Readonly<Record<Exclude<Language, 'en'>, () => Promise<{ readonly book: object }>>> = {
  de: () => import('./german.ts'),
  fr: () => import('./french.ts'),
  es: () => import('./spanish.ts'),
};

const book = createInstance();
// English is at hand, so this is done before the next line.
void book.init({
  lng: 'en',
  fallbackLng: 'en',
  defaultNS: 'words',
  resources: { en: { words: english } },
  initAsync: false,
  nsSeparator: false,
  // React escapes by itself.
  interpolation: { escapeValue: false },
});

let language: Language = 'en';

/**
 * The word or sentence in the language spoken, with its values put in. Call it while drawing or acting, never at the
 * top of a file: the language may change.
 */
export function t(key: Key, values: Values = {}): string {
  return book.t(key, options(values));
}

/** A word that stands in a record of its own (`materials.mild-steel.name`), with the record's English. */
export function recordWord(key: string, inEnglish: string, values: Values = {}): string {
  return /^[\w.-]+$/.test(key) ? book.t(key, { ...options(values), defaultValue: inEnglish }) : inEnglish;
}

/** The language spoken now. */
export function spoken(): Language {
  return language;
}

/** Speaks another language from here on; resolves when its words are there. Rejects, and speaks on, when they can't be had. */
export async function speak(wanted: Language): Promise<void> {
  if (wanted !== 'en' && !book.hasResourceBundle(wanted, 'words')) {
    book.addResourceBundle(wanted, 'words', (await BOOKS[wanted]()).book);
  }
  await book.changeLanguage(wanted);
  language = wanted;
}

/** What a person typed stands among the values: signs in it that mean something to the library stay text. */
function options(values: Values) {
  const { count } = values;
  return { replace: values, nest: false, ...(typeof count === 'number' && { count }) };
}
