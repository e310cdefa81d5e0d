import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FACES } from '../../fonts/catalogue.ts';
import { BARRELS } from '../../geometry/barrel/barrels.ts';
import { MOTIFS } from '../../geometry/motifs/catalogue.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { CUT_EN } from '../../geometry/sentences/cut-en.ts';
import { APPROVAL_EN } from '../../geometry/sentences/approval-en.ts';
import { DOCUMENT_EN } from '../../geometry/sentences/document-en.ts';
import { ORDER_EN } from '../../geometry/sentences/order-en.ts';
import { PLATE_EN } from '../../geometry/sentences/plate-en.ts';
import { PAPER_EN } from '../../geometry/sentences/paper-en.ts';
import { motifWords } from '../../geometry/sentences/say.ts';
import { SHOP_EN } from '../../geometry/sentences/shop-en.ts';
import { STOCK_EN } from '../../geometry/sentences/stock-en.ts';
import { first } from '../../web/words/en/first.ts';
import { wordsOf } from '../../web/words/groups.ts';
import { paperWordsOf } from '../../web/words/paper-speak.ts';
import { languageFor, type Language } from '../../web/words/languages.ts';

/** Every word of a language, whichever group it comes with. */
async function bookOf(language: Language): Promise<object> {
  const groups = ['first', 'work', 'cut', 'proof'] as const;
  const found = await Promise.all(groups.map((group) => wordsOf(language, group)));
  return Object.assign({}, ...found, language === 'en' ? first : await paperWordsOf(language)) as object;
}

const OTHERS = { German: await bookOf('de'), French: await bookOf('fr'), Spanish: await bookOf('es') };
/** Parts that only the other languages have: in English the records themselves say it. */
const RECORDS = ['materials', 'processes', 'barrels', 'motifs', 'faces'];

/** Every word of a book by its path. */
function words(book: object, before = ''): Map<string, string> {
  const found = new Map<string, string>();
  for (const [name, value] of Object.entries(book) as [string, unknown][]) {
    if (typeof value === 'string') found.set(before + name, value);
    else for (const [path, word] of words(value as object, `${before}${name}.`)) found.set(path, word);
  }
  return found;
}

/** `{{name}}`, sorted. */
function gaps(word: string): string[] {
  return [...word.matchAll(/\{\{\w+\}\}/g)].map((m) => m[0]).sort();
}

/** All code without its comments, the kernel's tables of sentences left out, and the stock file, which says why things do not meet. */
const SOURCE = ['geometry', 'fonts', 'web']
  .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((f) => `${folder}/${f}`))
  .filter((f) => (/\.tsx?$/.test(f) && !/-en\.ts$/.test(f)) || f.endsWith('starting-stock.json'))
  .map((f) => readFileSync(f, 'utf8').replace(/\/\*[^]*?\*\/|^\s*\/\/.*$/gm, ''))
  .join('\n');
/** Texts in quotes, and names of fields: what can fill the gap of a path. */
const NAMED = new Set(
  [...SOURCE.matchAll(/'([\w.\/-]+)'|"([\w.\/-]+)"|\b(\w+)\??:/g)].map((m) => m[1] ?? m[2] ?? m[3] ?? ''),
);
/** Paths that are put together: `page.steps.${step}.title`, `names.${element.style}Border`. */
const WAYS = [...SOURCE.matchAll(/`([a-z]\w*\.(?:[\w.-]|\$\{[^`}]+\})*)`/g)].map(([, way = '']) => {
  const parts = way.split(/\$\{[^}]+\}/).map((part) => part.replaceAll('.', '\\.'));
  return new RegExp(`^${parts.join('([^.]+)')}$`);
});

/** Whether some code says a word: by its path, or by a path put together with something that has a name in the code. */
function isSaid(path: string): boolean {
  const said = path.replace(/_(zero|one|other)$/, '');
  if (NAMED.has(said)) return true;
  return WAYS.some((way) => {
    const gaps = way.exec(said)?.slice(1);
    return gaps !== undefined && gaps.length > 0 && gaps.every((gap) => NAMED.has(gap));
  });
}

/** What the kernel says beyond the table that the page always has, table by table. */
const TABLES = Object.assign(
  {},
  ...[CUT_EN, ORDER_EN, DOCUMENT_EN, SHOP_EN, STOCK_EN, APPROVAL_EN, PAPER_EN].map(({ table }) => table),
) as Record<string, Record<string, string>>;
const KERNEL = { ...PLATE_EN.table, ...TABLES };
const inEnglish = words({ ...(await bookOf('en')), ...TABLES });
/** What records say in English, by the path under which the other languages have it. */
const ofRecords = new Map<string, string>([
  ...BUILT_IN.materials.flatMap((m) => [
    [`materials.${m.id}.name`, m.name] as const,
    [`materials.${m.id}.sentence`, m.sentence] as const,
  ]),
  ...BUILT_IN.processes.flatMap((p) => [
    [`processes.${p.id}.name`, p.name] as const,
    [`processes.${p.id}.sentence`, p.sentence] as const,
    [`processes.${p.id}.caution`, p.caution] as const,
  ]),
  ...BARRELS.map((b) => [`barrels.${b.id}.name`, b.name] as const),
  ...FACES.map((f) => [`faces.${f.id}`, f.suits] as const),
  ...MOTIFS.flatMap((m) => {
    const { key } = motifWords(m.label);
    return [[key, m.label] as const, ...m.options.map((o) => [key.replace(/label$/, o.id), o.label] as const)];
  }),
]);

describe.each(Object.entries(OTHERS))('%s', (_, book) => {
  const own = words(book);
  it('has the words that English has, and no others', () => {
    const isRecord = (path: string) => RECORDS.includes(path.split('.')[0] ?? '');
    expect([...own.keys()].filter((path) => !isRecord(path)).sort()).toEqual([...inEnglish.keys()].sort());
  });
  it('has the words of every record, and of no others', () => {
    const records = [...own.keys()].filter((path) => RECORDS.includes(path.split('.')[0] ?? ''));
    expect(records.sort()).toEqual([...ofRecords.keys()].sort());
  });
  it('has the same gaps to fill', () => {
    const wrong = [...inEnglish].filter(([path, word]) => String(gaps(own.get(path) ?? '')) !== String(gaps(word)));
    expect(wrong.map(([path]) => path)).toEqual([]);
  });
  it('leaves no word empty, and ends sentences as English does', () => {
    const wrong = [...inEnglish, ...ofRecords].filter(([path, word]) => {
      const said = own.get(path)?.trim() ?? '';
      return said === '' || /[.?!]$/.test(said) !== /[.?!]$/.test(word.trim());
    });
    expect(wrong.map(([path]) => path)).toEqual([]);
  });
});

describe('English', () => {
  it('leaves no word empty', () => {
    expect([...inEnglish].filter(([, word]) => word.trim() === '').map(([path]) => path)).toEqual([]);
  });
  it('keeps no word that nobody says, on the page or in the kernel', () => {
    const paths = new Set([...inEnglish.keys(), ...words(KERNEL).keys()]);
    expect([...paths].filter((path) => !isSaid(path))).toEqual([]);
  });
  it('is missed by this test where nobody says it', () => {
    for (const path of ['page.nowhere', 'verdict.other.nobodyAtAll', 'names.nowhereBorder', 'cost.nowhere']) {
      expect(isSaid(path)).toBe(false);
    }
  });
});

describe('the language for a person', () => {
  it.each([
    [['de-AT', 'en'], 'de'],
    [['pt-BR', 'fr-CA', 'en'], 'fr'],
    [['es-419'], 'es'],
    [['EN-us', 'de'], 'en'],
    [['ja'], 'en'],
    [[], 'en'],
  ])('of %j is %s', (tags, language) => {
    expect(languageFor(tags)).toBe(language);
  });
});
