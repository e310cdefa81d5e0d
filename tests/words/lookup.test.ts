import { describe, expect, it } from 'vitest';
import { lookUp } from '../../web/words/lookup.ts';

const WORDS = {
  page: { name: 'Bridgehead', sheets_one: '{{count}} sheet', sheets_other: '{{count}} sheets', of: '{{a}} of {{b}}' },
  none: { left_zero: 'none', left_one: 'one', left_other: '{{count}}' },
};

describe('a word looked up', () => {
  it('is found by its path, or not at all', () => {
    expect(lookUp(WORDS, 'en', 'page.name', {})).toBe('Bridgehead');
    for (const path of ['page', 'page.nothing', 'page.name.length', 'page.__proto__', 'constructor', '', '.']) {
      expect(lookUp(WORDS, 'en', path, {})).toBeUndefined();
    }
  });
  // plural rules of Unicode CLDR 44: French counts 0 as one, English, German and Spanish as many
  it.each([
    ['en', 0, '0 sheets'],
    ['en', 1, '1 sheet'],
    ['en', 2, '2 sheets'],
    ['de', 0, '0 sheets'],
    ['fr', 0, '0 sheet'],
    ['fr', 2, '2 sheets'],
    // "many" of the Romance languages, which our books do not tell apart
    ['fr', 1_000_000, '1000000 sheets'],
    ['es', 1, '1 sheet'],
    ['es', 0, '0 sheets'],
  ] as const)('in %s counts %d as “%s”', (language, count, said) => {
    expect(lookUp(WORDS, language, 'page.sheets', { count })).toBe(said);
  });
  it('has a word of its own for none where there is one, and the bare word where no form is', () => {
    expect(lookUp(WORDS, 'en', 'none.left', { count: 0 })).toBe('none');
    expect(lookUp(WORDS, 'en', 'page.name', { count: 3 })).toBe('Bridgehead');
  });
  it('fills its gaps once, and leaves those that nothing is given for', () => {
    expect(lookUp(WORDS, 'en', 'page.of', { a: '{{b}} $& $1', b: 7 })).toBe('{{b}} $& $1 of 7');
    expect(lookUp(WORDS, 'en', 'page.of', { a: 1 })).toBe('1 of {{b}}');
    expect(lookUp(WORDS, 'en', 'page.of', Object.create({ a: 1 }) as Record<string, string>)).toBe('{{a}} of {{b}}');
  });
});
