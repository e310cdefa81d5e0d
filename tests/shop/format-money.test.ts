import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatMoney } from '../../geometry/shop/format-money.ts';
import { minorDigits } from '../../geometry/stock/money.ts';

const LANGUAGES = ['en', 'de', 'fr', 'es'] as const;
/** With a sign of its own, by language; all others are written by their code. */
const SIGNED = {
  en: ['EUR', 'USD', 'GBP', 'JPY'],
  de: ['EUR', 'USD', 'GBP', 'JPY'],
  fr: ['EUR', 'USD', 'GBP'],
  es: ['EUR', 'USD'],
};
const CURRENCIES = ['EUR', 'USD', 'GBP', 'JPY', 'CHF', 'SEK', 'KWD', 'CAD', 'BHD', 'KRW', 'PLN'];

const oneKindOfSpace = (text: string): string => text.replace(/[\u00a0\u202f\u2009]/g, ' ');

describe('an amount of money in words', () => {
  it.each([
    [123450, 'EUR', 'en', '€1,234.50'],
    [123450, 'EUR', 'de', '1.234,50 €'],
    [123450, 'EUR', 'fr', '1 234,50 €'],
    [123450, 'EUR', 'es', '1234,50 €'],
    [1234500, 'EUR', 'es', '12.345,00 €'],
    [1235, 'JPY', 'en', '¥1,235'],
    [1234567, 'KWD', 'de', '1.234,567 KWD'],
    [12345678, 'CLF', 'en', 'CLF 1,234.5678'],
    [-5, 'USD', 'en', '-$0.05'],
    [0, 'EUR', 'de', '0,00 €'],
  ] as const)('%i %s in %s is %s', (minor, currency, language, text) => {
    expect(formatMoney(minor, currency, language)).toBe(text.replaceAll(' ', '\u00a0'));
  });

  // Outside: ICU's Intl.NumberFormat, which takes its answers from Unicode CLDR.
  it('is what the engine’s own Unicode data write, kinds of space apart', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...LANGUAGES),
        fc.constantFrom(...CURRENCIES),
        fc.integer({ min: -1e11, max: 1e11 }),
        (language, currency, minor) => {
          const digits = minorDigits(currency);
          const intl = new Intl.NumberFormat(language, {
            style: 'currency',
            currency,
            currencyDisplay: SIGNED[language].includes(currency) ? 'symbol' : 'code',
            minimumFractionDigits: digits,
            maximumFractionDigits: digits,
          });
          const written = intl.format(minor / 10 ** digits);
          expect(oneKindOfSpace(formatMoney(minor, currency, language))).toBe(oneKindOfSpace(written));
        },
      ),
      { numRuns: 2000, seed: 7 },
    );
  });

  it('knows the decimals of ISO 4217', () => {
    // ISO 4217, list one, column "Mnr unt" (from memory; also as the engine has them)
    const some = ['JPY', 'UYI', 'EUR', 'KWD', 'CLF', 'UYW'];
    expect(some.map(minorDigits)).toEqual([0, 0, 2, 3, 4, 4]);
    for (const currency of some) {
      const { maximumFractionDigits } = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions();
      expect(minorDigits(currency)).toBe(maximumFractionDigits);
    }
  });
});
