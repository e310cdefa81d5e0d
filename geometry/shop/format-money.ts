import { minorDigits } from '../stock/money.ts';
import type { Tongue } from '../sentences/written-number.ts';

interface MoneyStyle {
  readonly decimal: string;
  readonly group: string;
  /** Digits before the decimal sign from which on thousands are parted. */
  readonly groupFrom: number;
  readonly before: boolean;
  /** Currencies that are written by a sign; all others by their code, which nobody takes for another's. */
  readonly signs: Readonly<Record<string, string>>;
}

/** Keeps a number in one line. French parts thousands by a narrow one, which few faces hold: the wider one does. */
const SPACE = '\u00a0';

/**
 * Unicode CLDR 48 (numbers: symbols, currencyFormats, minimumGroupingDigits, currency symbols), apart from the page's
 * Intl, whose answers differ from one engine and version to the next: what is printed must be the same everywhere.
 */
const STYLES: Readonly<Record<Tongue, MoneyStyle>> = {
  en: {
    decimal: '.',
    group: ',',
    groupFrom: 4,
    before: true,
    signs: { EUR: '€', USD: '$', GBP: '£', JPY: '¥' },
  },
  de: {
    decimal: ',',
    group: '.',
    groupFrom: 4,
    before: false,
    signs: { EUR: '€', USD: '$', GBP: '£', JPY: '¥' },
  },
  fr: { decimal: ',', group: SPACE, groupFrom: 4, before: false, signs: { EUR: '€', USD: '$US', GBP: '£GB' } },
  es: { decimal: ',', group: '.', groupFrom: 5, before: false, signs: { EUR: '€', USD: 'US$' } },
};

/**
 * Whole coins of a currency as a language writes the amount: `€1,234.50`, `1.234,50 €`. Spaces are ones that do not
 * break. The same text in every engine.
 */
export function formatMoney(minor: number, currency: string, language: Tongue): string {
  const { before, signs } = STYLES[language];
  const digits = minorDigits(currency);
  const number = digitsOf(Math.abs(minor), digits, STYLES[language]);
  const minus = minor < 0 ? '-' : '';
  const sign = Object.hasOwn(signs, currency) ? signs[currency]! : undefined;
  if (!before) return `${minus}${number}${SPACE}${sign ?? currency}`;
  return `${minus}${sign ?? `${currency}${SPACE}`}${number}`;
}

/** Digits as they stand in the whole number of coins: no division, so no digit is ever off. */
function digitsOf(minor: number, decimals: number, { decimal, group, groupFrom }: MoneyStyle): string {
  const all = String(minor).padStart(decimals + 1, '0');
  const whole = all.slice(0, all.length - decimals);
  const parted = whole.length < groupFrom ? whole : whole.replace(/\B(?=(\d{3})+$)/g, group);
  return decimals === 0 ? parted : `${parted}${decimal}${all.slice(-decimals)}`;
}
