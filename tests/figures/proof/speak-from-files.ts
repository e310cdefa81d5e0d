import { readdirSync, readFileSync } from 'node:fs';
import { speakEnglish, speakFrom, type Speak } from '../../../geometry/sentences/speak-from.ts';
import type { Language } from '../../../web/words/languages.ts';

/** As paperSpeak of web/words, which only the bundler can load: words of papers, read from their files. */
export function speakFromFiles(language: Language): Speak {
  if (language === 'en') return speakEnglish;
  const files = ['kernel', 'paper'].flatMap((group) => {
    const folder = new URL(`../../../web/words/${language}/${group}/`, import.meta.url);
    return readdirSync(folder).map((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as object);
  });
  return speakFrom(Object.assign({}, ...files) as object, language);
}
