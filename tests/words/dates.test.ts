import { describe, expect, it } from 'vitest';
import { readIso } from '../../geometry/sentences/calendar.ts';
import { fromRoman, toRoman } from '../../geometry/sentences/roman.ts';
import { DATE_WAYS, findDate, placeDate, waysFor, writeDate } from '../../web/words/dates.ts';

const DAY = { year: 2027, month: 6, day: 12 };

describe('roman numerals', () => {
  it('are those of the Unicode number forms (UCD, compatibility mappings of U+2160 to U+216F)', () => {
    const values = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 50, 100, 500, 1000];
    values.forEach((value, i) => {
      expect(toRoman(value)).toBe(String.fromCodePoint(0x2160 + i).normalize('NFKC'));
    });
  });
  // years as they stand on title pages and buildings: from memory
  it.each([
    [1492, 'MCDXCII'],
    [1666, 'MDCLXVI'],
    [1888, 'MDCCCLXXXVIII'],
    [1999, 'MCMXCIX'],
    [2027, 'MMXXVII'],
    [3999, 'MMMCMXCIX'],
  ])('%i is %s', (value, roman) => {
    expect(toRoman(value)).toBe(roman);
  });
  it('are read back, all of them', () => {
    for (let value = 1; value <= 3999; value++) expect(fromRoman(toRoman(value))).toBe(value);
  });
  it.each(['', 'IIII', 'VX', 'IC', 'MMMM', 'ABC'])('does not read %j', (text) => {
    expect(fromRoman(text)).toBeUndefined();
  });
});

describe('a date written', () => {
  // long forms: Unicode CLDR; figures with dashes: ISO 8601; both from memory
  it.each([
    ['long', 'en', '12 June 2027'],
    ['long', 'de', '12. Juni 2027'],
    ['long', 'fr', '12 juin 2027'],
    ['long', 'es', '12 de junio de 2027'],
    ['month-first', 'en', 'June 12, 2027'],
    ['short', 'de', '12.6.27'],
    ['dotted', 'de', '12.06.2027'],
    ['iso', 'fr', '2027-06-12'],
    ['roman', 'en', 'XII · VI · MMXXVII'],
  ] as const)('%s in %s is %s', (way, language, written) => {
    expect(writeDate(DAY, way, language)).toBe(written);
  });
  it('makes the first of a month an ordinal in French only', () => {
    expect(writeDate({ year: 2027, month: 5, day: 1 }, 'long', 'fr')).toBe('1er mai 2027');
    expect(writeDate({ year: 2027, month: 5, day: 1 }, 'long', 'es')).toBe('1 de mayo de 2027');
  });
  it('is found again in every way and language, in capitals too', () => {
    for (const language of ['en', 'de', 'fr', 'es'] as const) {
      for (const way of waysFor(language)) {
        for (let month = 1; month <= 12; month++) {
          const day = { year: 2027, month, day: (month * 7) % 28 || 1 };
          const text = `Anna & Jo, ${writeDate(day, way, language)}, hier`;
          expect(findDate(text, 2026)).toMatchObject({ day, from: 11, to: text.length - 6 });
          expect(findDate(text.toUpperCase(), 2026)?.day).toEqual(day);
        }
      }
    }
    expect(waysFor('en')).toEqual(DATE_WAYS);
  });
});

describe('a date in a text', () => {
  it.each([
    ['12.6.77', 1977],
    ['12.6.27', 2027],
    ['12.6.46', 2046],
    ['12.6.47', 1947],
  ])('%s means the year %i', (text, year) => {
    expect(findDate(text, 2026)?.day.year).toBe(year);
  });
  it.each(['14 OCT 2026', '14. Okt. 2026', '14 oct. 2026', 'Oct 14, 2026', '14 de octubre de 2026'])(
    'is seen in %j',
    (text) => {
      expect(findDate(text, 2026)).toEqual({ from: 0, to: text.length, day: { year: 2026, month: 10, day: 14 } });
    },
  );
  it.each(['31.2.2027', '12.13.2027', '2027-00-10', 'CASK 12', 'MIX · CD · LP', '1.2.3', 'June 2027'])(
    'is not seen in %j',
    (text) => {
      expect(findDate(text, 2026)).toBeUndefined();
    },
  );
  it('takes the place of the one found there', () => {
    expect(placeDate('Perry 12.6.27 Nº 4', 0, '2028-01-02', 2026)).toBe('Perry 2028-01-02 Nº 4');
  });
  it('goes to the caret else, a space apart', () => {
    expect(placeDate('', 0, '12.6.27', 2026)).toBe('12.6.27');
    expect(placeDate('PERRY', 5, '12.6.27', 2026)).toBe('PERRY 12.6.27');
    expect(placeDate('ab', 1, '12.6.27', 2026)).toBe('a 12.6.27 b');
  });
  it('is in capitals among capitals', () => {
    expect(placeDate('MARROW LANE ', 12, '12 June 2027', 2026)).toBe('MARROW LANE 12 JUNE 2027');
    expect(placeDate('Marrow Lane ', 12, '12 June 2027', 2026)).toBe('Marrow Lane 12 June 2027');
  });
  it('is read from a date field', () => {
    expect(readIso('2027-06-12')).toEqual(DAY);
    expect(readIso('2027-02-30')).toBeUndefined();
    expect(readIso('')).toBeUndefined();
  });
});
