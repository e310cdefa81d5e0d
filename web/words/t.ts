import { createInstance } from 'i18next';
import { english } from './english.ts';
import type { Key } from './keys.ts';

/** What is put into a sentence by name; `count` also chooses between one and many. */
export type Values = Readonly<Record<string, string | number>>;

const book = createInstance();
// Everything is at hand, so this is done before the next line.
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

/**
 * The word or sentence in the language chosen, with its values put in. Call it while drawing or acting, never at the
 * top of a file: the language may change.
 */
export function t(key: Key, values: Values = {}): string {
  const { count } = values;
  // What a person typed stands among the values: signs in it that mean something to the library stay text.
  return book.t(key, { replace: values, nest: false, ...(typeof count === 'number' && { count }) });
}
