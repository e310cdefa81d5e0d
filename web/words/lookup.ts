import type { Language } from './languages.ts';

/** Words by part and name, as deep as they come. */
export interface Words {
  readonly [name: string]: string | Words;
}

/** What is put into a sentence by name; `count` also chooses between one and many. */
export type Values = Readonly<Record<string, string | number>>;

const RULES = new Map<Language, Intl.PluralRules>();

/**
 * The word at a path (`page.top.undo`), with `{{name}}` filled in; undefined where there is none. With a count, the
 * form that the language has for so many (`key_one`, `key_other`, by Unicode CLDR; `key_zero` for none at all) goes
 * before the bare key.
 */
export function lookUp(words: Words, language: Language, key: string, values: Values): string | undefined {
  const { count } = values;
  const forms = typeof count === 'number' ? [...formsFor(count, language).map((form) => `${key}_${form}`), key] : [key];
  for (const form of forms) {
    const word = wordAt(words, form);
    if (word !== undefined) return fill(word, values);
  }
  return undefined;
}

function formsFor(count: number, language: Language): string[] {
  let rules = RULES.get(language);
  if (rules === undefined) RULES.set(language, (rules = new Intl.PluralRules(language)));
  return [...(count === 0 ? ['zero'] : []), rules.select(count), 'other'];
}

function wordAt(words: Words, path: string): string | undefined {
  let at: string | Words | undefined = words;
  for (const name of path.split('.')) {
    if (at === undefined || typeof at === 'string' || !Object.hasOwn(at, name)) return undefined;
    at = at[name];
  }
  return typeof at === 'string' ? at : undefined;
}

/** What a person typed stands among the values: it is put in as it is, whatever signs are in it. */
function fill(word: string, values: Values): string {
  return word.replace(/\{\{(\w+)\}\}/g, (gap, name: string) => (Object.hasOwn(values, name) ? `${values[name]}` : gap));
}
