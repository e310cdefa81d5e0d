import i18next from 'i18next';
import placing from './en/placing.json' with { type: 'json' };

/** English, which every other language mirrors; one file for each part of the page. A key is `part.name`. */
const EN = { placing } as const;

type Keys<T, Path extends string = ''> = T extends string
  ? Path
  : { [K in keyof T & string]: Keys<T[K], Path extends '' ? K : `${Path}.${K}`> }[keyof T & string];

/** Plural forms (`name_one`, `name_other`) are asked for by their plain name. */
type WithoutPlural<K extends string> = K extends `${infer Name}_one` | `${infer Name}_other` ? Name : K;
export type WordKey = WithoutPlural<Keys<typeof EN>>;

const words = i18next.createInstance();
void words.init({
  lng: 'en',
  fallbackLng: 'en',
  initAsync: false,
  resources: { en: { translation: EN } },
  // React and the canvas write text as text: nothing here is ever read as markup.
  interpolation: { escapeValue: false },
});

/** What the page says, in the language chosen: `t('say.opened', { title })`; `count` picks the plural form. */
export function t(key: WordKey, values: Readonly<Record<string, string | number>> = {}): string {
  return words.t(key, values);
}
