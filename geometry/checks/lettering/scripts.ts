/**
 * Which alphabets the signs of a word can belong to, by Unicode Technical Standard 39 (Unicode Security Mechanisms),
 * section 5.1: the script extensions of its letters, with the sets that Chinese, Japanese and Korean writing mixes.
 */

const SCRIPTS = [
  'Latin',
  'Greek',
  'Cyrillic',
  'Armenian',
  'Georgian',
  'Hebrew',
  'Arabic',
  'Cherokee',
  'Coptic',
  'Devanagari',
  'Thai',
  'Han',
  'Hiragana',
  'Katakana',
  'Bopomofo',
  'Hangul',
] as const;
export type Script = (typeof SCRIPTS)[number] | 'Japanese' | 'Korean' | 'Han with Bopomofo' | 'other';

const EVERYWHERE = /[\p{Script_Extensions=Common}\p{Script_Extensions=Inherited}]/u;
const OF = SCRIPTS.map((script) => [script, new RegExp(`\\p{Script_Extensions=${script}}`, 'u')] as const);
const ALSO: Partial<Record<Script, readonly Script[]>> = {
  Han: ['Japanese', 'Korean', 'Han with Bopomofo'],
  Hiragana: ['Japanese'],
  Katakana: ['Japanese'],
  Bopomofo: ['Han with Bopomofo'],
  Hangul: ['Korean'],
};

/** The scripts of one sign; undefined for one that is used in all of them. Scripts we do not list are all `other`. */
export function scriptsOf(sign: string): ReadonlySet<Script> | undefined {
  if (EVERYWHERE.test(sign)) return undefined;
  const scripts = OF.flatMap(([script, form]) => (form.test(sign) ? [script, ...(ALSO[script] ?? [])] : []));
  return new Set<Script>(scripts.length > 0 ? scripts : ['other']);
}

/** Whether no one script has all signs of a word: its resolved script set is empty. */
export function isMixed(word: string): boolean {
  let left: ReadonlySet<Script> | undefined;
  for (const sign of word) {
    const scripts = scriptsOf(sign);
    if (scripts === undefined) continue;
    left = left === undefined ? scripts : new Set([...left].filter((script) => scripts.has(script)));
    if (left.size === 0) return true;
  }
  return false;
}
