import { CUT_EN } from '../../geometry/sentences/cut-en.ts';
import { PLATE_EN } from '../../geometry/sentences/plate-en.ts';
import { first } from './en/first.ts';
import type { Language } from './languages.ts';

/** Words of the page that are asked for at the same time. Each group is a folder of every language, a file for each part. */
export type Group = 'first' | 'work' | 'cut' | 'proof';
/** What the kernel says, on the screen (it comes with `work`) and on paper. Its files hold several parts each. */
type OfKernel = 'kernel' | 'paper';

/** Words by part and name. */
export type Words = Readonly<Record<string, object>>;

/** The files of a group and language are built into one: see `wordGroup` in web/vite.config.ts. */
const FILES = import.meta.glob<Words>(['./*/*/*.json', '!./en/first/*.json'], { import: 'default' });

/** The words of a group in a language. Rejects when they cannot be had. */
export async function wordsOf(language: Language, group: Group | OfKernel): Promise<Words> {
  if (language === 'en' && group === 'first') return first;
  // English stands in the kernel, once. What is missing here the kernel says itself.
  if (language === 'en' && group === 'kernel') return { ...PLATE_EN.table, ...CUT_EN.table };
  const folder = `./${language}/${group}/`;
  const found = Object.entries(FILES).filter(([path]) => path.startsWith(folder));
  const files = await Promise.all(found.map(async ([path, bring]) => [path, await bring()] as const));
  if (group === 'kernel' || group === 'paper') return Object.assign({}, ...files.map(([, parts]) => parts)) as Words;
  const parts = Object.fromEntries(files.map(([path, words]) => [path.slice(folder.length, -'.json'.length), words]));
  return group === 'work' ? { ...(await wordsOf(language, 'kernel')), ...parts } : parts;
}
