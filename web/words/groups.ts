import { CUT_EN } from '../../geometry/sentences/cut-en.ts';
import { PLATE_EN } from '../../geometry/sentences/plate-en.ts';
import { gather, gatherParts, type Words } from './gather.ts';
import type { Language } from './languages.ts';

/** Words of the page that are asked for at the same time. Each group is a folder of every language, a file for each part. */
export type Group = 'first' | 'work' | 'cut' | 'proof';

/** All but what is at hand from the start (en/first.ts). Files of a group and language are built into one: web/vite.config.ts. */
const FILES = import.meta.glob<Words>(['./*/*/*.json', '!./en/first/*.json', '!./*/paper/*.json'], {
  import: 'default',
});

/** The words of a group in a language; those of the kernel come with `work`. Rejects when they cannot be had. */
export async function wordsOf(language: Language, group: Group): Promise<Words> {
  const parts = Object.fromEntries(await gather(FILES, `./${language}/${group}/`));
  return group === 'work' ? { ...(await kernelWords(language)), ...parts } : parts;
}

/** English stands in the kernel, once: what is not here the kernel says itself. */
async function kernelWords(language: Language): Promise<Words> {
  return language === 'en' ? { ...PLATE_EN.table, ...CUT_EN.table } : gatherParts(FILES, `./${language}/kernel/`);
}
