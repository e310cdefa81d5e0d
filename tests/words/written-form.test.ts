import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { isWestern, writtenForm } from '../../geometry/sentences/written-form.ts';

const WESTERN = Array.from({ length: 0x10000 }, (_, i) => String.fromCharCode(i)).filter(isWestern);
const CLASSES =
  'L Lu Ll M N Cc Cf Variation_Selector Script=Latin Script=Arabic Script=Hebrew Script=Syriac Script=Devanagari Script=Bengali Emoji_Presentation'.split(
    ' ',
  );

it('a class written out means what Unicode says of every Western sign, within brackets and without, in either case', () => {
  expect(WESTERN.length).toBeGreaterThan(256);
  for (const name of CLASSES) {
    for (const source of [`\\p{${name}}`, `[\\p{${name}}]`, `[^\\p{${name}}]`, `(?<!\\p{${name}})a`]) {
      for (const flags of name === 'Lu' || name === 'Ll' ? [''] : ['', 'i']) {
        const form = writtenForm(source, flags);
        const full = new RegExp(source, `${flags}u`);
        const differing = WESTERN.filter((sign) => form(`${sign}a`).test(`${sign}a`) !== full.test(`${sign}a`));
        expect(differing, `${source} ${flags}`).toEqual([]);
      }
    }
  }
});

it('a text with signs beyond is read with the whole classes', () => {
  for (const text of ['Ж', 'Ω', 'ő', '日', '\u0301', '٣']) {
    expect(isWestern(text)).toBe(false);
    expect(writtenForm('[\\p{L}\\p{M}\\p{N}]')(text).test(text)).toBe(true);
  }
});

it('says which class it does not know', () => {
  expect(() => writtenForm('\\p{Lt}')('a')).toThrow('\\p{Lt}');
});

/** Patterns of what is found seldom: they are built when it is. */
const SELDOM = new Set(['scripts.ts', 'shorten.ts']);

it('what is asked of every text at every keystroke builds no Unicode class: a pattern that stands ready is a written form', () => {
  for (const folder of ['geometry/checks/lettering', 'geometry/layout', 'geometry/sentences']) {
    for (const name of readdirSync(folder).filter((file) => file.endsWith('.ts') && !SELDOM.has(file))) {
      const source = readFileSync(`${folder}/${name}`, 'utf8');
      const ready = source.match(/^const \w+ = (?:new RegExp\(`?)?\n? *\/?[^\n]*\\p\{[^\n]*\/[a-z]*u[a-z]*;/gm) ?? [];
      expect(ready, `${folder}/${name}`).toEqual([]);
    }
  }
});
