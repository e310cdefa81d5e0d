import { createInstance } from 'i18next';
import { first } from './en/first.ts';
import { isolate } from '../../geometry/sentences/isolate.ts';
import type { Group } from './groups.ts';
import type { Key } from './keys.ts';
import type { Language } from './languages.ts';

/** What is put into a sentence by name; `count` also chooses between one and many. */
export type Values = Readonly<Record<string, string | number>>;

const book = createInstance();
// English is at hand, so this is done before the next line.
void book.init({
  lng: 'en',
  fallbackLng: 'en',
  defaultNS: 'words',
  resources: { en: { words: first } },
  initAsync: false,
  nsSeparator: false,
  // React escapes by itself.
  interpolation: { escapeValue: false },
});

let language: Language = 'en';
/** What is asked for so far; another language brings as much. */
const wanted = new Set<Group>(['first']);
/** What is there, as `de work`. */
const there = new Set(['en first']);

/**
 * The word or sentence in the language spoken, with its values put in. Call it while drawing or acting, never at the
 * top of a file: the language may change, and a group's words are there only once withWords has brought them.
 */
export function t(key: Key, values: Values = {}): string {
  const part = key.slice(0, key.indexOf('.'));
  if (book.getResource(language, 'words', part) === undefined) {
    // eslint-disable-next-line no-console -- a mistake in the program, told to whoever tests it; a person gets English
    console.error(`the words of ${key} have not been loaded`);
  }
  return book.t(key, options(values));
}

/** A word that stands in a record of its own (`materials.mild-steel.name`), with the record's English. */
export function recordWord(key: string, inEnglish: string, values: Values = {}): string {
  return /^[\w.-]+$/.test(key) && book.exists(key, options(values)) ? book.t(key, options(values)) : inEnglish;
}

export function spoken(): Language {
  return language;
}

/**
 * Code that is imported when it is needed, once its words are there too: `withWords(import('./Page.tsx'), 'work')`.
 * Rejects when either cannot be had. A test sees to it that no file says a word that this has not brought.
 */
export async function withWords<Code>(code: Promise<Code>, ...groups: readonly Group[]): Promise<Code> {
  for (const group of groups) wanted.add(group);
  const [imported] = await Promise.all([code, bringAll(groups)]);
  return imported;
}

/** Speaks another language from here on; resolves when its words are there. Rejects, and speaks on, when they can't be had. */
export async function speak(next: Language): Promise<void> {
  let groups;
  do {
    groups = [...wanted];
    await Promise.all(groups.map((group) => bring(next, group)));
  } while (groups.length < wanted.size);
  await book.changeLanguage(next);
  language = next;
}

/** In the language spoken, also when that changes on the way. */
async function bringAll(groups: readonly Group[]): Promise<void> {
  let spokenThen;
  do {
    spokenThen = language;
    await Promise.all(groups.map((group) => bring(language, group)));
  } while (language !== spokenThen);
}

async function bring(to: Language, group: Group): Promise<void> {
  const name = `${to} ${group}`;
  if (there.has(name)) return;
  // Where all files lie is a long list, not needed for the first plate in English.
  const { wordsOf } = await import('./groups.ts');
  book.addResourceBundle(to, 'words', await wordsOf(to, group));
  there.add(name);
}

/** What a person typed stands among the values: signs in it that mean something to the library stay text. */
function options(values: Values) {
  const { count } = values;
  // What people typed keeps its own reading direction and turns nothing of ours.
  const isolated = Object.entries(values).map(([name, v]) => [name, typeof v === 'string' ? isolate(v) : v]);
  return { replace: Object.fromEntries(isolated) as Values, nest: false, ...(typeof count === 'number' && { count }) };
}
